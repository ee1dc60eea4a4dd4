package crumbtrail.dough;

/**
 * How fast yeast makes gas in dough at a temperature, against its rate at 26 °C.
 *
 * <p>An exponential rise cut off softly at both ends (the form of Sharpe and DeMichele 1977, from
 * memory). The Q10 of 2.45 lies in the published 2.0 to 2.6 for 20 to 35 °C and gives 9.4 % per
 * degree near 26 °C (published: about 10 %, bakemag.com, The science of fermentation). The upper
 * cut puts the optimum near 40 °C (yeast makers: 32 to 40 °C); the lower one makes dough nearly
 * still at 4 °C (retarders: 1.7 to 4.4 °C). The growth model of Rosso et al. (1995) was tried first
 * and left: near its optimum it cannot rise as steeply as dough does. Valid from 0 to 45 °C.
 */
public final class YeastActivity {
  /** The temperature at which the rate is one, °C. */
  public static final double REFERENCE = 26;

  private static final double Q10 = 2.45;
  private static final double COLD_HALF = 8;
  private static final double COLD_WIDTH = 1.5;
  private static final double HOT_HALF = 42;
  private static final double HOT_WIDTH = 2;

  private static final double AT_REFERENCE = raw(REFERENCE);
  private static final Tabulated CURVE = new Tabulated(0, 60, YeastActivity::raw);

  private YeastActivity() {}

  /**
   * Rate of gassing of baker's yeast.
   *
   * @param celsius dough temperature
   * @return 0 or more; 1 at 26 °C
   */
  public static double at(double celsius) {
    return CURVE.at(celsius) / AT_REFERENCE;
  }

  private static double raw(double celsius) {
    double rise = Math.pow(Q10, (celsius - REFERENCE) / 10);
    double cold = 1 + Math.exp((COLD_HALF - celsius) / COLD_WIDTH);
    double hot = 1 + Math.exp((celsius - HOT_HALF) / HOT_WIDTH);
    return rise / (cold * hot);
  }
}
