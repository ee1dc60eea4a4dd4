package crumbtrail.knowledge;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where each entry of the catalogues stands, so that a fault which shows only when entries are
 * compared can still name file and line. Plain data.
 *
 * @param entries entries in the order of files and lines, by catalogue ("causes", "readings.yaml",
 *     "published/pairs.csv")
 */
public record Places(Map<String, List<Entry>> entries) {
  private static final YAMLFactory YAML = new YAMLFactory();

  public Places {
    Map<String, List<Entry>> copy = new HashMap<>();
    entries.forEach((catalogue, list) -> copy.put(catalogue, List.copyOf(list)));
    entries = Map.copyOf(copy);
  }

  /**
   * One entry.
   *
   * @param key what it is known by: its key, name, id, what it is about, for a field its
   *     circumstance, for a row its first two cells
   * @param file file below the rules folder, parted by slashes
   * @param line line of its first word, from 1
   * @param parts lines of what is in it: {@code "refines"}, {@code "phrases/3"}, {@code
   *     "ranges/salt"}
   */
  public record Entry(String key, String file, int line, Map<String, Integer> parts) {
    public Entry {
      parts = Map.copyOf(parts);
    }

    /** The line of a part, or of the entry where it has no such part. */
    public int line(String part) {
      return parts.getOrDefault(part, line);
    }
  }

  /** The first entry of this key. */
  public Optional<Entry> entry(String catalogue, String key) {
    return all(catalogue, key).stream().findFirst();
  }

  /** Every entry of this key, in order; more than one only where a key stands twice. */
  public List<Entry> all(String catalogue, String key) {
    return entries.getOrDefault(catalogue, List.of()).stream()
        .filter(entry -> entry.key().equals(key))
        .toList();
  }

  /**
   * A fault of an entry, with its place; if the entry cannot be found, the catalogue is named.
   *
   * @param part what is wrong in it, or empty for the whole entry
   */
  public Fault fault(String catalogue, String key, String part, String what, String remedy) {
    return entry(catalogue, key)
        .map(entry -> new Fault(entry.file(), entry.line(part), what, remedy))
        .orElseGet(() -> new Fault(catalogue, 0, what, remedy));
  }

  /**
   * The entries of one file.
   *
   * @param file its name below the rules folder
   * @param text its text, a list of entries or rows; what comes after a slip in the notation is
   *     left out
   */
  static List<Entry> read(String file, String text) {
    return file.endsWith(".csv") ? rows(file, text) : list(file, text);
  }

  // A row is known by its first two cells.
  private static List<Entry> rows(String file, String text) {
    List<Entry> entries = new ArrayList<>();
    List<String> lines = text.lines().toList();
    for (int line = 1; line <= lines.size(); line++) {
      String[] cells = lines.get(line - 1).split(",", 3);
      if (cells.length == 3) {
        entries.add(new Entry(cells[0] + "," + cells[1], file, line, Map.of()));
      }
    }
    return entries;
  }

  private static List<Entry> list(String file, String text) {
    List<Entry> entries = new ArrayList<>();
    try (JsonParser parser = YAML.createParser(text)) {
      if (parser.nextToken() == JsonToken.START_ARRAY) {
        while (parser.nextToken() == JsonToken.START_OBJECT) {
          entries.add(entry(file, parser));
        }
      }
    } catch (IOException slip) {
      // Whoever reads the file for its content names the slip.
    }
    return entries;
  }

  private static Entry entry(String file, JsonParser parser) throws IOException {
    int line = 0;
    Map<String, Integer> parts = new HashMap<>();
    Map<String, String> names = new HashMap<>();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String name = parser.currentName();
      int at = parser.currentTokenLocation().getLineNr();
      line = line == 0 ? at : line;
      parts.put(name, at);
      if (parser.nextToken().isScalarValue()) {
        names.put(name, parser.getText());
      } else {
        inside(name, parser, parts);
      }
    }
    String key =
        names.getOrDefault(
            "key",
            names.getOrDefault(
                "id",
                names.getOrDefault(
                    "name",
                    names.getOrDefault(
                        "about",
                        names.getOrDefault("circumstance", names.getOrDefault("cause", ""))))));
    return new Entry(key, file, line, parts);
  }

  // One level down: the items of a list, the keys of a map.
  private static void inside(String name, JsonParser parser, Map<String, Integer> parts)
      throws IOException {
    boolean list = parser.currentToken() == JsonToken.START_ARRAY;
    int item = 0;
    while (!parser.nextToken().isStructEnd()) {
      int at = parser.currentTokenLocation().getLineNr();
      parts.put(name + "/" + (list ? String.valueOf(item++) : parser.currentName()), at);
      if (!list) {
        parser.nextToken();
      }
      parser.skipChildren();
    }
  }
}
