package crumbtrail.dough;

/**
 * How fast baker's yeast multiplies at a temperature, against its best.
 *
 * <p>The cardinal temperature model with inflection of Rosso, Lobry, Bajard and Flandrois (Appl
 * Environ Microbiol 61:610, 1995; its equation from memory) with the best temperature of 32.3 °C
 * and the upper limit of 45.4 °C that Salvadó and others found for Saccharomyces cerevisiae (Appl
 * Environ Microbiol 77:2292, 2011). The lower limit of 3 °C is our choice within their 1.3 to 4.3
 * °C for the genus. This is growth, not gas: for gas see {@link YeastActivity}.
 */
public final class CardinalGrowth {
  /** No growth at or below this temperature, °C. */
  public static final double LEAST = 3;

  /** The temperature of fastest growth, °C. */
  public static final double BEST = 32.3;

  /** No growth at or above this temperature, °C. */
  public static final double MOST = 45.4;

  private CardinalGrowth() {}

  /**
   * Rate of growth against the best.
   *
   * @param celsius temperature of the dough
   * @return 0 to 1; 0 at and beyond the limits
   */
  public static double at(double celsius) {
    return between(celsius, LEAST, BEST, MOST);
  }

  /**
   * The same model for any microbe.
   *
   * @param celsius temperature
   * @param least no growth at or below, °C
   * @param best fastest growth, °C, nearer to {@code most} than to {@code least}
   * @param most no growth at or above, °C
   * @return 0 to 1
   */
  public static double between(double celsius, double least, double best, double most) {
    if (celsius <= least || celsius >= most) {
      return 0;
    }
    double above = celsius - least;
    double span = best - least;
    double bend = span * (celsius - best) - (best - most) * (best + least - 2 * celsius);
    return (celsius - most) * above * above / (span * bend);
  }

  /** Whether the temperature lies in the range in which the model was published, 0 to 46 °C. */
  public static boolean covers(double celsius) {
    return celsius >= 0 && celsius <= 46;
  }
}
