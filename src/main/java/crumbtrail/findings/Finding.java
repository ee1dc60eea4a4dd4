package crumbtrail.findings;

import crumbtrail.knowledge.Cause;
import crumbtrail.rules.Evidence;
import java.util.List;

/**
 * What speaks for and against one cause.
 *
 * @param cause the cause
 * @param decibans its log-odds: prior and evidence together
 * @param probability that this cause was at work, 0 to 1; causes are not exclusive, so these do not
 *     sum to one
 * @param evidence the evidence that counts, strongest for it first, strongest against it last
 * @param explains keys of the signs seen that speak for it
 */
public record Finding(
    Cause cause,
    double decibans,
    double probability,
    List<Evidence> evidence,
    List<String> explains) {
  public Finding {
    evidence = List.copyOf(evidence);
    explains = List.copyOf(explains);
  }

  /** A finding that stands alone: its probability is its odds. */
  public Finding(Cause cause, double decibans, List<Evidence> evidence, List<String> explains) {
    this(cause, decibans, 1 / (1 + Math.pow(10, -decibans / 10)), evidence, explains);
  }

  /** The same with another probability. */
  Finding believed(double other) {
    return new Finding(cause, decibans, other, evidence, explains);
  }

  /** Whether anything at all speaks for it. */
  public boolean supported() {
    // The strongest word for it stands first.
    return !evidence.isEmpty() && evidence.get(0).decibans() > 0;
  }
}
