package crumbtrail.rules;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Pantry;
import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;

/**
 * The compiled rule base with its catalogues and pantry. Immutable; safe for use by many threads:
 * each run has a session of its own.
 */
public final class RuleBase {
  private final String version;
  private final Catalogue catalogue;
  private final Pantry pantry;
  private final Network network;
  private final Parts parts;
  private final Map<String, Testimony.Preface> prefaces = new ConcurrentHashMap<>();
  private final Broken broken = new Broken();
  private volatile Written written;

  private RuleBase(
      String version, Catalogue catalogue, Pantry pantry, Network network, Parts parts) {
    this.version = version;
    this.catalogue = catalogue;
    this.pantry = pantry;
    this.network = network;
    this.parts = parts;
  }

  /** The rule base that was compiled with the program. */
  public static RuleBase bundled() {
    try {
      return load(RuleBase::resource);
    } catch (IOException fault) {
      throw new UncheckedIOException("the program's own rule base cannot be read", fault);
    }
  }

  /**
   * A baker's own rules folder. The compiled form is kept in a cache folder under the hash of the
   * content, so that only the first run after a change compiles.
   *
   * @param folder the rules folder
   * @param cache where compiled forms are kept
   * @param progress told what is going on when it takes time
   * @throws FaultyKnowledge with every fault of the folder
   * @throws IOException if the folder or the cache cannot be read or written
   */
  public static RuleBase of(Path folder, Path cache, Consumer<String> progress)
      throws FaultyKnowledge, IOException {
    String version = FolderHash.of(folder);
    if (version.equals(bundledVersion())) {
      return bundled();
    }
    Path compiled = cache.resolve(version);
    Path stamp = compiled.resolve(RuleBaseBuilder.VERSION);
    // What an older program compiled has not all parts beside it.
    if (!Files.exists(stamp) || !RuleBaseBuilder.complete(compiled)) {
      progress.accept("Checking the rules in " + folder + " …");
      RuleFolder checked = RuleFolder.read(folder);
      int rules = checked.rules().size();
      if (checked.plain().isEmpty()) {
        progress.accept("Compiling " + rules + " rules; this takes some seconds …");
      }
      Files.createDirectories(compiled);
      RuleBaseBuilder.write(checked, version, compiled);
      progress.accept("The " + rules + " rules are ready; the next start is quick.");
    }
    return load(name -> Files.newInputStream(compiled.resolve(name)));
  }

  /** The name of this content: the hash of the rules folder. */
  public String version() {
    return version;
  }

  /** What the rules folder calls its edition; empty where it does not say. */
  public String edition() {
    return edition(parts);
  }

  /** The hash of the rules that the program was built with, without laying them out. */
  public static String bundledHash() {
    try {
      return bundledVersion();
    } catch (IOException fault) {
      throw new UncheckedIOException("the program's own rule base cannot be read", fault);
    }
  }

  /** The edition of the rules that the program was built with. */
  public static String bundledEdition() {
    return edition(RuleBase::resource);
  }

  private static String edition(Parts parts) {
    try (InputStream in = parts.open(RuleBaseBuilder.EDITION)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException old) {
      // An older program that compiled this folder kept no edition.
      return "";
    }
  }

  /** Causes, signs, circumstances, styles, readings, bibliography. */
  public Catalogue catalogue() {
    return catalogue;
  }

  /** The ingredients. */
  public Pantry pantry() {
    return pantry;
  }

  /** Whether the rules are laid out; what asks them before waits for it. */
  public boolean laidOut() {
    return network.done();
  }

  /** How many rules there are. */
  public int size() {
    return network.base().getKiePackages().stream()
        .mapToInt(rules -> rules.getRules().size())
        .sum();
  }

  /** The names of all rules. */
  public List<String> ruleNames() {
    return network.base().getKiePackages().stream()
        .flatMap(rules -> rules.getRules().stream())
        .map(org.kie.api.definition.rule.Rule::getName)
        .sorted()
        .toList();
  }

  /**
   * A rule as it is written. The text is read when it is first asked for.
   *
   * @param name the rule's name
   */
  public Optional<WrittenRule> written(String name) {
    return Optional.ofNullable(text().byName().get(name));
  }

