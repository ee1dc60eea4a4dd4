package crumbtrail.findings;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The causes in order, and what they leave open.
 *
 * @param ranked causes for which anything speaks, likeliest first
 * @param unexplained keys of signs seen for which no cause accounts
 */
public record Findings(List<Finding> ranked, List<String> unexplained) {
  public Findings {
    ranked = List.copyOf(ranked);
    unexplained = List.copyOf(unexplained);
  }

  /** Keys of the signs seen for which some cause accounts. */
  public Set<String> explained() {
    Set<String> explained = new LinkedHashSet<>();
    ranked.forEach(finding -> explained.addAll(finding.explains()));
    return explained;
  }
}
