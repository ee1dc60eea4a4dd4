package crumbtrail.accuracy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.SheetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongConsumer;
import java.util.stream.Stream;

/**
 * A bake whose cause is known.
 *
 * @param name name of its file
 * @param real whether it happened; else we made it up
 * @param causes keys of the causes of which any is right; empty for a healthy bake
 * @param phrases how many phrases the baker wrote
 * @param judged what the rules said
 * @param ahead what they said of its sheet before anybody saw the loaf
 */
record Bake(
    String name, boolean real, List<String> causes, int phrases, Judged judged, Judged ahead) {
  private static final ObjectMapper JSON = new ObjectMapper();

  boolean healthy() {
    return causes.isEmpty();
  }

  /**
   * Reads every sheet of a folder.
   *
   * @param real whether the folder holds real failures, whose sheets stand under {@code sheet} and
   *     causes under {@code expected}; else own cases, with {@code knownCauses}
   * @param bakes where they are added
   * @param progress told how many bakes are there, after each
   * @throws IOException if the folder or a sheet cannot be read
   */
  static void read(Judge judge, Path folder, boolean real, List<Bake> bakes, LongConsumer progress)
      throws IOException {
    List<Path> files;
    try (Stream<Path> listed = Files.list(folder)) {
      files = listed.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
    for (Path file : files) {
      JsonNode whole = JSON.readTree(Files.readString(file));
      JsonNode sheet = real ? whole.path("sheet") : whole;
      Reading reading = SheetReader.read(sheet);
      if (reading.sheet().isEmpty()) {
        throw new IOException(file + ": " + reading.problems());
      }
      List<String> causes = new ArrayList<>();
      whole
          .path(real ? "expected" : "knownCauses")
          .forEach(cause -> causes.add(judge.canonical(cause.asText())));
      bakes.add(
          new Bake(
              file.getFileName().toString().replace(".json", ""),
              real,
              List.copyOf(causes),
              phrases(sheet),
              judge.judge(reading.sheet().get()),
              judge.ahead(reading.sheet().get())));
      progress.accept(bakes.size());
    }
  }

  private static int phrases(JsonNode sheet) {
    return sheet.path("seen").size()
        + sheet.path("notSeen").size()
        + sheet.path("process").path("remarks").size();
  }
}
