package crumbtrail.dough;

/**
 * What raises a dough, and how strongly.
 *
 * @param yeast instant dry yeast or its equivalent, percent of flour
 * @param starter ripe sourdough starter, percent of flour
 * @param salt percent of flour
 * @param sugar percent of flour
 * @param wholeGrain whole-grain flour, percent of flour
 * @param sugarTolerant whether the yeast is of the kind for sweet doughs
 */
public record Leaven(
    double yeast,
    double starter,
    double salt,
    double sugar,
    double wholeGrain,
    boolean sugarTolerant) {

  // Sourdough Framework (CC BY-SA book): at 25 °C a dough with 20 % starter is ready in about 5 h,
  // with 10 % in about 8 h.
  private static final double STARTER_HOURS = 5;
  private static final double STARTER_DOSE = 20;
  private static final double STARTER_POWER = Math.log(8.0 / 5) / Math.log(2);
  private static final double STARTER_CELSIUS = 25;

  // Common practice: 1 % instant yeast and 2 % salt double a dough in about an hour at 26 °C. Small
  // doses multiply during their long rise, so that time grows less than in proportion; the power is
  // our choice. It gives a poolish with 0.06 % some 9.5 h at 26 °C and 16 h at 20 °C.
  private static final double YEAST_MINUTES = 60;
  private static final double YEAST_POWER = 0.8;

  /** Whether anything here can raise a dough. */
  public boolean raises() {
    return yeast > 0 || starter > 0;
  }

  /** Whether the starter does more of the work than the yeast. */
  public boolean isSourdough() {
    return starterRate() > yeastRate();
  }

  /**
   * How much of its bulk rise the dough makes in a minute at 26 °C.
   *
   * @return the inverse of the minutes until ready; 0 if nothing raises it
   */
  public double ratePerMinute() {
    return (yeastRate() + starterRate()) * saltFactor() * sugarFactor() * wholeGrainFactor();
  }

  private double yeastRate() {
    return yeast <= 0 ? 0 : Math.pow(yeast, YEAST_POWER) / YEAST_MINUTES;
  }

  private double starterRate() {
    if (starter <= 0) {
      return 0;
    }
    double hours = STARTER_HOURS * Math.pow(STARTER_DOSE / starter, STARTER_POWER);
    return 1 / (60 * hours) / YeastActivity.at(STARTER_CELSIUS);
  }

  // Bran and germ feed yeast and bacteria: a dough of whole grain ripens faster; by how much is
  // common practice.
  private double wholeGrainFactor() {
    return 1 + 0.3 * Math.min(100, wholeGrain) / 100;
  }

  // Direction published (Marek and Bushuk 1967); one tenth for each percent of salt is from memory
  // and unverified.
  private double saltFactor() {
    return Math.min(1.2, Math.max(0.3, 1 - 0.1 * (salt - 2)));
  }

  // No penalty to 5 %, mild to 10 %, marked to 15 %, strong above (trade pages; the slope between
  // is common practice).
  private double sugarFactor() {
    double over = Math.max(0, sugar - 5);
    return Math.max(0.2, 1 - over * (sugarTolerant ? 0.012 : 0.03));
  }
}
