package crumbtrail.lessons;

import crumbtrail.findings.Finding;
import crumbtrail.findings.Findings;
import crumbtrail.workup.Workup;

/**
 * How a bake stands at one setting of a knob.
 *
 * @param at the setting
 * @param workup what was worked out
 * @param findings how likely each cause is to strike, as before any bake
 */
record Stand(double at, Workup workup, Findings findings) {
  /** A cause leads if it comes first and is at least this likely: our choice. */
  static final double LEADS = 0.2;

  /** How likely a cause is here; 0 if nothing speaks for it. */
  double probability(String cause) {
    return findings.ranked().stream()
        .filter(one -> one.cause().key().equals(cause))
        .mapToDouble(Finding::probability)
        .findFirst()
        .orElse(0);
  }

  /** Key of the leading cause, null if none is likely. */
  String lead() {
    return findings.ranked().stream()
        .findFirst()
        .filter(first -> first.probability() >= LEADS)
        .map(first -> first.cause().key())
        .orElse(null);
  }

  /** How likely the likeliest cause is. */
  double likeliest() {
    return findings.ranked().stream().mapToDouble(Finding::probability).findFirst().orElse(0);
  }
}
