package crumbtrail.findings;

import crumbtrail.knowledge.Cause;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How likely each of some causes is, and what an answer would teach about them. Causes are taken as
 * independent of each other, each at work or not, as the report states them.
 */
final class Beliefs {
  private static final double SURE = 1e-9;

  private final double[] probabilities;

  private Beliefs(double[] probabilities) {
    this.probabilities = probabilities;
  }

  /**
   * Beliefs after some findings. A cause of which nothing speaks keeps what its prior leaves it.
   */
  static Beliefs of(List<Cause> causes, Findings findings) {
    Map<String, Double> ranked = new HashMap<>(findings.unspoken());
    findings.ranked().forEach(one -> ranked.put(one.cause().key(), one.probability()));
    return of(
        causes.stream().mapToDouble(cause -> ranked.getOrDefault(cause.key(), 0.0)).toArray());
  }

  /**
   * Beliefs of such probabilities, none of which is taken for quite sure, so that odds are finite.
   */
  static Beliefs of(double... probabilities) {
    double[] unsure = probabilities.clone();
    for (int cause = 0; cause < unsure.length; cause++) {
      unsure[cause] = Math.min(1 - SURE, Math.max(SURE, unsure[cause]));
    }
    return new Beliefs(unsure);
  }

  /**
   * How likely each answer is, by Bayes' theorem from what is believed now: how common the answer
   * is among all bakes, times how well each cause that may be at work agrees with it. An answer
   * that lifts the odds of a cause tenfold is ten times as common where that cause is at work.
   *
   * @param shares how common each answer is where nothing is known
   * @param answered what would be believed after each answer
   * @return adds up to one
   */
  double[] expected(double[] shares, List<Beliefs> answered) {
    double[] expected = new double[shares.length];
    for (int answer = 0; answer < shares.length; answer++) {
      double log = Math.log(shares[answer]);
      for (int cause = 0; cause < probabilities.length; cause++) {
        double now = probabilities[cause];
        double then = answered.get(answer).probabilities[cause];
        if (now != then) {
          double ratio = then / (1 - then) * (1 - now) / now;
          log += Math.log(1 - now + now * ratio);
        }
      }
      expected[answer] = log;
    }
    double most = Arrays.stream(expected).max().orElse(0);
    for (int answer = 0; answer < expected.length; answer++) {
      expected[answer] = Math.exp(expected[answer] - most);
    }
    double sum = Arrays.stream(expected).sum();
    return Arrays.stream(expected).map(one -> one / sum).toArray();
  }

  /**
   * The expected drop in entropy that an answer brings, in bits, summed over the causes: the
   * entropy of what is believed on average over the answers, less the average of the entropies
   * after each. Never below nought, and never above the entropy of the answer itself.
   *
   * @param shares how common each answer is where nothing is known
   * @param answered what would be believed after each answer
   */
  double bits(double[] shares, List<Beliefs> answered) {
    double[] expected = expected(shares, answered);
    double bits = 0;
    for (int cause = 0; cause < probabilities.length; cause++) {
      double mean = 0;
      double left = 0;
      boolean moved = false;
      for (int answer = 0; answer < expected.length; answer++) {
        double then = answered.get(answer).probabilities[cause];
        moved |= then != probabilities[cause];
        mean += expected[answer] * then;
        left += expected[answer] * entropy(then);
      }
      if (moved) {
        bits += Math.max(0, entropy(mean) - left);
      }
    }
    double most = 0;
    for (double share : expected) {
      most -= share > 0 ? share * Math.log(share) / Math.log(2) : 0;
    }
    return Math.min(bits, most);
  }

  /** Entropy of a cause that is at work with this probability, bits. */
  static double entropy(double probability) {
    if (probability <= 0 || probability >= 1) {
      return 0;
    }
    double other = 1 - probability;
    return -(probability * Math.log(probability) + other * Math.log(other)) / Math.log(2);
  }
}