  /**
   * The rules that look at a sign, circumstance or reading, be it there or not.
   *
   * @param key its stable key or name
   */
  public List<WrittenRule> rulesOn(String key) {
    return text().byKey().getOrDefault(key, List.of());
  }

  /**
   * Whether any rule speaks because nothing was said of this.
   *
   * @param sign its stable key
   */
  public boolean mindsSilence(String sign) {
    return rulesOn(sign).stream()
        .anyMatch(rule -> rule.looksAt(WrittenRule.Kind.SIGN_UNSPOKEN, sign));
  }

  /** Rules that broke off while they ran and were taken out, by name, with what went wrong. */
  public Map<String, String> broken() {
    return broken.why();
  }

  /** What these rules can tell apart. */
  public Sights sights() {
    return text().sights();
  }

  /**
   * The rules as they are written, with the catalogues of this rule base. Read when first asked for
   * and not kept, since few ask twice.
   */
  public RuleBook book() {
    try {
      return new RuleBook(
          catalogue, RuleBook.places(parts), parts.read(RuleBaseBuilder.TEXT, WrittenRule.class));
    } catch (IOException missing) {
      throw new UncheckedIOException("the text of the rules cannot be read", missing);
    }
  }

  // Read twice at worst, by two threads that come first together.
  private Written text() {
    Written known = written;
    if (known == null) {
      try {
        known = Written.of(parts.read(RuleBaseBuilder.TEXT, WrittenRule.class));
      } catch (IOException missing) {
        throw new UncheckedIOException("the text of the rules cannot be read", missing);
      }
      written = known;
    }
    return known;
  }

  private record Written(
      Map<String, WrittenRule> byName, Map<String, List<WrittenRule>> byKey, Sights sights) {
    static Written of(List<WrittenRule> rules) {
      Map<String, WrittenRule> byName = new HashMap<>();
      Map<String, List<WrittenRule>> byKey = new HashMap<>();
      for (WrittenRule rule : rules) {
        byName.put(rule.name(), rule);
        rule.conditions().stream()
            .flatMap(condition -> condition.keys().stream())
            .distinct()
            .forEach(key -> byKey.computeIfAbsent(key, one -> new ArrayList<>()).add(rule));
      }
      return new Written(byName, byKey, new Sights(rules));
    }
  }

  /**
   * Runs all rules over the facts of one bake.
   *
   * @param facts readings, signs, circumstances, the bread; the order does not matter
   * @return what the rules say, in a fixed order
   */
  public List<Evidence> run(Collection<?> facts) {
    try (RuleRun run = open()) {
      return run.evidence(facts).values().stream().flatMap(List::stream).toList();
    }
  }

  /** Rules at work on one bake, to be asked again about the same bake with something changed. */
  public RuleRun open() {
    return new RuleRun(network.base(), prefaces, broken);
  }

  private static RuleBase load(Parts parts) throws IOException {
    String version = version(parts);
    // The other core lays the engine's network out while this one reads catalogues and sheets.
    Network network = Network.begin(parts, version);
    Knowledge knowledge = parts.read(RuleBaseBuilder.KNOWLEDGE, Knowledge.class).get(0);
    List<Ingredient> ingredients = parts.read(RuleBaseBuilder.PANTRY, Ingredient.class);
    return new RuleBase(version, new Catalogue(knowledge), Pantry.of(ingredients), network, parts);
  }

  private static String version(Parts parts) throws IOException {
    try (InputStream in = parts.open(RuleBaseBuilder.VERSION)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  // The folder from which the program was built need not be compiled again.
  private static String bundledVersion() throws IOException {
    try (InputStream in = RuleBase.class.getResourceAsStream(RuleBaseBuilder.VERSION)) {
      return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  static InputStream resource(String name) throws IOException {
    InputStream in = RuleBase.class.getResourceAsStream(name);
    if (in == null) {
      throw new IOException(name + " is missing; build with: mvn package");
    }
    return in;
  }

  /** Where the parts of a rule base are, by name. */
  @FunctionalInterface
  interface Parts {
    InputStream open(String name) throws IOException;

    /** The records in a part. */
    default <T extends Record> List<T> read(String name, Class<T> type) throws IOException {
      // Read whole: small files, and to be taken apart byte by byte.
      try (InputStream in = open(name)) {
        return PlainData.read(
            type, new DataInputStream(new ByteArrayInputStream(in.readAllBytes())));
      }
    }
  }
}
