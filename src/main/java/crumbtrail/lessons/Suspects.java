package crumbtrail.lessons;

import crumbtrail.findings.Finding;
import crumbtrail.findings.Findings;
import crumbtrail.findings.Weights;
import crumbtrail.knowledge.Cause;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which cause it was, if it was one: the odds of all causes shared out to one. Its entropy tells
 * how many suspects are left, as if they were equally likely.
 */
final class Suspects {
  private final Map<String, Double> shares = new HashMap<>();

  /**
   * @param causes all causes
   * @param weights give the odds of a cause before anything is known
   * @param findings what speaks for and against them
   * @param tags tags of the bread's style
   */
  Suspects(List<Cause> causes, Weights weights, Findings findings, Collection<String> tags) {
    causes.forEach(cause -> shares.put(cause.key(), odds(weights.prior(cause, tags))));
    findings.ranked().forEach(one -> shares.put(one.cause().key(), odds(one)));
    double sum = shares.values().stream().mapToDouble(one -> one).sum();
    shares.replaceAll((cause, odds) -> odds / sum);
  }

  private static double odds(Finding finding) {
    return odds(finding.decibans());
  }

  private static double odds(double decibans) {
    return Math.pow(10, Math.max(-60, Math.min(60, decibans)) / 10);
  }

  /** How likely it was this cause, 0 to 1. */
  double share(String cause) {
    return shares.getOrDefault(cause, 0.0);
  }

  /** What is still unknown, bits: each bit that goes halves the suspects. */
  double bits() {
    return shares.values().stream()
        .filter(share -> share > 0)
        .mapToDouble(share -> -share * Math.log(share) / Math.log(2))
        .sum();
  }

  /** The likeliest causes, likeliest first. */
  List<String> first(int most) {
    return shares.entrySet().stream()
        .sorted(
            Map.Entry.<String, Double>comparingByValue()
                .reversed()
                .thenComparing(Comparator.comparing(Map.Entry::getKey)))
        .limit(most)
        .map(Map.Entry::getKey)
        .toList();
  }
}
