package crumbtrail.trends;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How much oftener or rarer each cause is at work in one kitchen than elsewhere, learnt from bakes
 * of which the baker said what it was.
 *
 * <p>What counts is not how often a cause was confirmed but how much oftener than the rankings
 * foretold: their probabilities, summed over the judged bakes, say how many were to be expected.
 * The share of bakes in which a cause is at work has a beta distribution, whose mean before the
 * first judged bake is the share that was foretold and whose weight is that of {@link #PRIOR_CASES}
 * foretold cases. A cause that comes up as often as foretold is not moved, however frequent it is.
 */
public final class KitchenOdds {
  /** The weight of what was foretold, in cases of a cause. Chosen on invented kitchens. */
  public static final double PRIOR_CASES = 4;

  /** Odds of one kitchen are moved no further than this, decibans: tenfold. Our choice. */
  public static final double MOST = 10;

  /** Shares are kept off nought and one, where odds have no end. */
  private static final double LEAST = 0.001;

  private KitchenOdds() {}

  /**
   * What was learnt of a cause.
   *
   * @param confirmed bakes in which it was at work by the baker's word
   * @param foretold in so many the rankings expected it: the sum of its probabilities
   * @param before its share of the judged bakes as foretold, 0 to 1
   * @param share its share in this kitchen, mean of the beta distribution, 0 to 1
   * @param decibans by how much its log-odds move
   */
  public record Learnt(
      long confirmed, double foretold, double before, double share, double decibans) {}

  /**
   * What is learnt of a cause.
   *
   * @param foretold sum of the probabilities with which it was named, at most the judged bakes
   * @param confirmed bakes in which it was confirmed
   * @param judged bakes in which any cause was confirmed, at least one
   * @throws IllegalArgumentException if more bakes were foretold or confirmed than judged
   */
  public static Learnt of(double foretold, long confirmed, long judged) {
    if (!(foretold >= 0 && foretold <= judged)
        || confirmed < 0
        || confirmed > judged
        || judged == 0) {
      throw new IllegalArgumentException(
          "no counts of bakes: %s foretold and %d confirmed of %d"
              .formatted(foretold, confirmed, judged));
    }
    double before = within(foretold / judged);
    // Beta(cases, cases / before - cases) has the mean "before"; each judged bake adds to one side.
    double share = within((PRIOR_CASES + confirmed) / (PRIOR_CASES / before + judged));
    double moved = logOdds(share) - logOdds(before);
    return new Learnt(confirmed, foretold, before, share, Math.max(-MOST, Math.min(MOST, moved)));
  }

  /**
   * What is learnt of every cause that was named or confirmed, by key.
   *
   * @param bakes those without a confirmed cause or without a ranking are left out
   */
  public static Map<String, Learnt> of(List<Foretold.Bake> bakes) {
    Map<String, Double> foretold = new HashMap<>();
    Map<String, Long> confirmed = new HashMap<>();
    long judged = 0;
    for (Foretold.Bake bake : bakes) {
      if (bake.named().isEmpty() || bake.confirmed().isEmpty()) {
        continue;
      }
      judged++;
      bake.named().forEach(one -> foretold.merge(one.cause(), one.probability(), Double::sum));
      bake.confirmed().forEach(cause -> confirmed.merge(cause, 1L, Long::sum));
    }
    Map<String, Learnt> learnt = new TreeMap<>();
    for (String cause : foretold.keySet()) {
      learnt.put(cause, of(foretold.get(cause), confirmed.getOrDefault(cause, 0L), judged));
    }
    for (Map.Entry<String, Long> one : confirmed.entrySet()) {
      learnt.putIfAbsent(one.getKey(), of(0, one.getValue(), judged));
    }
    return learnt;
  }

  private static double within(double share) {
    return Math.max(LEAST, Math.min(1 - LEAST, share));
  }

  private static double logOdds(double share) {
    return 10 * Math.log10(share / (1 - share));
  }
}
