package crumbtrail.knowledge;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** Finds catalogue entries by key. Immutable; safe for use by many threads. */
public final class Catalogue {
  /** More than all catalogues hold; what comes beyond it is written anew each time. */
  private static final int MOST_NAMES = 10_000;

  private static final Map<String, String> KEYS = new ConcurrentHashMap<>();
  private static final Map<String, String> SPOKEN = new ConcurrentHashMap<>();

  private final Knowledge knowledge;
  private final Map<String, Cause> causes;
  private final Map<String, String> causeAliases = new LinkedHashMap<>();
  private final Map<String, SignKind> signs;
  private final Map<String, CircumstanceKind> circumstances;
  private final Map<String, Style> styles;
  private final Map<String, ReadingKind> readings;
  private final Map<String, Source> sources;
  private final Map<String, QuestionKind> questions;
  private final Map<String, Map<String, String>> names = new LinkedHashMap<>();

  // As many as there are in the files, and each report names them by the hundred.
  private final Map<String, String> cited = new ConcurrentHashMap<>();

  /**
   * @param knowledge the catalogues
   */
  public Catalogue(Knowledge knowledge) {
    this.knowledge = knowledge;
    causes = index(knowledge.causes(), Cause::key);
    signs = index(knowledge.signs(), SignKind::key);
    circumstances = index(knowledge.circumstances(), CircumstanceKind::key);
    styles = index(knowledge.styles(), Style::key);
    readings = index(knowledge.readings(), ReadingKind::name);
    sources = index(knowledge.sources(), Source::id);
    questions = index(knowledge.questions(), QuestionKind::about);
    knowledge
        .languages()
        .forEach(book -> names.put(book.language(), Map.copyOf(book.dictionary(knowledge))));
    for (Cause cause : knowledge.causes()) {
      cause.aliases().forEach(alias -> causeAliases.putIfAbsent(alias, cause.key()));
    }
  }

  /** The key that rule sentences use, with spaces, as the stable key with hyphens. */
  public static String keyOf(String spoken) {
    return remembered(KEYS, spoken, one -> one.trim().replace(' ', '-'));
  }

  /** The stable key as rule sentences write it. */
  public static String spoken(String key) {
    return remembered(SPOKEN, key, one -> one.replace('-', ' '));
  }

  // The same text each time, since the hash of a text is worked out once for each: every fact and
  // every word of a rule is looked up by its name, some ten thousand times for one report.
  private static String remembered(
      Map<String, String> known, String text, UnaryOperator<String> write) {
    String written = known.get(text);
    if (written == null) {
      written = write.apply(text);
      if (known.size() < MOST_NAMES) {
        known.put(text, written);
      }
    }
    return written;
  }

  /** All catalogues as plain data. */
  public Knowledge knowledge() {
    return knowledge;
  }

  /** What English names are called in a language; empty for English and where none is known. */
  public Map<String, String> names(String language) {
    return names.getOrDefault(language, Map.of());
  }

  /** The cause of this key, or of which this key is an alias. */
  public Optional<Cause> cause(String key) {
    return Optional.ofNullable(causes.get(causes.containsKey(key) ? key : causeAliases.get(key)));
  }

  /** The sign of this key. */
  public Optional<SignKind> sign(String key) {
    return Optional.ofNullable(signs.get(key));
  }

  /** The circumstance of this key. */
  public Optional<CircumstanceKind> circumstance(String key) {
    return Optional.ofNullable(circumstances.get(key));
  }

  /** The style of this key. */
  public Optional<Style> style(String key) {
    return Optional.ofNullable(styles.get(key));
  }

  /** The kind of reading of this name. */
  public Optional<ReadingKind> reading(String name) {
    return Optional.ofNullable(readings.get(name));
  }

  /** The question about this sign, circumstance or reading. */
  public Optional<QuestionKind> question(String about) {
    return Optional.ofNullable(questions.get(about));
  }

  /**
   * A citation as a reader wants it.
   *
   * @param citation ids joined by semicolons, or "common practice"
   * @return the works by author, title and year, joined by semicolons
   */
  public String cited(String citation) {
    return cited.computeIfAbsent(citation, this::writtenOut);
  }

  private String writtenOut(String citation) {
    return List.of(citation.split(";")).stream()
        .map(String::trim)
        .map(id -> sources.containsKey(id) ? sources.get(id).cited() : id)
        .reduce((one, other) -> one + "; " + other)
        .orElse("");
  }

  private static <T> Map<String, T> index(List<T> entries, Function<T, String> key) {
    Map<String, T> index = new LinkedHashMap<>();
    entries.forEach(entry -> index.put(key.apply(entry), entry));
    return index;
  }
}
