package crumbtrail.findings;

import crumbtrail.knowledge.Cause;
import crumbtrail.rules.Evidence;
import java.util.List;

/**
 * What speaks for and against one cause.
 *
 * @param cause the cause
 * @param decibans its log-odds: prior and evidence together
 * @param evidence the evidence that counts, strongest for it first, strongest against it last
 * @param explains keys of the signs seen that speak for it
 */
public record Finding(
    Cause cause, double decibans, List<Evidence> evidence, List<String> explains) {
  public Finding {
    evidence = List.copyOf(evidence);
    explains = List.copyOf(explains);
  }

  /**
   * The probability that this cause was at work, 0 to 1. Causes are not exclusive; these do not sum
   * to one.
   */
  public double probability() {
    return 1 / (1 + Math.pow(10, -decibans / 10));
  }

  /** Whether anything at all speaks for it. */
  public boolean supported() {
    return evidence.stream().anyMatch(one -> one.decibans() > 0);
  }
}
