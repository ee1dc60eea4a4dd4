package crumbtrail.quantity;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Reads quantities as bakers write them, and writes them back. No reader here throws, whatever the
 * text.
 *
 * <p>Understood are whole numbers, decimals with point or comma, fractions ({@code 1 1/2}, {@code
 * 1½}), number words, ranges ({@code 60-75 min}, {@code 2 to 3 h}), <em>about</em>, <em>at
 * least</em>, <em>up to</em>, compound forms ({@code 1 h 30 min}, {@code an hour and a half}),
 * {@code overnight} and {@code gas mark 7}. A comma before exactly three digits groups thousands
 * ({@code 1,600 m}), any other comma is a decimal comma.
 *
 * <p>Spreads are our choice: <em>about</em> is ten percent either way (two degrees Celsius for a
 * temperature), <em>at least</em> and <em>at most</em> twice that on the open side, a night 8 to 12
 * hours. A quantity written without such a word has no spread here.
 */
public final class Quantities {
  private static final Pattern CUPS_OR_DEGREES = Pattern.compile("[-\\d., ]+ ?C");

  /** Longer texts are not looked at: no quantity takes so many words. */
  private static final int LONGEST = 200;

  private Quantities() {}

  /** Reads a text that is one quantity of the dimension wanted and nothing else. */
  public static Optional<Quantity> read(String text, Dimension wanted) {
    return explain(text, wanted).quantity();
  }

  /** Reads like {@link #read}, and says what is wrong when there is no such quantity. */
  public static QuantityReading explain(String text, Dimension wanted) {
    if (text.length() > LONGEST) {
      return QuantityReading.refused(
          "this is too long to be " + noun(wanted), "write " + example(wanted));
    }
    String plain = PlainText.of(text);
    if (plain.isEmpty()) {
      return QuantityReading.refused("nothing is written here", "write " + example(wanted));
    }
    TokenCursor c = new TokenCursor(Token.of(plain, 0));
    Optional<Measured> found = QuantityScanner.scan(c, EnumSet.of(wanted));
    if (found.isEmpty()) {
      return QuantityReading.refused(whyNot(plain, wanted), "write " + example(wanted));
    }
    Measured measured = found.get();
    Optional<Measured> again = saidAgain(c, wanted);
    c.takeMark('.');
    if (!c.atEnd()) {
      return QuantityReading.refused(
          "“" + plain + "” holds more than " + noun(wanted), "write only " + example(wanted));
    }
    if (again.isPresent() && disagree(measured, again.get())) {
      return QuantityReading.refused(
          "“" + plain + "” gives two values that do not agree", "write the one that was meant");
    }
    // "Overnight (10 h)": the closer of the two is meant.
    Measured meant = again.filter(a -> a.width() < measured.width()).orElse(measured);
    return meant
        .implausible()
        .map(why -> QuantityReading.refused("“" + plain + "” " + why, "write " + example(wanted)))
        .orElseGet(() -> QuantityReading.of(quantity(text.strip(), meant)));
  }

  /**
   * Reads the quantity of one of these dimensions that starts at a place of a plain text (see
   * {@link PlainText}). Where counts are wanted a bare number is read as pieces.
   *
   * @return empty when no quantity starts there, or one that cannot be true
   */
  public static Optional<Scan> scan(String plain, int from, Set<Dimension> wanted) {
    if (from < 0 || from >= plain.length()) {
      return Optional.empty();
    }
    int to = Math.min(plain.length(), from + LONGEST);
    List<Token> tokens = Token.of(plain.substring(0, to), from);
    TokenCursor c = new TokenCursor(tokens);
    Optional<Measured> found = QuantityScanner.scan(c, wanted);
    if (found.isEmpty() || found.get().implausible().isPresent()) {
      return Optional.empty();
    }
    String written = plain.substring(tokens.get(0).start(), c.end());
    Quantity quantity = quantity(written, found.get());
    return Optional.of(new Scan(quantity, found.get().bare(), tokens.get(0).start(), c.end()));
  }

  /**
   * Why the quantity that starts a plain text cannot be true ("is far more than any bake needs"),
   * with the words that say it.
   *
   * @return empty when no quantity starts there, or one that may be true
   */
  public static Optional<String> unbelievable(String plain, Set<Dimension> wanted) {
    TokenCursor c =
        new TokenCursor(Token.of(plain.substring(0, Math.min(plain.length(), LONGEST)), 0));
    return QuantityScanner.scan(c, wanted)
        .flatMap(Measured::implausible)
        .map(why -> "“" + plain.substring(0, c.end()).strip() + "” " + why);
  }

