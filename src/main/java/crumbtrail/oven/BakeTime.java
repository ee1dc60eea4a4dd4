package crumbtrail.oven;

import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/**
 * How long a loaf wants to bake, scaled from the usual bake of its style.
 *
 * <p>The model's bake ends five minutes after the middle has passed 94 °C (two degrees below
 * boiling where that is less): the middle's time grows with mass, the crust's does not. Against
 * published bakes of white bread it gives the 170 g test loaf near 218 °C (21 min) and 30 g buns at
 * 204 °C (15 min) within the tolerances of docs/science/checks.md. Only the ratio of two such bakes
 * is used, so that the style's own minutes stand for its usual piece and oven.
 */
public final class BakeTime {
  private static final double DONE = 94;
  private static final double BELOW_BOILING = 2;
  private static final double CRUST_MINUTES = 9;
  private static final double START = 25;
  private static final double LONGEST = 240;

  private BakeTime() {}

  /**
   * Minutes that a free-standing loaf wants; its shape hardly changes the ratio.
   *
   * @param usualMinutes usual bake of the style
   * @param usualCelsius at this oven temperature, 120 to 300 °C
   * @param usualGrams for a piece of this weight
   * @param celsius the oven at hand, 120 to 300 °C
   * @param grams weight of the piece at hand
   */
  public static double wanted(
      double usualMinutes, double usualCelsius, double usualGrams, double celsius, double grams) {
    return usualMinutes
        * HearthBakes.minutes(celsius, grams)
        / HearthBakes.minutes(usualCelsius, usualGrams);
  }

  /** The same for loaves of another shape, made from their grams. */
  public static double wanted(
      double usualMinutes,
      double usualCelsius,
      double usualGrams,
      double celsius,
      double grams,
      DoubleFunction<Loaf> shape) {
    double usual = minutes(shape.apply(usualGrams), OvenStage.still(0, usualCelsius), 0);
    double here = minutes(shape.apply(grams), OvenStage.still(0, celsius), 0);
    return usualMinutes * here / usual;
  }

  /**
   * Minutes that the model itself gives a loaf, without a style's usual bake to hold it to.
   *
   * @param oven its temperature, fan and lid; its minutes do not count
   * @param metres height above the sea
   */
  public static double minutes(Loaf loaf, OvenStage oven, double metres) {
    double core = Math.min(DONE, Boiling.at(metres) - BELOW_BOILING);
    OptionalDouble reached = Bake.minutesUntil(core, loaf, START, oven, metres, LONGEST);
    return reached.orElse(LONGEST) + CRUST_MINUTES;
  }
}
