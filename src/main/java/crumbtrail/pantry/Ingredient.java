package crumbtrail.pantry;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * One thing in the pantry: its names, what is in it and what common measures of it weigh.
 *
 * @param key short name, lower case with hyphens, unique in the pantry
 * @param names what bakers call it, the plainest first
 * @param assumedFor loose names that are taken as this ingredient for want of a better: "flour"
 * @param per100 grams in 100 g
 * @param measures grams in one measure: {@code cup} (US, 236.6 ml) with {@code cup_low} and {@code
 *     cup_high} for the published spread, {@code tbsp}, {@code tsp}, {@code piece}, the egg sizes
 *     {@code small} to {@code jumbo}, {@code packet}, {@code cake}, {@code stick}, {@code pinch}
 * @param yeastFactor grams of instant dry yeast that do the work of one gram; 0 if it is no yeast
 * @param absorbs grams of water that one gram binds in a dough beyond what flour takes
 * @param flags further properties: wholegrain, rye, gluten-free, self-raising, liquid (poured),
 *     milk, sweet, syrup, coarse, potassium, osmotolerant, fresh, yeasted, stiff, dried, diastatic
 *     …
 * @param source where the figures are from, or {@code from memory} or {@code common practice}
 */
public record Ingredient(
    String key,
    List<String> names,
    List<String> assumedFor,
    Kind kind,
    Composition per100,
    Map<String, Double> measures,
    double yeastFactor,
    double absorbs,
    List<String> flags,
    String source) {

  public Ingredient {
    names = List.copyOf(names);
    assumedFor = List.copyOf(assumedFor);
    measures = Map.copyOf(measures);
    flags = List.copyOf(flags);
  }

  /** The name to print: the first of its names. */
  public String plainName() {
    return names.get(0);
  }

  public boolean has(String flag) {
    return flags.contains(flag);
  }

  /** Grams in one of the measures, empty if the pantry does not say. */
  public OptionalDouble grams(String measure) {
    Double grams = measures.get(measure);
    return grams == null ? OptionalDouble.empty() : OptionalDouble.of(grams);
  }

  /**
   * The water-to-flour percentage of a starter of this kind, from the water in it.
   *
   * @return percent; 100 for equal weights of flour and water
   */
  public double starterHydration() {
    double flour = 100 - per100.water() - per100.salt();
    return flour <= 0 ? 100 : per100.water() / flour * 100;
  }
}
