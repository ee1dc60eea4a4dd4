package crumbtrail.dough;

import crumbtrail.dough.DoughTemperature.Part;
import java.util.List;

/**
 * Water temperature for a wanted dough temperature: by the bakers' rule of factors, which averages
 * temperatures, and by heat balance, which weighs them; friction worked back; ice.
 *
 * <p>The rule of factors (Cook's Illustrated how-to 5818; King Arthur 2018; US Navy TRAMAN 14163)
 * works in °C and °F alike, as long as all temperatures are in one unit; a friction factor in °F is
 * 1.8 times that in °C. It knows no masses, so that it suits doughs of about 60 % water. A friction
 * factor belongs to the sum of the temperatures: with three factors the mixer warms the dough by a
 * third of it, with four by a quarter.
 */
public final class WaterTemperature {
  /** Beyond this difference between rule and balance the baker should know of both, °C. */
  public static final double NOTABLE = 2;

  private WaterTemperature() {}

  /** Water by three factors, in the unit of the arguments. */
  public static double threeFactors(double wanted, double flour, double room, double friction) {
    return 3 * wanted - (flour + room + friction);
  }

  /** Water by four factors, in the unit of the arguments. */
  public static double fourFactors(
      double wanted, double flour, double room, double preferment, double friction) {
    return 4 * wanted - (flour + room + preferment + friction);
  }

  /** Friction factor worked back from a dough of three factors. */
  public static double frictionOfThree(double dough, double flour, double room, double water) {
    return 3 * dough - (flour + room + water);
  }

  /** Friction factor worked back from a dough of four factors. */
  public static double frictionOfFour(
      double dough, double flour, double room, double preferment, double water) {
    return 4 * dough - (flour + room + preferment + water);
  }

  /** How much a mixer of this friction factor warms the dough, in the unit of the factor. */
  public static double warming(double friction, int factors) {
    if (factors != 3 && factors != 4) {
      throw new IllegalArgumentException("the rule has three or four factors, not " + factors);
    }
    return friction / factors;
  }

  /**
   * Water by heat balance.
   *
   * @param wanted dough temperature, °C
   * @param others all that goes in beside the water
   * @param waterGrams above 0
   * @param warming by the mixer, °C
   * @return °C; below 0 it takes ice, see {@link #ice}
   */
  public static double byBalance(
      double wanted, List<Part> others, double waterGrams, double warming) {
    if (!(waterGrams > 0)) {
      throw new IllegalArgumentException("no water to warm or cool: " + waterGrams + " g");
    }
    double mixed = wanted - warming;
    double missing =
        others.stream().mapToDouble(part -> part.capacity() * (mixed - part.celsius())).sum();
    return mixed + missing / (waterGrams * DoughTemperature.WATER_HEAT);
  }

  /** Water by both ways, °C. */
  public record Plan(double byRule, double byBalance) {
    /** Whether the two differ by more than {@link #NOTABLE}. */
    public boolean apart() {
      return Math.abs(byRule - byBalance) > NOTABLE;
    }

    /** Whether liquid water can do it: neither ice nor water that kills yeast. */
    public boolean possible() {
      return byBalance > 0 && byBalance < 55;
    }
  }

  /**
   * Both ways for a dough of flour and water.
   *
   * @param wanted dough temperature, °C
   * @param flour its temperature, °C
   * @param room temperature of the room, °C
   * @param friction friction factor of three, °C
   * @param hydration percent water on flour, above 0
   */
  public static Plan plan(
      double wanted, double flour, double room, double friction, double hydration) {
    return new Plan(
        threeFactors(wanted, flour, room, friction),
        byBalance(wanted, List.of(Part.flour(100, flour)), hydration, warming(friction, 3)));
  }

  /**
   * Ice that takes the place of as much water, by exact heat balance: {@code W c (tap - wanted) /
   * (L + c tap)}.
   *
   * @param water all water, ice included, any unit of mass
   * @param tap its temperature, °C, not below 0
   * @param wanted °C; below 0 stands for water with ice still in it
   * @return in the unit of water; 0 where the tap is cold enough, more than {@code water} where no
   *     ice could do it
   */
  public static double ice(double water, double tap, double wanted) {
    if (!(water >= 0 && tap >= 0)) {
      throw new IllegalArgumentException("water of " + water + " at " + tap + " °C");
    }
    return Math.max(0, water * (tap - wanted) / coolingByIce(tap));
  }

  /**
   * Degrees by which water would be colder if all of it were ice: the heat that ice takes to melt
   * and to become as warm as the tap, on the heat of water.
   *
   * @param tap temperature of the water that the ice stands for, °C
   */
  public static double coolingByIce(double tap) {
    return DoughTemperature.MELTING / DoughTemperature.WATER_HEAT + tap;
  }

  /** The same by the American trade formula, in °F: {@code W (tap - wanted) / (tap + 112)}. */
  public static double iceByTradeFormula(double water, double tap, double wanted) {
    return Math.max(0, water * (tap - wanted) / (tap + 112));
  }
}
