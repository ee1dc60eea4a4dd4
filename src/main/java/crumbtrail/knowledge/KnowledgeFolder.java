package crumbtrail.knowledge;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reads the YAML catalogues of a rules folder. Every fault of every file is collected, so that a
 * rule writer sees all of them at once.
 */
public final class KnowledgeFolder {
  private static final ObjectMapper YAML =
      new ObjectMapper(new YAMLFactory())
          .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES);

  /** Folders that a rules folder may do without. */
  private static final Set<String> OPTIONAL = Set.of("remedies", "languages");

  private static final CsvMapper CSV = new CsvMapper();

  private final Path folder;
  private final List<Fault> faults = new ArrayList<>();

  private KnowledgeFolder(Path folder) {
    this.folder = folder;
  }

  /**
   * Reads all catalogues below a folder.
   *
   * @param folder the rules folder
   * @throws FaultyKnowledge with every fault found, if a file cannot be read or does not hold
   *     together
   */
  public static Knowledge read(Path folder) throws FaultyKnowledge {
    KnowledgeFolder reader = new KnowledgeFolder(folder);
    Knowledge knowledge =
        new Knowledge(
            reader.lists("causes", Cause.class),
            reader.lists("signs", SignKind.class),
            reader.lists("circumstances", CircumstanceKind.class),
            reader.lists("styles", Style.class),
            reader.list(folder.resolve("readings.yaml"), ReadingKind.class),
            reader.lists("sources", Source.class),
            reader.list(folder.resolve("cautions.yaml"), Caution.class),
            reader.list(folder.resolve("fields.yaml"), FieldHint.class),
            reader.words(),
            reader.published(),
            reader.calibration(),
            reader.optional("questions.yaml", QuestionKind.class),
            reader.optional("acting-together.yaml", ActingTogether.class),
            reader.optional("allergens.yaml", Allergen.class),
            reader.optional("knobs.yaml", KnobKind.class),
            reader.lists("remedies", Remedy.class),
            reader.optional("pictures.yaml", PictureKind.class),
            reader.optional("lessons.yaml", LessonKind.class),
            reader.optional("mysteries.yaml", MysteryKind.class),
            reader.optional("timetable.yaml", StepKind.class),
            reader.optional("gaps.yaml", GapKind.class),
            reader.nameBooks());
    Set<String> unread =
        reader.faults.stream()
            .map(fault -> fault.file().replaceAll("[/\\\\].*", ""))
            .collect(Collectors.toSet());
    reader.checkNames(knowledge);
    reader.faults.addAll(KnowledgeCheck.faults(knowledge, unread, places(folder)));
    if (!reader.faults.isEmpty()) {
      throw new FaultyKnowledge(reader.faults);
    }
    return knowledge;
  }

  /**
   * Where the entries of all catalogues stand. Never fails: what cannot be read is left out.
   *
   * @param folder the rules folder
   */
  public static Places places(Path folder) {
    KnowledgeFolder reader = new KnowledgeFolder(folder);
    Map<String, List<Places.Entry>> entries = new TreeMap<>();
    for (String catalogue :
        List.of("causes", "signs", "circumstances", "styles", "sources", "remedies")) {
      reader.files(catalogue).forEach(file -> reader.places(entries, catalogue, file));
    }
    for (String file :
        List.of(
            "readings.yaml",
            "cautions.yaml",
            "fields.yaml",
            "questions.yaml",
            "acting-together.yaml",
            "allergens.yaml",
            "lessons.yaml",
            "mysteries.yaml",
            "knobs.yaml",
            "gaps.yaml",
            "timetable.yaml",
            "pictures.yaml")) {
      reader.places(entries, file, folder.resolve(file));
    }
    Path pairs = folder.resolve("published").resolve("pairs.csv");
    if (Files.exists(pairs)) {
      reader.places(entries, "published/pairs.csv", pairs);
    }
    return new Places(entries);
  }

  private void places(Map<String, List<Places.Entry>> entries, String catalogue, Path file) {
    try {
      String name = folder.relativize(file).toString().replace('\\', '/');
      entries
          .computeIfAbsent(catalogue, one -> new ArrayList<>())
          .addAll(Places.read(name, Files.readString(file)));
    } catch (IOException unreadable) {
      // Whoever reads the file for its content says that it cannot be read.
    }
  }

  private <T> List<T> lists(String catalogue, Class<T> entry) {
    List<T> all = new ArrayList<>();
    for (Path file : files(catalogue)) {
      all.addAll(list(file, entry));
    }
    return all;
  }

  // A folder may do without.
  private <T> List<T> optional(String name, Class<T> entry) {
    Path file = folder.resolve(name);
    return Files.exists(file) ? list(file, entry) : List.of();
  }

  private <T> List<T> list(Path file, Class<T> entry) {
    List<T> entries = read(file, text -> YAML.readerForListOf(entry).readValue(text));
    if (entries == null) {
      return List.of();
    }
    if (entries.stream().anyMatch(Objects::isNull)) {
      fault(file, 0, "an entry is empty", "Fill the entry or take its hyphen out");
    }
    return entries.stream().filter(Objects::nonNull).toList();
  }

  private Map<String, List<String>> words() {
    Map<String, List<String>> all = new TreeMap<>();
    for (Path file : files("words")) {
      Map<String, List<String>> classes =
          read(
              file,
              text -> YAML.readValue(text, new TypeReference<Map<String, List<String>>>() {}));
      if (classes != null) {
        classes.forEach((name, words) -> add(all, file, name, words));
      }
    }
    return all;
  }

  private List<NameBook> nameBooks() {
    List<NameBook> books = new ArrayList<>();
    for (Path file : files("languages")) {
      NameBook book = read(file, text -> YAML.readValue(text, NameBook.class));
      if (book != null) {
        books.add(book);
      }
    }
    return books;
  }

  // Names can only be looked up once everything is read; a faulty file was told of already.
  private void checkNames(Knowledge knowledge) {
    for (Path file : faults.isEmpty() ? files("languages") : List.<Path>of()) {
      String name = folder.relativize(file).toString().replace('\\', '/');
      read(
          file,
          text ->
              faults.addAll(
                  NameCheck.faults(YAML.readValue(text, NameBook.class), knowledge, name, text)));
    }
  }

  // A folder without published tables or calibration takes every rule at its word.
  private List<Published> published() {
    Path file = folder.resolve("published").resolve("pairs.csv");
    if (Files.notExists(file)) {
      return List.of();
    }
    List<Published> pairs =
        read(
            file,
            text -> {
              try (MappingIterator<Published> rows =
                  CSV.readerFor(Published.class)
                      .with(CsvSchema.emptySchema().withHeader().withComments())
                      .readValues(text)) {
                return rows.readAll();
              }
            });
    return pairs == null ? List.of() : pairs;
  }

  private Calibration calibration() {
    Path file = folder.resolve("calibration.yaml");
    return Files.notExists(file)
        ? Calibration.NONE
        : read(file, text -> YAML.readValue(text, Calibration.class));
  }

  private void add(Map<String, List<String>> all, Path file, String name, List<String> words) {
    if (words == null || words.contains(null)) {
      fault(file, 0, "the class \"" + name + "\" holds nothing", "Give it words");
    } else if (all.putIfAbsent(name, List.copyOf(words)) != null) {
      fault(file, 0, "the class \"" + name + "\" stands twice", "Keep one of the two");
    }
  }

  private <T> T read(Path file, Parse<T> parse) {
    String text = "";
    try {
      text = Files.readString(file);
      return parse.of(text);
    } catch (UnrecognizedPropertyException unknown) {
      fault(
          file,
          lineOf(unknown.getPropertyName(), text),
          "\"" + unknown.getPropertyName() + "\" is no key of such an entry",
          "Its keys are " + unknown.getKnownPropertyIds());
    } catch (MismatchedInputException fault) {
      fault(file, line(fault), said(fault), "Compare with the entries above it");
    } catch (JsonProcessingException fault) {
      fault(file, line(fault), fault.getOriginalMessage(), "Compare with the entries above it");
    } catch (IOException fault) {
      fault(file, 0, "cannot be read: " + fault.getMessage(), "Put the file there, in UTF-8");
    }
    return null;
  }

  private static int line(JsonProcessingException fault) {
    return fault.getLocation() == null ? 0 : fault.getLocation().getLineNr();
  }

  // The reader only tells the end of the entry that holds an unknown key.
  private static int lineOf(String key, String text) {
    List<String> lines = text.lines().toList();
    for (int number = 1; number <= lines.size(); number++) {
      if ((" " + lines.get(number - 1)).matches(".*[\\s,{]" + Pattern.quote(key) + "\\s*:.*")) {
        return number;
      }
    }
    return 0;
  }

  private static String said(MismatchedInputException fault) {
    boolean missing = fault.getOriginalMessage().startsWith("Cannot map `null`");
    List<JsonMappingException.Reference> path = fault.getPath();
    return missing && !path.isEmpty()
        ? "\"" + path.get(path.size() - 1).getFieldName() + "\" is missing"
        : fault.getOriginalMessage();
  }

  @FunctionalInterface
  private interface Parse<T> {
    T of(String text) throws IOException;
  }

  private List<Path> files(String catalogue) {
    if (OPTIONAL.contains(catalogue) && Files.notExists(folder.resolve(catalogue))) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder.resolve(catalogue))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException fault) {
      fault(
          folder.resolve(catalogue),
          0,
          "no such folder",
          "A rules folder holds causes, signs, circumstances, styles, sources and words");
      return List.of();
    }
  }

  private void fault(Path file, int line, String what, String remedy) {
    faults.add(new Fault(folder.relativize(file).toString(), line, what, remedy));
  }
}
