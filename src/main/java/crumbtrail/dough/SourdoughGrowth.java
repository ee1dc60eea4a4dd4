package crumbtrail.dough;

/**
 * How fast the yeast and the lactobacilli of a sourdough multiply, in laboratory medium.
 *
 * <p>The form is that of Gänzle, Ehmann and Hammes (Appl Environ Microbiol 64:2616, 1998), {@code a
 * x^b exp(-c x)} with {@code x} the distance below the highest temperature of growth; form and
 * growth-rate table are from memory, the coefficients are fitted here to that table. Temperatures
 * of best growth, upper limits, salt and acidity are from the paper's abstract and the author's
 * summary (rec.food.sourdough FAQ 39). Dough is slower than the medium, by a factor that depends on
 * the dough: see {@link PrefermentRipeness}.
 */
public final class SourdoughGrowth {
  private static final Curve YEAST = new Curve(0.01238, 2.983, 0.3357, 36, 8, 10);
  private static final Curve BACTERIA = new Curve(0.1335, 1.496, 0.1891, 41, 4, 8);

  private static final Tabulated YEAST_CURVE = new Tabulated(0, 45, YEAST::at);
  private static final Tabulated BACTERIA_CURVE = new Tabulated(0, 45, BACTERIA::at);

  // Four parts of salt to a hundred of water stop the lactobacilli; the yeast grows at eight.
  private static final double BACTERIA_SALT = 4;
  private static final double YEAST_SALT = 10;

  // Lactobacilli: lowest, best and highest pH. The best is published as 5.0 to 5.5.
  private static final double PH_LEAST = 3.8;
  private static final double PH_BEST = 5.25;
  private static final double PH_MOST = 6.7;

  private SourdoughGrowth() {}

  /** The two limits of cold are where growth begins and where the published form holds in full. */
  private record Curve(
      double a, double b, double c, double hottest, double coldest, double fromHere) {
    double at(double celsius) {
      if (celsius <= coldest || celsius >= hottest) {
        return 0;
      }
      double x = hottest - celsius;
      return a * Math.pow(x, b) * Math.exp(-c * x) * awake(celsius);
    }

    // The published form never falls to nought in the cold, though growth stops there. A smooth
    // step between the two limits, our choice.
    private double awake(double celsius) {
      double share = Math.min(1, (celsius - coldest) / (fromHere - coldest));
      return share * share * (3 - 2 * share);
    }
  }

  /**
   * Growth of sourdough yeast (Candida milleri).
   *
   * @param celsius temperature
   * @return per hour: the yeast doubles in {@code ln 2} over this; 0 at 8 °C and below, 36 °C and
   *     above
   */
  public static double yeast(double celsius) {
    return YEAST_CURVE.at(celsius);
  }

  /**
   * Growth of sourdough lactobacilli (Fructilactobacillus sanfranciscensis).
   *
   * @param celsius temperature
   * @return per hour; 0 at 4 °C and below, 41 °C and above
   */
  public static double bacteria(double celsius) {
    return BACTERIA_CURVE.at(celsius);
  }

  /**
   * How much salt leaves of the growth of lactobacilli. None is left at 4 %, in medium (abstract of
   * 1998) as in rye dough (Brandt, Hammes, Gänzle 2004); the parabola is our choice.
   *
   * @param salt percent of the water in a medium, of the flour in a dough
   * @return 1 without salt, 0 from 4 % on
   */
  public static double bacteriaInSalt(double salt) {
    return parabola(salt, BACTERIA_SALT);
  }

  /**
   * How much salt leaves of the growth of sourdough yeast, which is published to grow at 8 %; the
   * limit of 10 % and the parabola are our choice.
   *
   * @param salt percent of the water
   * @return 1 without salt, 0 from 10 % on
   */
  public static double yeastInSalt(double salt) {
    return parabola(salt, YEAST_SALT);
  }

  /**
   * How much acidity leaves of the growth of lactobacilli: the cardinal pH model of Rosso and
   * others (1995, equation from memory) between 3.8 and 6.7, best at 5.25. Yeast does not mind
   * between 3.5 and 7 (abstract of 1998).
   *
   * @param pH of the dough
   * @return 0 to 1; 0 at and beyond the limits
   */
  public static double bacteriaAtAcidity(double pH) {
    if (pH <= PH_LEAST || pH >= PH_MOST) {
      return 0;
    }
    double inside = (pH - PH_LEAST) * (pH - PH_MOST);
    double off = pH - PH_BEST;
    return inside / (inside - off * off);
  }

  /** Whether the temperature lies in the range of the table, 10 to 40 °C. */
  public static boolean covers(double celsius) {
    return celsius >= 10 && celsius <= 40;
  }

  private static double parabola(double value, double limit) {
    double share = Math.max(0, value) / limit;
    return share >= 1 ? 0 : 1 - share * share;
  }
}
