package crumbtrail.workup;

import crumbtrail.dough.DoughTemperature;
import crumbtrail.formula.Formula;
import crumbtrail.formula.Level;

/** How far the liquid sets the warmth of a dough. */
public final class MixWarmth {
  /** A kitchen of which nothing is said, °C (common practice). */
  public static final double KITCHEN = TemperatureWorkup.KITCHEN;

  private MixWarmth() {}

  /**
   * Degrees that a dough follows when its liquid is a degree warmer: the share of the liquid in the
   * heat that flour and liquid hold, by the balance of {@link DoughTemperature}.
   *
   * @return 0 to 1; for a formula that tells no liquid, of sixty parts on a hundred of flour
   */
  public static double liquidShare(Formula formula) {
    double liquid =
        formula.reading("hydration").map(Level::value).orElse(TemperatureWorkup.USUAL_LIQUID)
            * DoughTemperature.WATER_HEAT;
    return liquid / (liquid + 100 * DoughTemperature.FLOUR_HEAT);
  }
}
