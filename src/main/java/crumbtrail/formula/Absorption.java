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
 *
 * <p>Soy needs no term of its own: at 47 % protein the second term gives it 1.06 times its weight,
 * and about its own weight is what it is said to take (from memory). Damaged starch is seldom told;
 * {@link #forDamagedStarch} gives its share. Valid for 8 to 18 % protein; formulas of which less
 * than half the flour forms gluten have no such water.
 *
 * @param protein percent protein of the flour blend
 * @param thirsty share of the flour that is whole grain or rye, 0 to 1
 * @param milkSolids percent of flour, as all that follow
 * @param gluten dry gluten added
 * @param bound water bound by bran, flakes, seeds, soy and the like
 */
record Absorption(
    double protein,
    double thirsty,
    double milkSolids,
    double gluten,
    double bound,
    double scaldedFlour,
    double scaldWater,
    double sugar,
    double fat) {
  /** Formulas of good bread of one kind differ by about this much either way. Common practice. */
  static final double SPREAD = 2;

  /** Damaged starch of an ordinary hard-wheat flour, percent of starch (asbe: 6 to 12). */
  private static final double USUAL_DAMAGE = 9;

  /** Starch in flour, parts in one (from memory). */
  private static final double STARCH = 0.7;

  /** White flour of this protein alone. */
  static Absorption white(double protein) {
    return new Absorption(protein, 0, 0, 0, 0, 0, 0, 0, 0);
  }

  /** Whether the flour is one for which the figures stand. */
  boolean covered() {
    return protein >= 8 && protein <= 18;
  }

  /** Percent of flour. */
  double expected() {
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

  /**
   * Water that more damaged starch than usual takes, or less spares: sound starch takes 0.4 of its
   * weight, damaged 2 to 3 times as much (asbe.org).
   *
   * @param damaged percent of the starch
   * @return points on flour
   */
  static double forDamagedStarch(double damaged) {
    return STARCH * (damaged - USUAL_DAMAGE) * (2.5 - 1) * 0.4;
  }
}
