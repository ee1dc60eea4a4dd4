package crumbtrail.findings;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The causes in order, and what they leave open.
 *
 * @param ranked causes for which anything speaks, likeliest first
 * @param unexplained keys of signs seen for which no cause accounts
 * @param unspoken how likely each cause is all the same of which nothing speaks: what its prior and
 *     the doubts leave of it, by key
 */
public record Findings(
    List<Finding> ranked, List<String> unexplained, Map<String, Double> unspoken) {
  public Findings {
    ranked = List.copyOf(ranked);
    unexplained = List.copyOf(unexplained);
    unspoken = Map.copyOf(unspoken);
  }

  /** Findings that say nothing of causes of which nothing speaks. */
  public Findings(List<Finding> ranked, List<String> unexplained) {
    this(ranked, unexplained, Map.of());
  }

  /** How likely a cause is, whether anything speaks for it or not; 0 if it is not known. */
  public double probability(String cause) {
    return ranked.stream()
        .filter(finding -> finding.cause().key().equals(cause))
        .map(Finding::probability)
        .findFirst()
        .orElseGet(() -> unspoken.getOrDefault(cause, 0.0));
  }

  /** Keys of the signs seen for which some cause accounts. */
  public Set<String> explained() {
    Set<String> explained = new LinkedHashSet<>();
    ranked.forEach(finding -> explained.addAll(finding.explains()));
    return explained;
  }
}
