package crumbtrail.quantity;

/**
 * The units that bakers write, each with the factor and offset that take it to its dimension's base
 * unit: {@code base = written * factor + offset}.
 *
 * <p>Source of the factors for weight, volume, length and temperature: NIST Special Publication
 * 811, 2008, appendix B (exact where the inch, the avoirdupois pound and the US gallon define
 * them); US customary measures throughout, so a cup is 236.588 ml, a pint 473.176 ml. The month is
 * the mean month of the Gregorian calendar, 30.436875 d.
 *
 * <p>Packet, cake, stick, pinch and dash are counted, not weighed: what one of them weighs depends
 * on what is in it (a packet of dry yeast, a stick of butter), so the pantry resolves them.
 */
public enum Unit {
  MILLIGRAM(Dimension.MASS, "mg", 0.001),
  GRAM(Dimension.MASS, "g", 1),
  KILOGRAM(Dimension.MASS, "kg", 1000),
  OUNCE(Dimension.MASS, "oz", 28.349523125),
  POUND(Dimension.MASS, "lb", 453.59237),

  MILLILITRE(Dimension.VOLUME, "ml", 1),
  CENTILITRE(Dimension.VOLUME, "cl", 10),
  DECILITRE(Dimension.VOLUME, "dl", 100),
  LITRE(Dimension.VOLUME, "l", 1000),
  TEASPOON(Dimension.VOLUME, "tsp", 4.92892159375),
  TABLESPOON(Dimension.VOLUME, "tbsp", 14.78676478125),
  FLUID_OUNCE(Dimension.VOLUME, "fl oz", 29.5735295625),
  CUP(Dimension.VOLUME, "cup", 236.5882365),
  PINT(Dimension.VOLUME, "pint", 473.176473),
  QUART(Dimension.VOLUME, "quart", 946.352946),
  GALLON(Dimension.VOLUME, "gallon", 3785.411784),

  /** Whole things: eggs, potatoes. Written without a unit, or as "piece" or "each". */
  PIECE(Dimension.COUNT, "", 1),
  /** A packet, sachet or envelope, of dry yeast unless the line says otherwise. */
  PACKET(Dimension.COUNT, "packet", 1),
  /** A cake, block or cube of fresh yeast. */
  CAKE(Dimension.COUNT, "cake", 1),
  /** A stick of butter or margarine; 113 g of butter (USDA SR 01001). */
  STICK(Dimension.COUNT, "stick", 1),
  /** What two fingers hold. */
  PINCH(Dimension.COUNT, "pinch", 1),
  /** A shake or splash. */
  DASH(Dimension.COUNT, "dash", 1),

  CELSIUS(Dimension.TEMPERATURE, "°C", 1),
  FAHRENHEIT(Dimension.TEMPERATURE, "°F", 5.0 / 9, -160.0 / 9),
  KELVIN(Dimension.TEMPERATURE, "K", 1, -273.15),
  /**
   * The regulator mark of a gas oven: 275 °F at mark 1 and 25 °F more at each mark above (common
   * practice, from memory). The marks 1/4 and 1/2 lie off this line and are refused.
   */
  GAS_MARK(Dimension.TEMPERATURE, "gas mark", 125.0 / 9, 1090.0 / 9),

  SECOND(Dimension.TIME, "s", 1.0 / 60),
  MINUTE(Dimension.TIME, "min", 1),
  HOUR(Dimension.TIME, "h", 60),
  DAY(Dimension.TIME, "d", 1440),
  WEEK(Dimension.TIME, "weeks", 10080),
  MONTH(Dimension.TIME, "months", 43829.1),

  MILLIMETRE(Dimension.LENGTH, "mm", 1),
  CENTIMETRE(Dimension.LENGTH, "cm", 10),
  METRE(Dimension.LENGTH, "m", 1000),
  KILOMETRE(Dimension.LENGTH, "km", 1_000_000),
  INCH(Dimension.LENGTH, "in", 25.4),
  FOOT(Dimension.LENGTH, "ft", 304.8),

  PERCENT(Dimension.PERCENT, "%", 1);

  private final Dimension dimension;
  private final String symbol;
  private final double factor;
  private final double offset;

  Unit(Dimension dimension, String symbol, double factor) {
    this(dimension, symbol, factor, 0);
  }

  Unit(Dimension dimension, String symbol, double factor, double offset) {
    this.dimension = dimension;
    this.symbol = symbol;
    this.factor = factor;
    this.offset = offset;
  }

  public Dimension dimension() {
    return dimension;
  }

  /** The unit as it is written after a number; empty for pieces. */
  public String symbol() {
    return symbol;
  }

  /** Base units in one of this unit. */
  public double factor() {
    return factor;
  }

  /** The base unit's value at zero of this unit; zero except for temperatures. */
  public double offset() {
    return offset;
  }

  /** Takes a number written in this unit to the base unit of its dimension. */
  public double toBase(double written) {
    return written * factor + offset;
  }

  /** Takes a value in the base unit of the dimension to this unit. */
  public double fromBase(double base) {
    return (base - offset) / factor;
  }
}
