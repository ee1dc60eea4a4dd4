package crumbtrail.web;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogPlace;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Outcome;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.SomeBakes;
import crumbtrail.bakelog.Verdict;
import crumbtrail.bakelog.store.SqlLogStore;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The packaged jar serving its pages, as a baker starts it, with a log of its own.
 *
 * @param folder where the log is
 */
record Served(Process process, URI address, Path folder) implements AutoCloseable {
  /** Bakes in the log at the start; the first has a photo, and its cause was confirmed. */
  static final int BAKES = 4;

  private static final Pattern LINE = Pattern.compile("Crumbtrail listens on (http://\\S+)");

  static Path jar() {
    return Path.of(System.getProperty("crumbtrail.jar", "target/crumbtrail.jar"));
  }

  /** Whoever keeps the log has some bakes in it. */
  static Served start() throws IOException {
    Path folder = Files.createTempDirectory("crumbtrail-served");
    try (LogStore store = SqlLogStore.open(LogFace.file(folder))) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      for (int day = 0; day < BAKES; day++) {
        Bake bake = SomeBakes.traced(day);
        long id =
            log.add(
                Bake.of(bake.baked(), bake.label(), bake.recipe(), Tour.SHEET)
                    .withTraced(bake.traced())
                    .withNote("The kitchen was warm.")
                    .withOutcome(day == 2 ? Outcome.GOOD : Outcome.FAILED)
                    .withVerdicts(day == 0 ? Map.of("over-proofed", Verdict.CONFIRMED) : Map.of()));
        if (day == 0) {
          log.addPhoto(id, SomeBakes.photo());
        }
      }
    }
    return start(folder);
  }

  /** A log that several people share, in this folder. */
  static Served shared(Path folder) throws IOException {
    return start(folder, "--people");
  }

  private static Served start(Path folder, String... more) throws IOException {
    LogPlace place = LogFace.file(folder);
    List<String> command =
        new ArrayList<>(
            List.of(
                ProcessHandle.current().info().command().orElse("java"),
                "-jar",
                jar().toString(),
                "serve",
                "--port",
                "0",
                "--log",
                String.valueOf(place.file())));
    command.addAll(List.of(more));
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
    for (String line = out.readLine(); line != null; line = out.readLine()) {
      Matcher matcher = LINE.matcher(line);
      if (matcher.find()) {
        return new Served(process, URI.create(matcher.group(1)), folder);
      }
    }
    throw new IllegalStateException("The server ended without saying where it listens");
  }

  @Override
  public void close() {
    process.destroy();
    try {
      if (!process.waitFor(15, TimeUnit.SECONDS)) {
        process.destroyForcibly().waitFor();
      }
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.deleteIfExists(file);
        }
      }
    } catch (InterruptedException | IOException fault) {
      throw new IllegalStateException(fault);
    }
  }
}
