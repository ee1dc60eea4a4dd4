package crumbtrail.dough;

/**
 * A dough at a moment of its fermentation.
 *
 * @param minute since the end of mixing
 * @param celsius its temperature
 * @param yeast grams of instant yeast or their equal, for 100 g of flour
 * @param starter grams of ripe starter or their equal, the same
 * @param age hours at 26 °C, or their equal
 * @param sugar sugar left that yeast can eat, percent of flour
 * @param starch broken starch left that enzymes can split, percent of flour
 * @param made gas made so far, cm³ for 100 g of flour at sea level
 * @param held gas in the dough, the same
 * @param strain how far its films are tired: gas made since they were last renewed, in volumes of
 *     the dough
 */
public record DoughState(
    double minute,
    double celsius,
    double yeast,
    double starter,
    double age,
    double sugar,
    double starch,
    double made,
    double held,
    double strain) {

  // Handling that drives out all gas also renews the films around it, but not all of what time has
  // done to the gluten (common practice; the share is our choice).
  private static final double NOT_RENEWED = 0.3;

  /**
   * The dough after it was folded, knocked back or shaped.
   *
   * @param keeps share of its gas that stays: 1 untouched, 0 all knocked out
   */
  public DoughState handled(double keeps) {
    double tired = strain * (NOT_RENEWED + (1 - NOT_RENEWED) * keeps);
    return new DoughState(
        minute, celsius, yeast, starter, age, sugar, starch, made, held * keeps, tired);
  }

  /**
   * Its volume over its volume without gas.
   *
   * @param mix the dough
   */
  public double rise(DoughMix mix) {
    return (mix.volume() + held) / mix.volume();
  }
}
