package crumbtrail.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Good texts of every kind that is read, from the project's own cases and tables. */
public final class Corpus {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path WORDS = Path.of("src", "test", "resources", "crumbtrail", "words");

  private Corpus() {}

  /** Bake sheets: the invented ones, real ones, and those that are refused. */
  public static List<String> sheets() {
    List<String> sheets = new ArrayList<>(files(Path.of("cases"), ".json"));
    Path wrong = Path.of("src", "test", "resources", "wrong-sheets.json");
    for (JsonNode row : tree(text(wrong))) {
      sheets.add(row.path("sheet").asText());
    }
    // The longest are there to be too long; their copies would crowd out all else.
    sheets.removeIf(sheet -> sheet.length() > 10_000);
    return sheets;
  }

  /** The invented sheets alone: whole bakes, each on one line. */
  public static List<String> bakes() {
    return files(Path.of("cases"), ".json").stream().map(text -> tree(text).toString()).toList();
  }

  /** Texts that stand anywhere on the invented sheets: lines, quantities, words. */
  public static List<String> texts() {
    List<String> texts = new ArrayList<>();
    bakes().forEach(bake -> gather(tree(bake), texts));
    return texts.stream().distinct().toList();
  }

  /** Lines of formulas. */
  public static List<String> lines() {
    return bakes().stream()
        .flatMap(bake -> strings(tree(bake).path("formula")))
        .distinct()
        .toList();
  }

  /** Pasted recipes, made of the invented sheets. */
  public static List<String> recipes() {
    return bakes().stream()
        .map(Corpus::tree)
        .map(
            bake ->
                bake.path("title").asText()
                    + "\n\nIngredients\n"
                    + String.join("\n", strings(bake.path("formula")).toList())
                    + "\n\nPoolish:\n100 g flour\n100 g water\n\nMethod\nMix 10 min. "
                    + "Leave 12 h at 20 C.\n"
                    + String.join("\n", strings(bake.at("/process/remarks")).toList()))
        .toList();
  }

  /** What bakers say. */
  public static List<String> sentences() {
    return files(WORDS, ".tsv").stream()
        .flatMap(String::lines)
        .filter(line -> !line.startsWith("#") && !line.isBlank())
        .map(line -> line.split("\t", 2)[0])
        .toList();
  }

  private static void gather(JsonNode node, List<String> texts) {
    if (node.isTextual()) {
      texts.add(node.textValue());
    }
    node.forEach(one -> gather(one, texts));
  }

  private static Stream<String> strings(JsonNode list) {
    List<String> texts = new ArrayList<>();
    gather(list, texts);
    return texts.stream();
  }

  private static JsonNode tree(String json) {
    try {
      return JSON.readTree(json);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  private static List<String> files(Path folder, String ending) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(ending)).sorted().map(Corpus::text).toList();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
