package crumbtrail.pantry;

/**
 * What is in 100 g of an ingredient, each in grams.
 *
 * @param salt sodium chloride that was put in; the sodium that milk or flour bring is not counted
 */
public record Composition(
    double water, double fat, double sugar, double salt, double protein, double fibre) {

  public Composition {
    double sum = water + fat + sugar + salt + protein + fibre;
    double least =
        Math.min(Math.min(Math.min(water, fat), Math.min(sugar, salt)), Math.min(protein, fibre));
    // Published values are rounded one by one, so their sum may pass 100 by a little.
    if (!(least >= 0 && sum <= 101)) {
      throw new IllegalArgumentException(
          "parts of 100 g must not be negative nor add up to more than 100 g, but are "
              + water
              + " + "
              + fat
              + " + "
              + sugar
              + " + "
              + salt
              + " + "
              + protein
              + " + "
              + fibre);
    }
  }

  /** Solids that are neither fat nor sugar nor salt, grams in 100 g. */
  public double otherSolids() {
    return Math.max(0, 100 - water - fat - sugar - salt);
  }
}
