package crumbtrail.rules;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A rules folder small enough to read at a glance, with the project's own sentence file and pantry.
 * All entries and rules in it are invented for tests.
 */
public final class TinyRules {
  static final Path SENTENCES = Path.of("rules", "sentences", "bread.dsl");
  private static final Path PANTRY = Path.of("rules", "pantry", "pantry.csv");

  public static final String CAUSES =
      """
      - key: salt-too-low
        name: too little salt
        stage: formula
        prior: common
        aliases: [salt-low]
        what: Salt below the usual level.
        mechanism: Salt tightens gluten.
        tell: Taste it.
        change: Weigh 2 % salt.
        sources: [common practice]
      - key: over-proofed
        name: proofed too long
        stage: proof
        prior: everyday
        what: The final proof went on too long.
        mechanism: Gas outgrows the gluten.
        tell: A poked dough does not come back.
        change: Bake sooner.
        sources: [mill-book]
      - key: yeast-dead
        name: dead yeast
        stage: ingredients
        prior: rare
        what: The yeast was dead.
        mechanism: No gas, no rise.
        tell: Yeast in warm water does not foam.
        change: Buy fresh yeast.
        sources: [mill-book; common practice]
      """;

  public static final String SIGNS =
      """
      - {key: dense-crumb, name: dense crumb, place: crumb, meaning: Heavy., look: Cut it., phrases: [<crumb> <dense>]}
      - {key: sticky-dough, name: sticky dough, place: dough, meaning: Sticks., look: Touch it., phrases: [sticky dough]}
      - {key: pale-crust, name: pale crust, place: crust, meaning: Pale., look: Look at it., phrases: [pale crust]}
      - {key: thick-crust, name: thick crust, place: crust, meaning: Thick., look: Cut it., phrases: [thick crust]}
      - {key: sour-smell, name: sour smell, place: flavour, meaning: Sour., look: Smell it., phrases: [sour]}
      - {key: large-holes, name: large holes, place: crumb, meaning: Holes., look: Cut it., phrases: [large holes]}
      - {key: flat-top, name: flat top, place: shape, meaning: Flat., look: Look at it., phrases: [flat top]}
      - {key: collapsed-top, name: collapsed top, place: shape, meaning: Sunk., look: Look at it., phrases: [collapsed]}
      """;

  public static final String CIRCUMSTANCES =
      """
      - {key: yeast-old, name: the yeast was old, phrases: [old yeast]}
      - {key: cut-warm, name: the loaf was cut warm, phrases: [cut warm]}
      - {key: oven-cold, name: the oven was cold, phrases: [cold oven]}
      - {key: milk-hot, name: the milk was hot, phrases: [hot milk]}
      - {key: salt-forgotten, name: the salt was forgotten, phrases: [forgot salt]}
      - {key: flour-swapped, name: another flour was used, phrases: [other flour]}
      """;

  public static final String STYLES =
      """
      - key: any-bread
        name: yeast bread
        tags: [white]
        phrases: [yeast bread]
        ranges:
          salt: {low: 1.6, high: 2.2, source: common practice}
      - key: tin-loaf
        name: tin loaf
        tags: [tin, white]
        phrases: [tin loaf]
      - {key: rye-loaf, name: rye loaf, tags: [rye], phrases: [rye loaf]}
      - {key: sweet-bun, name: sweet bun, tags: [sweet], phrases: [sweet bun]}
      - {key: flat-bread, name: flat bread, tags: [flat], phrases: [flat bread]}
      """;

  public static final String READINGS =
      """
      - {name: salt, unit: "%", decimals: 2, what: Salt on flour.}
      - {name: proof time, unit: min, decimals: 0, what: Minutes of proof.}
      - {name: water balance, unit: points, decimals: 1, what: Water over the usual.}
      - {name: bulk ripeness, unit: times ready, decimals: 2, what: How far the rise went.}
      """;

  public static final String SOURCES =
      """
      - {id: mill-book, title: Notes of the tide mill, author: not stated, year: 1931, grade: B}
      """;

  public static final String WORDS =
      """
      crumb: [crumb, inside]
      dense: [dense, heavy]
      """;

  public static final String CAUTIONS =
      """
      - key: raw-dough
        words: Do not eat raw dough.
        when: [always]
        source: common practice
      """;

  public static final String FIELDS =
      """
      - {field: baking.preheated, words: ["no"], circumstance: oven-cold}
      """;

  private TinyRules() {}

  /** One rule as text: its name, its conditions, and its one consequence. */
  public static String rule(String name, String conditions, String consequence) {
    return """
        rule "%s"
            @strand("%s")
            @source("common practice")
            @lesson("For tests.")
        when
        %s
        then
            %s
        end
        """
        .formatted(name, name, conditions.indent(4).stripTrailing(), consequence);
  }

  /** Writes the catalogues, the sentences and the pantry, and one rule. */
  public static Path write(Path folder) {
    file(folder, "causes/all.yaml", CAUSES);
    file(folder, "signs/all.yaml", SIGNS);
    file(folder, "circumstances/all.yaml", CIRCUMSTANCES);
    file(folder, "styles/all.yaml", STYLES);
    file(folder, "readings.yaml", READINGS);
    file(folder, "sources/all.yaml", SOURCES);
    file(folder, "words/words.yaml", WORDS);
    file(folder, "cautions.yaml", CAUTIONS);
    file(folder, "fields.yaml", FIELDS);
    file(folder, "sentences/bread.dsl", text(SENTENCES));
    file(folder, "pantry/pantry.csv", text(PANTRY));
    file(
        folder,
        "stages/salt.dslr",
        rule("thin salt", "The salt is under 1.5 %", "Suspect \"salt too low\" firmly"));
    return folder;
  }

  /** Writes one file of a rules folder. */
  public static void file(Path folder, String name, String text) {
    try {
      Path file = folder.resolve(name);
      Files.createDirectories(file.getParent());
      Files.writeString(file, text);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  /** The left sides of the sentence file that begin with "[when]" or "[then]", as they stand. */
  static List<String> forms(String part) {
    List<String> forms = new ArrayList<>();
    for (String line : text(SENTENCES).split("\n")) {
      if (line.startsWith("[" + part + "]")) {
        forms.add(line);
      }
    }
    return forms;
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
