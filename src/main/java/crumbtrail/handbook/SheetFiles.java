package crumbtrail.handbook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.SheetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Reads the bake sheets of a folder. */
public final class SheetFiles {
  private static final ObjectMapper JSON = new ObjectMapper();

  private SheetFiles() {}

  /**
   * One sheet.
   *
   * @param group name of its folder
   * @param name name of its file, and its title where the file holds several
   * @param sheet the sheet
   */
  public record Named(String group, String name, BakeSheet sheet) {}

  /** The folders of sheets of this project that are there: cases, real failures, probes. */
  public static List<Path> projects() {
    return Stream.of(
            Path.of("cases"),
            Path.of("src/test/resources/real-cases"),
            Path.of("src/test/resources/rule-probes"))
        .filter(Files::isDirectory)
        .toList();
  }

  /**
   * All sheets of a folder, by file name. A file holds a sheet, a labelled sheet ({@code {"sheet":
   * …}}) or a list of either.
   *
   * @throws IOException if a file cannot be read, or a sheet in it has problems
   */
  public static List<Named> read(Path folder) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.list(folder)) {
      files = all.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
    String group = String.valueOf(folder.getFileName());
    List<Named> sheets = new ArrayList<>();
    for (Path file : files) {
      JsonNode content = JSON.readTree(Files.readString(file));
      String name = String.valueOf(file.getFileName()).replace(".json", "");
      if (content.isArray()) {
        for (JsonNode one : content) {
          String title = labelled(one).path("title").asText();
          sheets.add(new Named(group, name + ": " + title, sheet(file, labelled(one))));
        }
      } else {
        sheets.add(new Named(group, name, sheet(file, labelled(content))));
      }
    }
    return sheets;
  }

  private static JsonNode labelled(JsonNode content) {
    return content.has("sheet") ? content.path("sheet") : content;
  }

  private static BakeSheet sheet(Path file, JsonNode content) throws IOException {
    Reading reading = SheetReader.read(content);
    return reading
        .sheet()
        .orElseThrow(() -> new IOException(file + " cannot be used: " + reading.problems()));
  }
}
