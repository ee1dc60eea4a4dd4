package crumbtrail.formula;

/**
 * The water that an ordinary dough of these ingredients is expected to take, in percent of flour:
 *
 * <pre>
 *   expected = 62 + 1.25 (protein - 12)          white flour
 *            + 7.5 x share of whole grain or rye
 *            + 1.0 x milk solids %
 *            + 1.5 x added gluten %
 *            + water bound by bran, flakes, seeds %
 *            + min(2.0 x scalded flour %, scald water %)
 *            - 0.6 x (sugar % over 7)
 *            - 0.15 x (fat % over 4)
 * </pre>
 *
 * <ul>
 *   <li>62 at 12 % protein: middle of the 60 to 65 of white tin bread (grain-craft; 62.5 to 65
 *       worked out from its sheet), a point lower as that flour is strong. Czech flours of 10.55 to
 *       14.75 % protein took 55.7 to 63.2 in the farinograph (czech-flours-2023), which asks for a
 *       stiffer dough.
 *   <li>1.25 a point of protein: middle of 1 to 1.5, common practice; the same flours rise by 1.8.
 *   <li>7.5 for whole grain: middle of 5 to 10 points, common practice; for rye: 74 % at 65 % rye
 *       against 68 to 70 for white (hamelman-2004) is 6 to 9 a whole share.
 *   <li>Milk solids take their own weight: common practice; 0.58 to 1.20 measured (dairy-1951).
 *   <li>Dry gluten takes 1.5 times its weight (cauvain-young).
 *   <li>Scald: milk breads with 4 to 8 % of their flour scalded run at 70 to 80 % instead of 60 to
 *       65 (water-roux-home), about two points to each per cent scalded.
 *   <li>Sugar: 0.6 a point above 6 to 8 %, common practice, unverified.
 *   <li>Fat lowers absorption by no fixed amount (lehmann-absorption); 0.15 a point above 4 % is
 *       what lies between the usual ranges of tin bread and brioche. Common practice.
 * </ul>
 */
final class Absorption {
  /** Formulas of good bread of one kind differ by about this much either way. Common practice. */
  static final double SPREAD = 2;

  private Absorption() {}

  /**
   * @param protein percent protein of the flour blend
   * @param thirsty share of the flour that is whole grain or rye, 0 to 1
   * @param milkSolids percent of flour, as all that follow
   * @return percent of flour
   */
  static double expected(
      double protein,
      double thirsty,
      double milkSolids,
      double gluten,
      double bound,
      double scaldedFlour,
      double scaldWater,
      double sugar,
      double fat) {
    return 62
        + 1.25 * (protein - 12)
        + 7.5 * thirsty
        + milkSolids
        + 1.5 * gluten
        + bound
        + Math.min(2 * scaldedFlour, scaldWater)
        - 0.6 * Math.max(0, sugar - 7)
        - 0.15 * Math.max(0, fat - 4);
  }
}
