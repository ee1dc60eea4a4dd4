package crumbtrail.dough;

import java.util.List;

/**
 * Dough temperature after mixing, by heat balance, and the plain time constant of a piece of which
 * only the weight is known. {@link DoughBody} knows shapes, vessels and surroundings.
 *
 * <p>Specific heats: flour 1.7 (published range 1.6 to 1.8), water 4.186 kJ/(kg K); dough 2.8
 * (bread 2.74 to 2.80, Rask 1989; five doughs of other moistures measured at 2.15 to 3.19,
 * isoperibol calorimeter, abstract read). Valid for liquid water in the result: above 0 °C and
 * below 60 °C, where starch begins to swell.
 */
public final class DoughTemperature {
  /** Specific heat of flour and other dry powders, kJ/(kg K). */
  public static final double FLOUR_HEAT = 1.7;

  /** Specific heat of water, kJ/(kg K). */
  public static final double WATER_HEAT = 4.186;

  /** Heat that melts ice, kJ/kg. */
  public static final double MELTING = 334.6;

  /** Specific heat of dough, kJ/(kg K). */
  public static final double DOUGH_HEAT = 2.8;

  private static final double AIR_TRANSFER = 8; // W/(m2 K), still air, common practice
  private static final double DOUGH_DENSITY = 800; // kg/m3, half risen, common practice

  private DoughTemperature() {}

  /**
   * Something that goes into the bowl.
   *
   * @param grams its mass
   * @param heat specific heat, kJ/(kg K)
   * @param celsius its temperature; for ice the temperature at which water would hold as little
   *     heat, see {@link #ice}
   */
  public record Part(double grams, double heat, double celsius) {
    public Part {
      if (!(grams >= 0 && heat > 0 && Double.isFinite(celsius))) {
        throw new IllegalArgumentException(
            "a part has a mass, a specific heat above 0 and a temperature, not "
                + grams
                + " g, "
                + heat
                + " kJ/(kg K), "
                + celsius
                + " °C");
      }
    }

    /** Flour, sugar, salt and other dry matter. */
    public static Part flour(double grams, double celsius) {
      return new Part(grams, FLOUR_HEAT, celsius);
    }

    /** Water; milk and egg are near enough. */
    public static Part water(double grams, double celsius) {
      return new Part(grams, WATER_HEAT, celsius);
    }

    /** A starter or preferment of this much flour and water. */
    public static Part preferment(double flourGrams, double waterGrams, double celsius) {
      double grams = flourGrams + waterGrams;
      double heat =
          grams <= 0 ? WATER_HEAT : (flourGrams * FLOUR_HEAT + waterGrams * WATER_HEAT) / grams;
      return new Part(Math.max(0, grams), heat, celsius);
    }

    /** Ice at its melting point: water that lacks its heat of melting. */
    public static Part ice(double grams) {
      return new Part(grams, WATER_HEAT, -MELTING / WATER_HEAT);
    }

    double capacity() {
      return grams * heat;
    }
  }

  /**
   * Temperature after mixing by heat balance.
   *
   * @param flourGrams mass of flour and other dry matter
   * @param flour its temperature, °C
   * @param waterGrams mass of liquid
   * @param water its temperature, °C
   * @param warming how much the mixer warms the dough, °C (a third of the bakers' friction factor)
   * @return °C
   */
  public static double mixed(
      double flourGrams, double flour, double waterGrams, double water, double warming) {
    return mixed(List.of(Part.flour(flourGrams, flour), Part.water(waterGrams, water)), warming);
  }

  /**
   * Temperature after mixing of any parts, ice and preferments among them.
   *
   * @param parts together of some mass
   * @param warming how much the mixer warms the dough, °C
   * @return °C; at 0 or below not all ice would melt, and the figure says only how far off that is
   * @throws IllegalArgumentException if there is nothing in the bowl
   */
  public static double mixed(List<Part> parts, double warming) {
    double capacity = parts.stream().mapToDouble(Part::capacity).sum();
    if (capacity <= 0) {
      throw new IllegalArgumentException("nothing to mix");
    }
    double heat = parts.stream().mapToDouble(part -> part.capacity() * part.celsius()).sum();
    return heat / capacity + warming;
  }

  /** Whether a temperature after mixing lies where the balance holds. */
  public static boolean covers(double celsius) {
    return celsius > 0 && celsius < 60;
  }

  /**
   * Minutes in which a dough covers 63 % of the way to the temperature of its surroundings, in
   * still air, as a ball.
   *
   * @param grams mass of one piece
   */
  public static double timeConstant(double grams) {
    double kilograms = Math.max(grams, 1) / 1000;
    double volume = kilograms / DOUGH_DENSITY;
    double area = DoughBody.Form.BALL.area(volume);
    return kilograms * DOUGH_HEAT * 1000 / (AIR_TRANSFER * area) / 60;
  }

  /**
   * Temperature after some time in a place.
   *
   * @param start °C
   * @param place °C
   * @param minutes time in the place
   * @param timeConstant minutes, from {@link #timeConstant}
   */
  public static double after(double start, double place, double minutes, double timeConstant) {
    return place + (start - place) * Math.exp(-minutes / timeConstant);
  }
}
