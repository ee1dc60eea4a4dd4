package crumbtrail.findings;

import crumbtrail.knowledge.Calibration;

/**
 * From sums of decibans to probabilities. A sum alone is too sure of itself, since signs of one
 * loaf hang together; how far a cause stands above the field of all others tells more.
 */
public final class Link {
  /** Sums and leads beyond these tell nothing more. */
  private static final double SUM_MOST = 20;

  private static final double SUM_LEAST = -40;

  private static final double LEAD_LEAST = -25;
  private static final double LEAD_MOST = 10;

  /** No sum counts beyond this in the field, so that odds stay finite. */
  private static final double FIELD_MOST = 30;

  private Link() {}

  /**
   * What the link looks at.
   *
   * @param sum tens of decibans, kept within bounds
   * @param lead tens of decibans above the odds of all other causes together, kept within bounds
   * @param first whether no other cause stands higher
   */
  public record Standing(double sum, double lead, boolean first) {

    /** The probability that a cause so placed was at work. */
    public double probability(Calibration calibration) {
      double logOdds =
          calibration.base()
              + calibration.sum() * sum
              + calibration.lead() * lead
              + (first ? calibration.first() : 0);
      return 1 / (1 + Math.exp(-logOdds));
    }
  }

  /**
   * Where each of some causes stands.
   *
   * @param unnamed decibans of whatever no rule speaks of; part of every cause's field
   * @param decibans the sums of all causes of one bake
   */
  public static Standing[] standings(double unnamed, double[] decibans) {
    double least = odds(unnamed);
    double field = least;
    double highest = Double.NEGATIVE_INFINITY;
    double[] odds = new double[decibans.length];
    for (int one = 0; one < odds.length; one++) {
      odds[one] = odds(decibans[one]);
      field += odds[one];
      highest = Math.max(highest, decibans[one]);
    }
    Standing[] standings = new Standing[odds.length];
    for (int one = 0; one < odds.length; one++) {
      double others = Math.max(least, field - odds[one]);
      standings[one] = standing(decibans[one], others, decibans[one] >= highest);
    }
    return standings;
  }

  /**
   * Where a cause stands by its sum alone, as before a bake, when nothing has to be explained yet.
   */
  static Standing alone(double decibans) {
    return new Standing(clipped(decibans, SUM_LEAST, SUM_MOST) / 10, 0, false);
  }

  private static Standing standing(double sum, double others, boolean first) {
    double lead = sum - 10 * Math.log10(others);
    return new Standing(
        clipped(sum, SUM_LEAST, SUM_MOST) / 10, clipped(lead, LEAD_LEAST, LEAD_MOST) / 10, first);
  }

  private static double odds(double decibans) {
    return Math.pow(10, clipped(decibans, -FIELD_MOST, FIELD_MOST) / 10);
  }

  private static double clipped(double value, double least, double most) {
    return Math.max(least, Math.min(most, value));
  }
}
