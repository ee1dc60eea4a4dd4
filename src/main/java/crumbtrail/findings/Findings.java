package crumbtrail.findings;

import java.util.List;

/**
 * The causes in order, and what they leave open.
 *
 * @param ranked causes for which anything speaks, likeliest first
 * @param together keys of the likeliest small set of causes that accounts for every sign seen
 * @param unexplained keys of signs seen for which no cause accounts
 */
public record Findings(List<Finding> ranked, List<String> together, List<String> unexplained) {
  public Findings {
    ranked = List.copyOf(ranked);
    together = List.copyOf(together);
    unexplained = List.copyOf(unexplained);
  }
}
