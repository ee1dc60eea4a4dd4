package crumbtrail.words;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The phrases under {@code rules/}, read as plain YAML. */
final class KnowledgeFiles {
  private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());

  private KnowledgeFiles() {}

  /** One entry of a catalogue. */
  record Entry(Path file, String key, String name, List<String> phrases) {}

  static List<Entry> entries(String catalogue) {
    List<Entry> entries = new ArrayList<>();
    for (Path file : files(catalogue)) {
      for (JsonNode node : tree(file)) {
        entries.add(
            new Entry(
                file,
                node.path("key").asText(),
                node.path("name").asText(),
                strings(node.path("phrases"))));
      }
    }
    return entries;
  }

  static Map<String, List<String>> wordClasses() {
    Map<String, List<String>> classes = new LinkedHashMap<>();
    for (Path file : files("words")) {
      tree(file).properties().forEach(e -> classes.put(e.getKey(), strings(e.getValue())));
    }
    return classes;
  }

  static PhraseBook book(String catalogue) {
    Map<String, List<String>> phrases = new LinkedHashMap<>();
    entries(catalogue).forEach(entry -> phrases.put(entry.key(), entry.phrases()));
    return PhraseBook.of(phrases, wordClasses());
  }

  private static List<Path> files(String catalogue) {
    try (Stream<Path> files = Files.list(Path.of("rules", catalogue))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonNode tree(Path file) {
    try {
      return YAML.readTree(file.toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> strings(JsonNode node) {
    List<String> strings = new ArrayList<>();
    node.forEach(item -> strings.add(item.asText()));
    return strings;
  }
}
