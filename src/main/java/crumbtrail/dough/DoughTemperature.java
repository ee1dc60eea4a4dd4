package crumbtrail.dough;

/**
 * Dough temperature after mixing and on its way through warm and cold places.
 *
 * <p>A dough is taken as one body at one temperature (lumped). Specific heats: flour 1.7, water
 * 4.18, dough 2.8 kJ/(kg K) (food-engineering handbooks, from memory). Heat transfer of still air
 * with the bowl in the way: 8 W/(m² K) (common practice).
 */
public final class DoughTemperature {
  private static final double FLOUR_HEAT = 1.7;
  private static final double WATER_HEAT = 4.18;
  private static final double DOUGH_HEAT = 2800; // J/(kg K)
  private static final double AIR_TRANSFER = 8; // W/(m2 K)
  private static final double DOUGH_DENSITY = 800; // kg/m3, half risen

  private DoughTemperature() {}

  /**
   * Temperature after mixing by heat balance.
   *
   * @param flourGrams mass of flour and other dry matter
   * @param flour its temperature, °C
   * @param waterGrams mass of liquid
   * @param water its temperature, °C
   * @param friction warming by the mixer, °C
   * @return °C
   */
  public static double mixed(
      double flourGrams, double flour, double waterGrams, double water, double friction) {
    double dry = flourGrams * FLOUR_HEAT;
    double wet = waterGrams * WATER_HEAT;
    return (dry * flour + wet * water) / (dry + wet) + friction;
  }

  /**
   * Minutes in which a dough covers 63 % of the way to the temperature of its surroundings.
   *
   * @param grams mass of one piece
   */
  public static double timeConstant(double grams) {
    double kilograms = Math.max(grams, 1) / 1000;
    double volume = kilograms / DOUGH_DENSITY;
    double area = 4.836 * Math.pow(volume, 2.0 / 3); // a sphere of this volume
    return kilograms * DOUGH_HEAT / (AIR_TRANSFER * area) / 60;
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
