package crumbtrail.oven;

import java.util.concurrent.atomic.AtomicLongArray;

/**
 * Minutes that the model gives free-standing loaves at the sea, read between bakes that were worked
 * out once. What a loaf wants grows so evenly with its weight and with the oven that a straight
 * line between two bakes an eighth apart in weight and 4 °C apart in heat lies within half a
 * percent of the bake itself. Safe for use by many threads; two that ask first together both bake.
 */
final class HearthBakes {
  private static final double LIGHTEST = 20;
  private static final double HEAVIEST = 20_000;
  private static final double APART = Math.log(1.125);
  private static final double COOLEST = 120;
  private static final double HOTTEST = 300;
  private static final double DEGREES = 4;

  /** Minutes fall about as one over the degrees above this. */
  private static final double BOILING = 90;

  private static final int WEIGHTS = (int) Math.ceil(Math.log(HEAVIEST / LIGHTEST) / APART) + 1;
  private static final int HEATS = (int) Math.ceil((HOTTEST - COOLEST) / DEGREES) + 1;
  private static final AtomicLongArray KNOWN = new AtomicLongArray(WEIGHTS * HEATS);

  private HearthBakes() {}

  /**
   * Minutes in an oven of one temperature.
   *
   * @param celsius of the oven
   * @param grams weight of the dough
   */
  static double minutes(double celsius, double grams) {
    if (!(grams >= LIGHTEST && grams < HEAVIEST && celsius >= COOLEST && celsius < HOTTEST)) {
      return bake(celsius, grams);
    }
    double weight = Math.log(grams / LIGHTEST) / APART;
    int lighter = (int) weight;
    int cooler = (int) ((celsius - COOLEST) / DEGREES);
    double cool = COOLEST + cooler * DEGREES;
    double hot = cool + DEGREES;
    double heat = (1 / (cool - BOILING) - 1 / (celsius - BOILING));
    heat /= 1 / (cool - BOILING) - 1 / (hot - BOILING);
    double part = weight - lighter;
    return (1 - part) * between(lighter, cooler, heat) + part * between(lighter + 1, cooler, heat);
  }

  private static double between(int weight, int cooler, double part) {
    return (1 - part) * known(weight, cooler) + part * known(weight, cooler + 1);
  }

  private static double known(int weight, int heat) {
    int at = weight * HEATS + heat;
    long bits = KNOWN.get(at);
    if (bits == 0) {
      double minutes = bake(COOLEST + heat * DEGREES, LIGHTEST * Math.exp(weight * APART));
      KNOWN.set(at, Double.doubleToRawLongBits(minutes));
      return minutes;
    }
    return Double.longBitsToDouble(bits);
  }

  private static double bake(double celsius, double grams) {
    return BakeTime.minutes(Loaf.hearth(grams), OvenStage.still(0, celsius), 0);
  }
}
