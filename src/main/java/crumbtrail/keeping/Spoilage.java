package crumbtrail.keeping;

import crumbtrail.dough.CardinalGrowth;

/**
 * Whether bread was kept so that mould or rope was to be expected.
 *
 * <p>The scale is ours: {@code 1 - exp(-(t / t0)^3)}, with t0 the days after which spoilage is
 * commonly seen under these conditions; 0.12 at half that time, 0.63 at that time, near 1 at twice.
 * It speaks of the conditions alone: without spores nothing spoils, and how many there were nobody
 * knows. Thresholds and sources stand in docs/science/keeping.md.
 */
public final class Spoilage {
  private static final double ROOM = 21;
  private static final double STEEPNESS = 3;

  // Bread without preservative shows mould after 4 to 7 days in a room, home-made after 3 to 5
  // (common practice).
  private static final double MOULD_DAYS = 5;

  // Moulds of bread grow best at 25 to 30 °C (Gock and others 2003); the limits are our choice, so
  // that a refrigerator keeps bread for weeks.
  private static final double MOULD_LEAST = -4;
  private static final double MOULD_BEST = 27;
  private static final double MOULD_MOST = 40;
  private static final double SOUR = 4.5;
  private static final double SOUR_KEEPS = 1.5;

  // First signs of rope after 40 h at 37 °C (Rumeus and Turtoi 2013).
  private static final double ROPE_DAYS = 40.0 / 24;
  private static final double ROPE_WARM = 37;
  private static final double ROPE_LEAST = 8;
  private static final double ROPE_BEST = 38;
  private static final double ROPE_MOST = 50;

  // No rope below pH 4.6, at risk above 5 (Foods 11:3021, 2022); in full at the 5.4 of yeast bread.
  private static final double ROPE_SAFE = 4.6;
  private static final double ROPE_FULL = 5.4;

  private Spoilage() {}

  /** How damp the crust was kept. Factors on the time to mould: our choice, in common practice. */
  public enum Damp {
    /** Open to the air, the crust dry: keeps twice as long from mould. */
    OPEN(2),
    /** In a bin, cloth or paper. */
    ORDINARY(1),
    /** In a closed bag or a damp place. */
    CLOSED(0.75),
    /** Wrapped before it was cold, water on the crust: half the time. */
    SWEATED(0.5);

    private final double keeps;

    Damp(double keeps) {
      this.keeps = keeps;
    }
  }

  /**
   * Hazard of mould.
   *
   * @param days how long it was kept
   * @param celsius where
   * @param damp how
   * @param pH of the crumb
   * @return 0 to 1, see above
   */
  public static double mould(double days, double celsius, Damp damp, double pH) {
    double rate = mouldGrowth(celsius) / mouldGrowth(ROOM);
    double keeps = MOULD_DAYS * damp.keeps * (pH < SOUR ? SOUR_KEEPS : 1);
    return hazard(days * rate / keeps);
  }

  /**
   * Hazard of rope.
   *
   * @param days how long it was kept
   * @param celsius where
   * @param pH of the crumb
   * @return 0 to 1, see above; 0 below pH 4.6
   */
  public static double rope(double days, double celsius, double pH) {
    double rate = ropeGrowth(celsius) / ropeGrowth(ROPE_WARM);
    double share = Math.min(1, Math.max(0, (pH - ROPE_SAFE) / (ROPE_FULL - ROPE_SAFE)));
    return share * share * (3 - 2 * share) * hazard(days * rate / ROPE_DAYS);
  }

  /** Whether temperature and time lie where anything is published, 0 to 40 °C and 14 days. */
  public static boolean covers(double celsius, double days) {
    return celsius >= 0 && celsius <= 40 && days <= 14;
  }

  private static double mouldGrowth(double celsius) {
    return CardinalGrowth.between(celsius, MOULD_LEAST, MOULD_BEST, MOULD_MOST);
  }

  private static double ropeGrowth(double celsius) {
    return CardinalGrowth.between(celsius, ROPE_LEAST, ROPE_BEST, ROPE_MOST);
  }

  private static double hazard(double times) {
    return -Math.expm1(-Math.pow(Math.max(0, times), STEEPNESS));
  }
}
