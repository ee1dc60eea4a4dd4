package crumbtrail.knowledge;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * The few numbers that turn the words of the rules into weights and sums into probabilities. Fitted
 * by {@code crumbtrail rules calibrate}, which writes them to {@code rules/calibration.yaml}; what
 * they mean and how they were measured is in docs/how-it-reasons.md.
 *
 * @param priorShare how far the priors stand apart, as a share of what the catalogue says
 * @param tablesShare share of a sign's weight that follows from counting published tables; the rest
 *     is the word of the rule
 * @param smoothing how many tables' worth of doubt a count of tables is given
 * @param unnamed decibans of whatever no rule speaks of, so that a lone faint suspicion does not
 *     lead an empty field
 * @param base log-odds (natural) of a cause whose sum is nought and whose lead is nought
 * @param sum log-odds (natural) for each 10 decibans of the sum
 * @param lead log-odds (natural) for each 10 decibans that the cause stands above all others
 *     together
 * @param first log-odds (natural) more for the cause that leads its bake: what explains away the
 *     others is likelier than its sum says
 * @param ahead the same link for a bake that nobody has seen fail; null to take it from failures
 */
public record Calibration(
    @JsonProperty("prior share") double priorShare,
    @JsonProperty("tables share") double tablesShare,
    double smoothing,
    double unnamed,
    double base,
    double sum,
    double lead,
    double first,
    @JsonProperty("before the bake") Ahead ahead) {

  /** The link for a bake that is still to come: what is odd on its sheet may yet go well. */
  public record Ahead(double unnamed, double base, double sum, double lead, double first) {}

  /** A calibration for failures alone. */
  public Calibration(
      double priorShare,
      double tablesShare,
      double smoothing,
      double unnamed,
      double base,
      double sum,
      double lead,
      double first) {
    this(priorShare, tablesShare, smoothing, unnamed, base, sum, lead, first, null);
  }

  /** The calibration by which a bake is judged before it is baked. */
  public Calibration beforehand() {
    return ahead == null
        ? this
        : withLink(ahead.unnamed(), ahead.base(), ahead.sum(), ahead.lead(), ahead.first());
  }

  /** The same with the link for a bake that is still to come taken from another calibration. */
  public Calibration withAhead(Calibration other) {
    return new Calibration(
        priorShare,
        tablesShare,
        smoothing,
        unnamed,
        base,
        sum,
        lead,
        first,
        new Ahead(other.unnamed, other.base, other.sum, other.lead, other.first));
  }

  /** Every word as it stands in the rule, every sum a log-odds. */
  public static final Calibration NONE = new Calibration(1, 0, 1, -30, 0, Math.log(10), 0, 0);

  /**
   * The same weights with another link from sums to probabilities.
   *
   * @param link base, sum, lead and first
   */
  public Calibration withLink(double newUnnamed, double... link) {
    return new Calibration(
        priorShare, tablesShare, smoothing, newUnnamed, link[0], link[1], link[2], link[3], ahead);
  }
}
