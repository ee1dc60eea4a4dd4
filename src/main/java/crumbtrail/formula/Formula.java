package crumbtrail.formula;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A formula worked out: every percentage is of the total flour, preferments and starters included.
 *
 * @param scaleKnown false if the sheet states percentages only, so that weights stand for a made-up
 *     kilogram of flour
 * @param flourGrams total flour, grams; zero if there is none
 * @param doughGrams everything that goes into the dough, grams
 * @param percentByIngredient percent of flour by plain name, starters and preferments split
 * @param percentByKind percent of flour by kind word: "water", "salt", "yeast", "dairy" …
 * @param readings by the name that rules use, in percent of flour unless docs/science/formula.md
 *     says otherwise; a reading that the sheet leaves unknown is missing
 * @param allWater percent of flour, with the water of butter and other fats
 * @param flourAloneProtein percent protein of the flour without added gluten, which the reading
 *     "flour protein" counts in
 * @param parts preferments, soakers and scalds, each on its own flour
 * @param notUnderstood lines whose ingredient or amount is unknown
 * @param contradictions places where the sheet says two things that cannot both be true
 * @param assumptions what was taken for granted, in sentences
 * @param circumstances facts that are no number, as keys: "flour-by-volume" …
 */
public record Formula(
    boolean scaleKnown,
    Level flourGrams,
    Level doughGrams,
    Map<String, Level> percentByIngredient,
    Map<String, Level> percentByKind,
    Map<String, Level> readings,
    Optional<Level> allWater,
    Optional<Level> flourAloneProtein,
    List<Part> parts,
    List<NotUnderstood> notUnderstood,
    List<Contradiction> contradictions,
    List<String> assumptions,
    Set<String> circumstances) {

  public Formula {
    percentByIngredient = Collections.unmodifiableMap(new LinkedHashMap<>(percentByIngredient));
    percentByKind = Collections.unmodifiableMap(new LinkedHashMap<>(percentByKind));
    readings = Collections.unmodifiableMap(new LinkedHashMap<>(readings));
    parts = List.copyOf(parts);
    notUnderstood = List.copyOf(notUnderstood);
    contradictions = List.copyOf(contradictions);
    assumptions = List.copyOf(assumptions);
    circumstances = Collections.unmodifiableSet(new LinkedHashSet<>(circumstances));
  }

  /** A reading by the name that rules use, empty if the sheet leaves it unknown. */
  public Optional<Level> reading(String name) {
    return Optional.ofNullable(readings.get(name));
  }

  /** The sum of all percentages: dough on flour. Zero if there is no flour. */
  public double totalPercent() {
    return flourGrams.value() > 0 ? doughGrams.value() / flourGrams.value() * 100 : 0;
  }

  /**
   * The weights that make a given weight of dough: each percentage times dough over total percent.
   *
   * @param grams wanted dough
   * @return grams by plain name; empty if there is no flour
   */
  public Map<String, Double> scaledTo(double grams) {
    Map<String, Double> scaled = new LinkedHashMap<>();
    double total = totalPercent();
    if (total > 0) {
      percentByIngredient.forEach(
          (name, percent) -> scaled.put(name, percent.value() * grams / total));
    }
    return scaled;
  }

  /**
   * A part of the dough made ahead.
   *
   * @param name as on the sheet
   * @param kind "levain", "yeasted", "soaker" or "scald"
   * @param flourGrams its flour as far as it goes into the dough
   * @param grams all of it that goes into the dough
   * @param percentByIngredient percent of its own flour; empty if it has none
   * @param hydration poured liquids on its own flour, percent
   * @param percentOfFlour its flour on the total flour, percent
   */
  public record Part(
      String name,
      String kind,
      Level flourGrams,
      Level grams,
      Map<String, Level> percentByIngredient,
      Optional<Level> hydration,
      Optional<Level> percentOfFlour) {
    public Part {
      percentByIngredient = Collections.unmodifiableMap(new LinkedHashMap<>(percentByIngredient));
    }
  }

  /**
   * A line that could not be used in full.
   *
   * @param where place on the sheet
   * @param written the line as written
   * @param uncertain what it leaves open
   */
  public record NotUnderstood(String where, String written, String uncertain) {}

  /**
   * Two statements of the sheet that cannot both be true.
   *
   * @param where place on the sheet
   * @param what both statements, and which was used
   */
  public record Contradiction(String where, String what) {}
}
