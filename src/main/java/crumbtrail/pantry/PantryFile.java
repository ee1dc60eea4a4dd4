package crumbtrail.pantry;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Reads the pantry's comma-separated files: one ingredient a line, columns named in the head. */
final class PantryFile {
  private static final List<String> MEASURES =
      List.of(
          "cup_low",
          "cup",
          "cup_high",
          "tbsp",
          "tsp",
          "piece",
          "small",
          "medium",
          "large",
          "xl",
          "jumbo",
          "packet",
          "cake",
          "stick",
          "pinch");

  private PantryFile() {}

  /**
   * All ingredients of the {@code .csv} files in a folder, in the order of file names and lines.
   *
   * @throws IOException if a file cannot be read
   * @throws IllegalArgumentException naming file and line if a line is wrong
   */
  static List<Ingredient> readFolder(Path folder) throws IOException {
    List<Path> files;
    try (Stream<Path> listed = Files.list(folder)) {
      files = listed.filter(file -> file.toString().endsWith(".csv")).sorted().toList();
    }
    List<Ingredient> all = new ArrayList<>();
    for (Path file : files) {
      readFile(file, all);
    }
    return all;
  }

  private static void readFile(Path file, List<Ingredient> all) throws IOException {
    CsvSchema head = CsvSchema.emptySchema().withHeader();
    try (MappingIterator<Map<String, String>> rows =
        new CsvMapper().readerForMapOf(String.class).with(head).readValues(file.toFile())) {
      int line = 1;
      while (rows.hasNextValue()) {
        line++;
        Map<String, String> row = rows.nextValue();
        try {
          all.add(ingredient(row));
        } catch (IllegalArgumentException e) {
          throw new IllegalArgumentException(
              file.getFileName() + ", line " + line + ": " + e.getMessage(), e);
        }
      }
    }
  }

  private static Ingredient ingredient(Map<String, String> row) {
    String key = text(row, "key");
    if (key.isEmpty() || text(row, "names").isEmpty() || text(row, "source").isEmpty()) {
      throw new IllegalArgumentException("key, names and source must be filled in");
    }
    Map<String, Double> measures = new TreeMap<>();
    for (String measure : MEASURES) {
      if (!text(row, measure).isEmpty()) {
        measures.put(measure, number(row, measure));
      }
    }
    return new Ingredient(
        key,
        list(row, "names"),
        list(row, "assumed_for"),
        Kind.of(text(row, "kind")),
        new Composition(
            number(row, "water"),
            number(row, "fat"),
            number(row, "sugar"),
            number(row, "salt"),
            number(row, "protein"),
            number(row, "fibre")),
        measures,
        number(row, "yeast_factor"),
        number(row, "absorbs"),
        list(row, "flags"),
        text(row, "source"));
  }

  private static String text(Map<String, String> row, String column) {
    return row.getOrDefault(column, "").strip();
  }

  private static List<String> list(Map<String, String> row, String column) {
    return Stream.of(text(row, column).split("\\|", -1))
        .map(String::strip)
        .filter(part -> !part.isEmpty())
        .toList();
  }

  private static double number(Map<String, String> row, String column) {
    String text = text(row, column);
    if (text.isEmpty()) {
      return 0;
    }
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          "\"" + text + "\" in column " + column + " is no number", e);
    }
  }
}
