package crumbtrail.bakelog.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.LogStore;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.SheetReader;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BiConsumer;

/**
 * Takes bakes from other places. A line without a name of its own is named by what it says, so that
 * a file that is read twice adds nothing the second time.
 */
public final class LogImport {
  private LogImport() {}

  /**
   * What became of the lines.
   *
   * @param added bakes that are new in the log
   * @param known bakes that were there already and stayed as they were
   * @param bad lines that could not be used
   */
  public record Count(long added, long known, long bad) {}

  /** Where bakes are read from, one after the other. */
  interface Source {
    /**
     * The next bake.
     *
     * @return empty at the end
     * @throws BadLine for a bake that cannot be used; the next one can be asked for
     */
    Optional<Bake> next() throws IOException, BadLine;

    /** Number of the line that was read last. */
    long line();
  }

  /**
   * Reads one JSON object a line: a bake as a log writes it out, or a bare bake sheet.
   *
   * @param when the time of a bake that tells none
   * @param bad told of each line that cannot be used
   */
  public static Count jsonLines(
      BufferedReader lines, LocalDateTime when, LogStore store, BiConsumer<Long, BadLine> bad)
      throws IOException {
    return read(new JsonLines(lines, when), store, bad);
  }

  /**
   * Reads a table: a bake a row under a row of headings.
   *
   * @param when the time of a bake that tells none
   * @param bad told of each row that cannot be used
   */
  public static Count table(
      BufferedReader rows, LocalDateTime when, LogStore store, BiConsumer<Long, BadLine> bad)
      throws IOException, BadLine {
    return read(CsvBakes.of(rows, when), store, bad);
  }

  private static Count read(Source source, LogStore store, BiConsumer<Long, BadLine> bad)
      throws IOException {
    long[] count = new long[3];
    try {
      store.fill(
          filling -> {
            try {
              boolean more = true;
              while (more) {
                more = one(source, filling, count, bad);
              }
            } catch (IOException fault) {
              throw new UncheckedIOException(fault);
            }
          });
    } catch (UncheckedIOException fault) {
      throw fault.getCause();
    }
    return new Count(count[0], count[1], count[2]);
  }

  private static boolean one(
      Source source, LogStore.Filling filling, long[] count, BiConsumer<Long, BadLine> bad)
      throws IOException {
    try {
      Optional<Bake> bake = source.next();
      bake.ifPresent(
          one -> count[filling.put(one.numbered(0).withPhotos(List.of()), List.of()) ? 0 : 1]++);
      return bake.isPresent();
    } catch (BadLine fault) {
      count[2]++;
      bad.accept(source.line(), fault);
      return true;
    }
  }

  /** The sheet of a text, or everything that is wrong with it. */
  static BakeSheet sheet(String text) throws BadLine {
    Reading reading = SheetReader.read(text);
    if (reading.sheet().isEmpty()) {
      throw new BadLine(new ArrayList<>(reading.problems()));
    }
    return reading.sheet().get();
  }

  static UUID named(String text) {
    return UUID.nameUUIDFromBytes(text.getBytes(StandardCharsets.UTF_8));
  }

  private static final class JsonLines implements Source {
    private final BufferedReader lines;
    private final LocalDateTime when;
    private long number;

    JsonLines(BufferedReader lines, LocalDateTime when) {
      this.lines = lines;
      this.when = when;
    }

    @Override
    public Optional<Bake> next() throws IOException, BadLine {
      String line = lines.readLine();
      number++;
      while (line != null && line.isBlank()) {
        line = lines.readLine();
        number++;
      }
      return line == null ? Optional.empty() : Optional.of(bake(line));
    }

    private Bake bake(String line) throws BadLine {
      JsonNode read = BakeJson.tree(line);
      if (read.has("sheet")) {
        Bake bake = BakeJson.read(read);
        sheet(bake.sheet());
        return bake;
      }
      BakeSheet sheet = sheet(line);
      return Bake.of(when, sheet.title(), sheet.title(), line).named(named(line));
    }

    @Override
    public long line() {
      return number;
    }
  }
}
