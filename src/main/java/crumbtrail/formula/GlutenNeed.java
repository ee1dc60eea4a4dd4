package crumbtrail.formula;

/**
 * Dry gluten that a flour needs for a wanted protein, and the water that goes with it.
 *
 * <p>Mass balance of {@link ProteinBlend}; dry gluten takes 1.5 times its weight of water
 * (cauvain-young; two parts more gluten, three parts more water: lehmann-absorption). Where gluten
 * takes the place of flour, the water of that flour, 62 %, is spared. Valid for up to 10 % gluten
 * on flour, the most that is published for any bread (baking dictionary).
 *
 * @param addGrams gluten on top of the flour; 0 if the flour is strong enough
 * @param addWaterGrams water on top of the dough's, with it
 * @param swapGrams gluten that takes the place of as much flour
 * @param swapWaterGrams water on top of the dough's, with it
 * @param percentOfFlour the gluten added, on the flour
 */
public record GlutenNeed(
    double addGrams,
    double addWaterGrams,
    double swapGrams,
    double swapWaterGrams,
    double percentOfFlour) {
  /** Protein of vital wheat gluten, percent (usda-sr26 48052). */
  public static final double USUAL_GLUTEN = 75.16;

  private static final double WATER = 1.5;
  private static final double FLOUR_WATER = 0.62;
  private static final double MOST = 10;

  /**
   * @param flour grams, above 0
   * @param protein of the flour, percent
   * @param target percent
   * @param gluten protein of the dry gluten, percent
   * @throws IllegalArgumentException if gluten is not richer than flour and target, or no flour
   */
  public static GlutenNeed of(double flour, double protein, double target, double gluten) {
    if (!(flour > 0)) {
      throw new IllegalArgumentException("no flour to strengthen: " + flour + " g");
    }
    double add = Math.max(0, ProteinBlend.toAdd(flour, protein, target, gluten));
    double swap = Math.max(0, ProteinBlend.toSwap(flour, protein, target, gluten));
    return new GlutenNeed(add, add * WATER, swap, swap * (WATER - FLOUR_WATER), add / flour * 100);
  }

  /** Whether this much gluten is in use anywhere. */
  public boolean covered() {
    return percentOfFlour <= MOST;
  }
}
