package crumbtrail.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Gives a reader spoilt texts by the thousand, or by the million when asked: {@code
 * -Dcrumbtrail.fuzz=1000000} is how many all readers get together, {@code -Dcrumbtrail.fuzz.seed=7}
 * makes other ones, {@code -Dcrumbtrail.fuzz.only=sheet,line} tries these readers. A reader may
 * take a text or refuse it in its own words; to throw anything else, or to think about it for more
 * than a second of processor time, twice over, is a fault. What once broke a reader is kept under
 * {@code src/test/resources/fuzz}, a folder a reader, and tried first in every build.
 */
public final class Fuzz {
  private static final long ALL = Long.getLong("crumbtrail.fuzz", 4_000);
  private static final long SEED = Long.getLong("crumbtrail.fuzz.seed", 1);
  private static final List<String> ONLY =
      List.of(System.getProperty("crumbtrail.fuzz.only", "").split(","));
  private static final Path KEPT = Path.of("src", "test", "resources", "fuzz");
  private static final Path FOUND = Path.of("target", "fuzz");
  private static final double SLOW_SECONDS = 1;
  private static final int ENOUGH = 12;

  private final String reader;
  private final Set<String> kinds = new HashSet<>();
  private final List<String> faults = new ArrayList<>();

  private Fuzz(String reader) {
    this.reader = reader;
  }

  /** Something that reads texts. */
  public interface Reader {
    /** Whether it took the text; false if it refused it in words of its own. */
    boolean takes(String text) throws Exception;
  }

  /**
   * Tries a reader.
   *
   * @param name of the reader, and of the folder of what once broke it
   * @param share of all tries that it gets, 0 to 1
   * @param seeds good texts
   */
  public static void of(String name, double share, List<String> seeds, Reader reader)
      throws IOException {
    Fuzz fuzz = new Fuzz(name);
    Spoiler spoiler = fuzz.spoiler(seeds);
    fuzz.run(share, seeds, reader, spoiler::next);
  }

  /** Tries a reader on JSON that stays JSON: only what stands in it is spoilt. */
  public static void ofTrees(String name, double share, List<String> seeds, Reader reader)
      throws IOException {
    Fuzz fuzz = new Fuzz(name);
    Spoiler spoiler = fuzz.spoiler(seeds);
    fuzz.run(share, seeds, reader, spoiler::nextTree);
  }

  private Spoiler spoiler(List<String> seeds) {
    return new Spoiler(seeds, SEED + reader.hashCode());
  }

  private void run(double share, List<String> seeds, Reader reader, Supplier<String> next)
      throws IOException {
    List<String> kept = kept();
    for (String text : kept) {
      tried(text, reader, false);
    }
    for (String text : seeds) {
      tried(text, reader, false);
    }
    boolean wanted = ONLY.contains("") || ONLY.contains(this.reader);
    long tries = wanted ? Math.max(1, Math.round(share * ALL)) : 0;
    long taken = 0;
    long start = System.nanoTime();
    for (long i = 0; i < tries && faults.size() < ENOUGH; i++) {
      taken += tried(next.get(), reader, true) ? 1 : 0;
    }
    note(tries, taken, (System.nanoTime() - start) / 1e9);
    assertThat(faults).as("what the reader of %s trips over", this.reader).isEmpty();
  }

  private boolean tried(String text, Reader by, boolean keep) throws IOException {
    long before = processorTime();
    try {
      boolean taken = by.takes(text);
      if (seconds(before) > SLOW_SECONDS) {
        // The first text pays for all that is loaded with it, and a busy host may count its own
        // time as ours; a text over which a reader broods takes as long once more.
        long again = processorTime();
        by.takes(text);
        double seconds = seconds(again);
        if (seconds > SLOW_SECONDS) {
          fault(text, String.format(Locale.ROOT, "takes %.1f s", seconds), "slow", keep);
        }
      }
      return taken;
    } catch (Exception | StackOverflowError | AssertionError fault) {
      fault(text, fault.toString(), fault.getClass().getName() + place(fault), keep);
      return false;
    }
  }

  private static long processorTime() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static double seconds(long before) {
    return (processorTime() - before) / 1e9;
  }

  /** One of a kind is enough to know: a kind is what was thrown and where. */
  private void fault(String text, String what, String kind, boolean keep) throws IOException {
    if (!kinds.add(kind)) {
      return;
    }
    String name = String.format(Locale.ROOT, "%08x.txt", text.hashCode());
    if (keep) {
      Path folder = Files.createDirectories(FOUND.resolve(reader));
      Files.write(folder.resolve(name), bytes(text));
    }
    String shown = what.length() > 300 ? what.substring(0, 300) + "…" : what;
    faults.add(name + ": " + shown + " " + kind);
  }

  private static String place(Throwable fault) {
    return Stream.of(fault.getStackTrace())
        .filter(frame -> frame.getClassName().startsWith("crumbtrail."))
        .filter(frame -> !frame.getClassName().startsWith("crumbtrail.fuzz."))
        .findFirst()
        .map(frame -> " at " + frame)
        .orElse("");
  }

  private List<String> kept() throws IOException {
    Path folder = KEPT.resolve(reader);
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().map(Fuzz::text).toList();
    }
  }

  // Halves of characters have no UTF-8, so texts are kept as UTF-16.
  private static byte[] bytes(String text) {
    return text.chars().mapToObj(c -> (char) c).allMatch(c -> !Character.isSurrogate(c))
        ? text.getBytes(StandardCharsets.UTF_8)
        : ("\ufeff" + text).getBytes(StandardCharsets.UTF_16BE);
  }

  private static String text(Path file) {
    try {
      byte[] bytes = Files.readAllBytes(file);
      boolean wide = bytes.length > 1 && bytes[0] == (byte) 0xfe && bytes[1] == (byte) 0xff;
      return wide
          ? new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16BE)
          : new String(bytes, StandardCharsets.UTF_8);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  private void note(long tries, long taken, double seconds) throws IOException {
    Files.createDirectories(FOUND);
    Files.writeString(
        FOUND.resolve("counts.tsv"),
        String.format(
            Locale.ROOT,
            "%s\tseed %d\t%d tries\t%d taken\t%d kinds of fault\t%.0f s%n",
            reader,
            SEED,
            tries,
            taken,
            faults.size(),
            seconds),
        StandardOpenOption.CREATE,
        StandardOpenOption.APPEND);
  }
}
