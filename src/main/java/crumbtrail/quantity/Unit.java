package crumbtrail.quantity;

/**
 * The units that bakers write, each with the factor and offset that take it to its dimension's base
 * unit.
 */
public enum Unit {
  GRAM(Dimension.MASS, "g", 1),
  KILOGRAM(Dimension.MASS, "kg", 1000),
  MILLILITRE(Dimension.VOLUME, "ml", 1),
  PIECE(Dimension.COUNT, "", 1),
  CELSIUS(Dimension.TEMPERATURE, "°C", 1),
  MINUTE(Dimension.TIME, "min", 1),
  HOUR(Dimension.TIME, "h", 60),
  MILLIMETRE(Dimension.LENGTH, "mm", 1),
  PERCENT(Dimension.PERCENT, "%", 1);

  private final Dimension dimension;
  private final String symbol;
  private final double factor;

  Unit(Dimension dimension, String symbol, double factor) {
    this.dimension = dimension;
    this.symbol = symbol;
    this.factor = factor;
  }

  public Dimension dimension() {
    return dimension;
  }

  public String symbol() {
    return symbol;
  }

  public double factor() {
    return factor;
  }
}
