package crumbtrail.quantity;

/**
 * What a quantity measures, with the unit that its {@code low}, {@code value} and {@code high} are
 * kept in.
 */
public enum Dimension {
  /** Grams. */
  MASS("g"),
  /** Millilitres. */
  VOLUME("ml"),
  /** Pieces: eggs, packets, cakes. */
  COUNT("pieces"),
  /** Degrees Celsius. */
  TEMPERATURE("°C"),
  /** Minutes. */
  TIME("min"),
  /** Millimetres; heights above the sea are kept in millimetres too. */
  LENGTH("mm"),
  /** Percent. */
  PERCENT("%");

  private final String base;

  Dimension(String base) {
    this.base = base;
  }

  /** The symbol of the unit in which values of this dimension are kept. */
  public String base() {
    return base;
  }
}
