package crumbtrail.formula;

/**
 * Starch-cutting enzymes of a flour, by the falling number.
 *
 * <p>Falling numbers do not add up; liquefaction numbers do: {@code LN = 6000 / (FN - 50)} (Perten;
 * the rule of the US grain inspection service for blending lots, as a seed maker's page tells it).
 * Valid from 62 s, the lowest that is published, to 500 s.
 *
 * <p>Malt: one per cent of active malt flour adds 50 to the liquefaction number, so that 0.2 %
 * bring a flour of 350 s to 250 s. From memory of millers' doses of 0.1 to 0.5 %; malts differ by a
 * factor of two either way.
 */
public final class Enzymes {
  /** Heavily sprouted grain, s (perten). */
  public static final double LOWEST = 62;

  /** As good as no activity, s (Romanian flours; baking dictionary). */
  public static final double HIGHEST = 500;

  /** Middle of the 220 to 290 s of bread flours with normal activity, s (baking dictionary). */
  public static final double NORMAL = 250;

  /**
   * Flour of which nothing is told: bought flour is sound and often malted (common practice), s.
   */
  public static final double USUAL = 300;

  /** What flour of which nothing is told may have, s (common practice). */
  public static final double USUAL_LOW = 230;

  public static final double USUAL_HIGH = 400;

  /** Rise of the liquefaction number by one per cent of malt, and its range. */
  static final double MALT = 50;

  static final double MALT_WEAK = 25;
  static final double MALT_STRONG = 100;

  /** How active a flour is. */
  public enum Activity {
    /** Below 150 s: sticky crumb, low volume. */
    EXCESSIVE,
    /** 150 to 220 s. */
    HIGH,
    /** 220 to 300 s. */
    NORMAL,
    /** 300 to 400 s: sound flour that has not been malted. */
    LOW,
    /** Above 400 s: dry crumb, pale crust, slow rise. */
    VERY_LOW
  }

  private Enzymes() {}

  /** Whether a falling number is one that flour can have. */
  public static boolean covers(double fallingNumber) {
    return fallingNumber >= LOWEST && fallingNumber <= HIGHEST;
  }

  /** Liquefaction number; falling numbers beyond the range are taken at its ends. */
  public static double liquefaction(double fallingNumber) {
    return 6000 / (Math.max(LOWEST, Math.min(HIGHEST, fallingNumber)) - 50);
  }

  /**
   * Falling number, s, never below {@link #LOWEST}.
   *
   * @param liquefaction above 0
   */
  public static double fallingNumber(double liquefaction) {
    if (!(liquefaction > 0)) {
      throw new IllegalArgumentException("a liquefaction number is above 0, not " + liquefaction);
    }
    return Math.max(LOWEST, 6000 / liquefaction + 50);
  }

  /** Falling number of a flour with malt in it, s. */
  public static double malted(double fallingNumber, double maltPercent) {
    return fallingNumber(liquefaction(fallingNumber) + MALT * Math.max(0, maltPercent));
  }

  /** Activity against that of a flour of {@link #NORMAL}, percent. */
  public static double shareOfNormal(double fallingNumber) {
    return liquefaction(fallingNumber) / liquefaction(NORMAL) * 100;
  }

  /** The band in which a falling number lies; below 150 s is our choice, the others published. */
  public static Activity activity(double fallingNumber) {
    if (fallingNumber < 150) {
      return Activity.EXCESSIVE;
    }
    if (fallingNumber < 220) {
      return Activity.HIGH;
    }
    if (fallingNumber <= 300) {
      return Activity.NORMAL;
    }
    return fallingNumber <= 400 ? Activity.LOW : Activity.VERY_LOW;
  }
}
