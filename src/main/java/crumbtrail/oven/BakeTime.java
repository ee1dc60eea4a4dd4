package crumbtrail.oven;

/**
 * How long a loaf wants to bake, scaled from the usual bake of its style.
 *
 * <p>With mass the time grows as m<sup>0.35</sup>. Against published bakes of white bread near 215
 * °C: from 900 g in 38 min (common practice) it gives 21 min for the 170 g test loaf (Western Wheat
 * Quality Laboratory: 21 min) and 11 min for 30 g rolls (bakemag.com, bun formula: 15 min at 204
 * °C), so small pieces are given too little. With oven temperature it falls as the distance from
 * 100 °C, at which the crust dries, to the power 0.8 (our choice, common practice in direction).
 */
public final class BakeTime {
  private static final double MASS_POWER = 0.35;
  private static final double HEAT_POWER = 0.8;
  private static final double DRYING = 100;

  private BakeTime() {}

  /**
   * Minutes that a loaf wants.
   *
   * @param usualMinutes usual bake of the style
   * @param usualCelsius at this oven temperature
   * @param usualGrams for a piece of this weight
   * @param celsius the oven at hand, above 110 °C
   * @param grams weight of the piece at hand
   */
  public static double wanted(
      double usualMinutes, double usualCelsius, double usualGrams, double celsius, double grams) {
    double mass = Math.pow(grams / usualGrams, MASS_POWER);
    double heat = Math.pow((usualCelsius - DRYING) / Math.max(10, celsius - DRYING), HEAT_POWER);
    return usualMinutes * mass * heat;
  }
}
