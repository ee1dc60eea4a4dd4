package crumbtrail.rules;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Pantry;
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
import java.util.function.Consumer;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.runtime.KieContainer;

/**
 * The compiled rule base with its catalogues and pantry. Immutable; safe for use by many threads:
 * each run has a session of its own.
 */
public final class RuleBase {
  private final String version;
  private final Catalogue catalogue;
  private final Pantry pantry;
  private final KieBase base;
  private final Parts parts;
  private volatile Written written;

  private RuleBase(String version, Catalogue catalogue, Pantry pantry, KieBase base, Parts parts) {
    this.version = version;
    this.catalogue = catalogue;
    this.pantry = pantry;
    this.base = base;
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
    // What an older program compiled has no text of the rules beside it.
    if (!Files.exists(stamp) || !Files.exists(compiled.resolve(RuleBaseBuilder.TEXT))) {
      progress.accept("Checking the rules in " + folder + " …");
      RuleFolder checked = RuleFolder.read(folder);
      progress.accept("Compiling " + checked.rules().size() + " rules; this takes some seconds …");
      Files.createDirectories(compiled);
      RuleBaseBuilder.write(checked, version, compiled);
      progress.accept("Compiled; the next start is quick.");
    }
    return load(name -> Files.newInputStream(compiled.resolve(name)));
  }

  /** The name of this content: the hash of the rules folder. */
  public String version() {
    return version;
  }

  /** Causes, signs, circumstances, styles, readings, bibliography. */
  public Catalogue catalogue() {
    return catalogue;
  }

  /** The ingredients. */
  public Pantry pantry() {
    return pantry;
  }

  /** How many rules there are. */
  public int size() {
    return base.getKiePackages().stream().mapToInt(rules -> rules.getRules().size()).sum();
  }

  /** The names of all rules. */
  public List<String> ruleNames() {
    return base.getKiePackages().stream()
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

  // Read twice at worst, by two threads that come first together.
  private Written text() {
    Written known = written;
    if (known == null) {
      try (InputStream in = parts.open(RuleBaseBuilder.TEXT)) {
        known = Written.of(new ObjectMapper().readValue(in, RuleBook.Text.class).rules());
      } catch (IOException missing) {
        throw new UncheckedIOException("the text of the rules cannot be read", missing);
      }
      written = known;
    }
    return known;
  }

  private record Written(Map<String, WrittenRule> byName, Map<String, List<WrittenRule>> byKey) {
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
      return new Written(byName, byKey);
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
      return run.evidence(facts);
    }
  }

  /** Rules at work on one bake, to be asked again about the same bake with something changed. */
  public RuleRun open() {
    return new RuleRun(base);
  }

  private static RuleBase load(Parts parts) throws IOException {
    ObjectMapper json = new ObjectMapper();
    String version;
    try (InputStream in = parts.open(RuleBaseBuilder.VERSION)) {
      version = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    Knowledge knowledge;
    try (InputStream in = parts.open(RuleBaseBuilder.KNOWLEDGE)) {
      knowledge = json.readValue(in, Knowledge.class);
    }
    List<Ingredient> ingredients;
    try (InputStream in = parts.open(RuleBaseBuilder.PANTRY)) {
      ingredients = json.readValue(in, new TypeReference<List<Ingredient>>() {});
    }
    KieBase base;
    try (InputStream in = parts.open(RuleBaseBuilder.MODULE)) {
      base = base(in, version);
    }
    return new RuleBase(version, new Catalogue(knowledge), Pantry.of(ingredients), base, parts);
  }

  private static KieBase base(InputStream module, String version) {
    KieServices services = KieServices.get();
    services.getRepository().addKieModule(services.getResources().newInputStreamResource(module));
    KieContainer container = services.newKieContainer(RuleCompiler.release(version));
    return container.getKieBase(RuleCompiler.BASE);
  }

  // The folder from which the program was built need not be compiled again.
  private static String bundledVersion() throws IOException {
    try (InputStream in = RuleBase.class.getResourceAsStream(RuleBaseBuilder.VERSION)) {
      return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static InputStream resource(String name) throws IOException {
    InputStream in = RuleBase.class.getResourceAsStream(name);
    if (in == null) {
      throw new IOException(name + " is missing; build with: mvn package");
    }
    return in;
  }

  @FunctionalInterface
  private interface Parts {
    InputStream open(String name) throws IOException;
  }
}
