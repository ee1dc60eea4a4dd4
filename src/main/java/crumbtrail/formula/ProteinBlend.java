package crumbtrail.formula;

/**
 * Mass balances for strengthening a flour with dry gluten. Weights in grams, protein in percent.
 */
public final class ProteinBlend {
  private ProteinBlend() {}

  /**
   * Gluten to put on top of the flour.
   *
   * @throws IllegalArgumentException if gluten is not richer than the target
   */
  public static double toAdd(double flour, double protein, double target, double gluten) {
    check(target, gluten);
    return flour * (target - protein) / (gluten - target);
  }

  /**
   * Gluten that takes the place of as much flour, so that their sum stays.
   *
   * @throws IllegalArgumentException if gluten is not richer than the target or than the flour
   */
  public static double toSwap(double total, double protein, double target, double gluten) {
    check(target, gluten);
    check(protein, gluten);
    return total * (target - protein) / (gluten - protein);
  }

  private static void check(double lower, double gluten) {
    if (!(lower < gluten)) {
      throw new IllegalArgumentException(
          "gluten of " + gluten + " % protein cannot raise a flour to " + lower + " %");
    }
  }
}
