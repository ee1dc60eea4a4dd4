package crumbtrail.dough;

/**
 * A dough as the yeast finds it. All in percent of flour.
 *
 * @param leaven what raises it
 * @param water all water
 * @param salt salt
 * @param sugar sugars of sweeteners
 * @param fat fat
 * @param protein protein of the flour
 * @param wholeGrain share of whole-grain flour
 * @param rye share of rye flour
 * @param enzymes starch-splitting power of the flour, 1 is usual
 * @param total weight of all the dough
 * @param development share of the kneading that the dough wants, 1 is all of it
 */
public record DoughMix(
    Leaven leaven,
    double water,
    double salt,
    double sugar,
    double fat,
    double protein,
    double wholeGrain,
    double rye,
    double enzymes,
    double total,
    double development) {

  /** A dough that was kneaded as it wants. */
  public DoughMix(
      Leaven leaven,
      double water,
      double salt,
      double sugar,
      double fat,
      double protein,
      double wholeGrain,
      double rye,
      double enzymes,
      double total) {
    this(leaven, water, salt, sugar, fat, protein, wholeGrain, rye, enzymes, total, 1);
  }

  /** Grams of dough without gas in a cubic centimetre (published pup loaf: 145 cm³ of 175 g). */
  private static final double DENSITY = 1.2;

  /** A plain white dough: 62 % water, 2 % salt, 12 % protein. */
  public static DoughMix plain(Leaven leaven) {
    return new DoughMix(leaven, 62, 2, 0, 0, 12, 0, 0, 1, 165);
  }

  /** Volume of the dough without gas, cm³ for 100 g of flour. */
  public double volume() {
    return total / DENSITY;
  }

  /** The same dough raised by something else. */
  public DoughMix with(Leaven other) {
    return new DoughMix(
        other, water, salt, sugar, fat, protein, wholeGrain, rye, enzymes, total, development);
  }

  /** The same dough with other salt, sugar and water. */
  public DoughMix with(double otherSalt, double otherSugar, double otherWater) {
    double weight = total + otherSalt - salt + otherSugar - sugar + otherWater - water;
    return new DoughMix(
        leaven,
        otherWater,
        otherSalt,
        otherSugar,
        fat,
        protein,
        wholeGrain,
        rye,
        enzymes,
        weight,
        development);
  }
}
