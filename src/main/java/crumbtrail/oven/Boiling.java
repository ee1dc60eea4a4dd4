package crumbtrail.oven;

/**
 * Boiling point of water at a height above the sea: standard atmosphere and Antoine's equation.
 * Within 0.4 °F of the published tables up to 10 000 ft (Colorado State University Extension; NMSU
 * E-215). Valid to 5 km.
 */
public final class Boiling {
  private Boiling() {}

  /**
   * Boiling point.
   *
   * @param metres height above the sea
   * @return °C
   */
  public static double at(double metres) {
    double millimetres = pressure(metres) * 760 / 101.325;
    return 1730.63 / (8.07131 - Math.log10(millimetres)) - 233.426;
  }

  /**
   * Pressure of the air.
   *
   * @param metres height above the sea
   * @return kPa
   */
  public static double pressure(double metres) {
    return 101.325 * Math.pow(1 - 2.25577e-5 * metres, 5.25588);
  }
}
