package crumbtrail.web;

import crumbtrail.quantity.Amounts;
import crumbtrail.quantity.Dimension;
import crumbtrail.quantity.Quantities;
import crumbtrail.quantity.Quantity;
import crumbtrail.report.ReadingTable;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The units that the baker chose for the pages: metric, or US customary.
 *
 * <p>A page asks {@code Units.of(ctx)} once and hands the answer to whatever writes numbers; {@code
 * quantity}, {@code range} and {@code spread} take a number with its unit as readings and formulas
 * have it (grams, degrees Celsius, centimetres) and write it in the baker's units, rounded to what
 * a kitchen can measure. The choice comes with the address ({@code ?units=us}) and is then
 * remembered by a cookie that says nothing else. What a baker typed is never converted.
 */
public enum Units implements ReadingTable.Scale {
  /** Grams, degrees Celsius, millilitres, centimetres, metres. */
  METRIC("metric"),
  /** Ounces and pounds, degrees Fahrenheit, cups and spoons, inches, feet. */
  US("us");

  /** Name of the cookie and of the query parameter. */
  static final String NAME = "units";

  private static final int A_YEAR = 365 * 24 * 3600;

  private final String key;

  Units(String key) {
    this.key = key;
  }

  /** The word for it in addresses and in the cookie. */
  public String key() {
    return key;
  }

  public boolean us() {
    return this == US;
  }

  /** What this request asks for, or what was chosen before; metric where nothing was. */
  public static Units of(Context ctx) {
    return read(ctx.queryParam(NAME)).or(() -> read(ctx.cookie(NAME))).orElse(METRIC);
  }

  /** The units of this key; empty if it is none. */
  static Optional<Units> read(String key) {
    for (Units units : values()) {
      if (units.key.equals(key)) {
        return Optional.of(units);
      }
    }
    return Optional.empty();
  }

  /** Remembers a choice that comes with the address. */
  static void remember(Context ctx) {
    read(ctx.queryParam(NAME))
        .ifPresent(
            units ->
                ctx.cookie(
                    new Cookie(NAME, units.key, "/", A_YEAR, false, true, "", SameSite.LAX)));
  }

  /** A quantity, in these units instead of those in which it was written. */
  public String format(Quantity quantity) {
    String unit =
        switch (quantity.dimension()) {
          case MASS -> "g";
          case VOLUME -> "ml";
          case TEMPERATURE -> "C";
          case TIME -> "min";
          case LENGTH -> "mm";
          case PERCENT -> "%";
          case COUNT -> quantity.unit().symbol();
        };
    return range(quantity.low(), quantity.high(), unit);
  }

  /**
   * A text in these units, if it is a temperature, a weight or a length and nothing else; any other
   * text as it is. For words of the program, never for what a baker typed.
   */
  String said(String text) {
    return us()
        ? Stream.of(Dimension.TEMPERATURE, Dimension.MASS, Dimension.LENGTH)
            .flatMap(dimension -> Quantities.read(text, dimension).stream())
            .findFirst()
            .map(this::format)
            .orElse(text)
        : text;
  }

  /** A number with its unit. */
  public String quantity(double value, String unit) {
    UsMeasure to = measure(value, unit);
    if (to.byTheCup()) {
      return to.inQuarters(value);
    }
    return to.pounds() ? UsMeasure.inPounds(value) : Amounts.quantity(to.from(value), to.unit());
  }

  /** The same for a number that is known to half a spread either way. */
  @Override
  public String quantity(double value, double half, String unit) {
    UsMeasure to = measure(value, unit);
    return to.pounds()
        ? UsMeasure.inPounds(value)
        : Amounts.quantity(to.from(value), half * to.factor(), to.unit());
  }

  /** How far two numbers lie apart: of temperatures the degrees, without where the scale begins. */
  public String difference(double value, String unit) {
    return us() && unit.equals("C")
        ? Amounts.quantity(Math.rint(value * 9 / 5), "°F")
        : quantity(value, unit);
  }

  /** A range with its unit; a single quantity where both ends read the same. */
  @Override
  public String range(double low, double high, String unit) {
    UsMeasure to = measure(high, unit);
    if (!to.pounds()) {
      return Amounts.range(to.from(low), to.from(high), to.unit());
    }
    String from = UsMeasure.inPounds(low);
    String until = UsMeasure.inPounds(high);
    return from.equals(until) ? from : from + " to " + until;
  }

  /** What a quantity may as well be, without its unit; empty where both ends read the same. */
  @Override
  public String spread(double low, double high, String unit) {
    UsMeasure to = measure(high, unit);
    return to.pounds()
        ? range(low, high, unit)
        : Amounts.spread(to.from(low), to.from(high), to.unit());
  }

  private UsMeasure measure(double value, String unit) {
    return us() ? UsMeasure.of(value, unit) : UsMeasure.same(unit);
  }
}