  /** Whether a quantity that was worked out, as so many times another, may be true. */
  public static boolean believable(Quantity quantity) {
    return new Measured(quantity.unit(), quantity.low(), quantity.value(), quantity.high(), false)
        .implausible()
        .isEmpty();
  }

  /**
   * Writes a quantity in its own unit, so that reading the text gives the same values again: {@code
   * 1.5 h}, {@code 60 to 75 min}. A range that does not lie evenly about its value is written as
   * the range alone.
   */
  public static String write(Quantity quantity) {
    Unit unit = quantity.unit();
    String low = number(unit.fromBase(quantity.low()));
    String high = number(unit.fromBase(quantity.high()));
    String numbers = low.equals(high) ? low : low + " to " + high;
    if (unit == Unit.GAS_MARK) {
      return unit.symbol() + " " + numbers;
    }
    return unit == Unit.PIECE ? numbers : numbers + " " + unit.symbol();
  }

  private static Quantity quantity(String written, Measured m) {
    return new Quantity(written, m.unit(), m.low(), m.value(), m.high());
  }

  /** Reads the second value of "230 C (446 F)" or "230 C / 446 F". */
  private static Optional<Measured> saidAgain(TokenCursor c, Dimension wanted) {
    int before = c.at();
    boolean bracket = c.takeMark('(');
    if (bracket || c.takeMark('/') || c.takeMark('=')) {
      Optional<Measured> again = QuantityScanner.scan(c, EnumSet.of(wanted));
      if (again.isPresent() && !again.get().bare() && (!bracket || c.takeMark(')'))) {
        return again;
      }
    }
    c.backTo(before);
    return Optional.empty();
  }

  private static boolean disagree(Measured a, Measured b) {
    double room =
        a.unit().dimension() == Dimension.TEMPERATURE
            ? 6
            : 0.1 * Math.max(Math.abs(a.value()), Math.abs(b.value()));
    return b.low() > a.high() + room || b.high() < a.low() - room;
  }

  private static String whyNot(String plain, Dimension wanted) {
    TokenCursor c = new TokenCursor(Token.of(plain, 0));
    Optional<Measured> other = QuantityScanner.scan(c, EnumSet.allOf(Dimension.class));
    if (other.isPresent() && c.atEnd()) {
      return other.get().bare()
          ? "“" + plain + "” has no unit"
          : "“"
              + plain
              + "” is "
              + (CUPS_OR_DEGREES.matcher(plain).matches()
                  ? "a temperature, or cups"
                  : noun(other.get().unit().dimension()))
              + ", and "
              + noun(wanted)
              + " is wanted";
    }
    if (wanted == Dimension.TEMPERATURE
        && other.isPresent()
        && plain.toLowerCase(Locale.ROOT).matches(".*(°|deg|degrees?)\\.?$")) {
      return "“" + plain + "” does not say whether Celsius or Fahrenheit is meant";
    }
    return "“" + plain + "” cannot be read as " + noun(wanted);
  }

  /** The plain word for what a dimension measures, with its article. */
  public static String noun(Dimension dimension) {
    return switch (dimension) {
      case MASS -> "a weight";
      case VOLUME -> "a volume";
      case COUNT -> "a number of pieces";
      case TEMPERATURE -> "a temperature";
      case TIME -> "a time";
      case LENGTH -> "a length";
      case PERCENT -> "a percentage";
    };
  }

  /** Examples of what is accepted for a dimension. */
  public static String example(Dimension dimension) {
    return switch (dimension) {
      case MASS -> "a weight with its unit, such as 900 g, 1.5 kg or 1 lb 2 oz";
      case VOLUME -> "a volume with its unit, such as 250 ml, 1 1/2 cups or 2 tbsp";
      case COUNT -> "a number, such as 2 or 1-2";
      case TEMPERATURE -> "a temperature with its scale, such as 26 C, 78 F or 24-26 °C";
      case TIME -> "a time with its unit, such as 75 min, 1 h 30 min, 2 d or overnight";
      case LENGTH -> "a length with its unit, such as 23 cm, 9 in, 1600 m or 5300 ft";
      case PERCENT -> "a percentage, such as 80 %";
    };
  }

  /** A number without exponent and without needless zeros, to twelve significant digits. */
  private static String number(double value) {
    java.math.BigDecimal exact = new java.math.BigDecimal(value);
    java.math.BigDecimal round = exact.round(new java.math.MathContext(12));
    return round.signum() == 0 ? "0" : round.stripTrailingZeros().toPlainString();
  }
}
