package crumbtrail.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.SheetReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * One labelled sheet and where its true causes came in the ranking.
 *
 * @param name of the case
 * @param expected keys of the true causes, as our catalogue names them
 * @param rank of the first true cause, from 1; 0 if it is not in the list
 * @param report the report
 * @param phrases how many phrases the baker wrote
 */
record Scored(String name, List<String> expected, int rank, Report report, int phrases) {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** One pipeline for all tests of this kind; loading it takes a second or two. */
  static final PostMortem PIPELINE = new PostMortem(RuleBase.bundled());

  boolean within(int places) {
    return rank > 0 && rank <= places;
  }

  static long within(List<Scored> all, int places) {
    return all.stream().filter(scored -> scored.within(places)).count();
  }

  static List<Path> files(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  static JsonNode json(Path file) {
    try {
      return JSON.readTree(Files.readString(file));
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  static Scored of(String name, JsonNode sheet, JsonNode expected) {
    Reading reading = SheetReader.read(sheet);
    if (reading.sheet().isEmpty()) {
      throw new IllegalStateException(name + " cannot be read: " + reading.problems());
    }
    List<String> keys = new ArrayList<>();
    expected.forEach(key -> keys.add(canonical(key.asText())));
    Report report = PIPELINE.trace(reading.sheet().get());
    int rank = 0;
    for (int place = 0; place < report.causes().size() && rank == 0; place++) {
      if (keys.contains(report.causes().get(place).key())) {
        rank = place + 1;
      }
    }
    int phrases =
        sheet.path("seen").size()
            + sheet.path("notSeen").size()
            + sheet.path("process").path("remarks").size();
    return new Scored(name, keys, rank, report, phrases);
  }

  private static String canonical(String key) {
    Catalogue catalogue = PIPELINE.rules().catalogue();
    return catalogue.cause(key).map(Cause::key).orElse(key);
  }
}
