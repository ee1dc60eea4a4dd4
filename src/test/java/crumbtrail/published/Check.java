package crumbtrail.published;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A number that somebody else published beside the number that the model gives.
 *
 * @param what what was compared, with its inputs
 * @param published the published number
 * @param ours what the model gives, computed and never typed in
 * @param unit unit of both
 * @param tolerance largest difference that counts as agreement, in the unit
 * @param argument why this tolerance and no other, or what is known of a miss
 * @param source who published it
 * @param missed whether the model is known to miss it: the table then says so, and the test fails
 *     as soon as it no longer does
 */
public record Check(
    String what,
    double published,
    double ours,
    String unit,
    double tolerance,
    String argument,
    String source,
    boolean missed) {

  /** A check that the model is held to. */
  public static Check of(
      String what,
      double published,
      double ours,
      String unit,
      double tolerance,
      String argument,
      String source) {
    return new Check(what, published, ours, unit, tolerance, argument, source, false);
  }

  /** A published number that the model is known to miss; {@code argument} says why. */
  public static Check missed(
      String what,
      double published,
      double ours,
      String unit,
      double tolerance,
      String argument,
      String source) {
    return new Check(what, published, ours, unit, tolerance, argument, source, true);
  }

  /**
   * A published range. The check holds anywhere inside it.
   *
   * @param low lower end of the range
   * @param high upper end of the range
   */
  public static Check between(
      String what, double low, double high, double ours, String unit, String source) {
    return of(
        what + ", published " + plain(low) + " to " + plain(high),
        (low + high) / 2,
        ours,
        unit,
        (high - low) / 2,
        "the published range",
        source);
  }

  // Ends that were multiplied in binary would show all their digits.
  private static String plain(double end) {
    return BigDecimal.valueOf(end).round(new MathContext(4)).stripTrailingZeros().toPlainString();
  }

  /** Ours less the published number. */
  public double error() {
    return ours - published;
  }

  /** Whether the two agree within the tolerance. */
  public boolean holds() {
    return Math.abs(error()) <= tolerance * (1 + 1e-9) + 1e-12;
  }
}
