package crumbtrail.workup;

import crumbtrail.dough.DoughTemperature;
import crumbtrail.dough.WaterTemperature;
import crumbtrail.formula.Formula;
import crumbtrail.formula.Level;

/** How far the liquid sets the warmth of a dough. */
public final class MixWarmth {
  /** A kitchen of which nothing is said, °C (common practice). */
  public static final double KITCHEN = TemperatureWorkup.KITCHEN;

  /** Key and name of ice in the pantry, the one ingredient that cools by melting. */
  public static final String ICE = "ice";

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

  /**
   * Ice that stands for as much of the water as to make all of it as cold as this, see {@link
   * WaterTemperature#ice}.
   *
   * @param water all water, ice included, grams
   * @param tap temperature of the water that is not ice, °C
   * @param wanted °C; below nought for water with ice still in it
   */
  public static double ice(double water, double tap, double wanted) {
    return WaterTemperature.ice(water, tap, wanted);
  }

  /** Degrees by which water would be colder if all of it were ice. */
  public static double coolingByIce(double tap) {
    return WaterTemperature.coolingByIce(tap);
  }
}
