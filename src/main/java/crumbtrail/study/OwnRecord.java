package crumbtrail.study;

import crumbtrail.bakelog.BakeLog;
import crumbtrail.trends.Foretold;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * How well the rankings agreed with what one log confirmed. Written to JSON as it stands.
 *
 * @param bakes on how many judged bakes it rests
 * @param first of so many the first cause was confirmed
 * @param firstShare the same as a share, with what it could as well be
 * @param three of so many one of the first three was
 * @param threeShare the same as a share
 * @param brier mean square of the difference between the probability of each named cause and what
 *     turned out
 * @param brierOfNoOpinion the same score for one probability for all: the share that came true
 * @param bands by tens of percent of probability
 */
public record OwnRecord(
    int bakes,
    int first,
    Share firstShare,
    int three,
    Share threeShare,
    double brier,
    double brierOfNoOpinion,
    List<Band> bands) {

  /** Fewer bakes than these say little. Our choice. */
  public static final int FEW = 20;

  /** Nineteen times of twenty the true share lies within. */
  private static final double SPREAD = 1.96;

  private static final int TENS = 10;

  public OwnRecord {
    bands = List.copyOf(bands);
  }

  /**
   * A share and what it could as well be, 0 to 1: the interval of Wilson (1927) that holds the true
   * share nineteen times of twenty.
   */
  public record Share(double value, double low, double high) {
    static Share of(int some, int all) {
      if (all == 0) {
        return new Share(0, 0, 1);
      }
      double share = (double) some / all;
      double spread = SPREAD * SPREAD / all;
      double middle = (share + spread / 2) / (1 + spread);
      double reach =
          SPREAD / (1 + spread) * Math.sqrt(share * (1 - share) / all + spread / (4 * all));
      return new Share(share, Math.max(0, middle - reach), Math.min(1, middle + reach));
    }
  }

  /**
   * Causes named with about the same probability.
   *
   * @param from lower end of the band, percent
   * @param named how many
   * @param expected so many should have been confirmed
   * @param confirmed so many were
   */
  public record Band(int from, int named, double expected, int confirmed) {}

  /**
   * The record of a log.
   *
   * @param most how many of the latest judged bakes are counted
   */
  public static OwnRecord of(BakeLog log, int most) {
    return of(Foretold.of(Kitchen.judged(log, null, most)));
  }

  static OwnRecord of(Foretold foretold) {
    List<Band> bands = new ArrayList<>();
    int named = 0;
    int confirmed = 0;
    for (var one : new TreeMap<>(foretold.bands()).entrySet()) {
      Foretold.Band band = one.getValue();
      bands.add(new Band(TENS * one.getKey(), band.named(), band.expected(), band.confirmed()));
      named += band.named();
      confirmed += band.confirmed();
    }
    double share = named == 0 ? 0 : (double) confirmed / named;
    return new OwnRecord(
        foretold.bakes(),
        foretold.first(),
        Share.of(foretold.first(), foretold.bakes()),
        foretold.three(),
        Share.of(foretold.three(), foretold.bakes()),
        foretold.brier(),
        share * (1 - share),
        bands);
  }
}
