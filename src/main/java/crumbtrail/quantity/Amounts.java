package crumbtrail.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers with their units as bakers write them. Numbers must be finite. */
public final class Amounts {
  private Amounts() {}

  /** A number with as many decimals as a baker can use: three figures, none after a hundred. */
  public static String number(double value) {
    double size = Math.abs(value);
    if (size >= 100 || value == Math.rint(value)) {
      return String.valueOf(Math.round(value));
    }
    int decimals = size >= 10 ? 1 : size >= 0.1 ? 2 : 3;
    return decimal(value, decimals).stripTrailingZeros().toPlainString();
  }

  /** A number with so many decimals, be they noughts or not; halves go up. */
  public static String fixed(double value, int decimals) {
    return decimal(value, decimals).toPlainString();
  }

  private static BigDecimal decimal(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
  }

  /**
   * A number that is known to half a spread either way, with no more decimals than that bears: a
   * rise of 3.92 that may as well be 3.3 is 3.9.
   */
  public static String number(double value, double half) {
    int decimals = half >= 3 ? 0 : half >= 0.3 ? 1 : half >= 0.03 ? 2 : 3;
    return number(rounded(value, decimals));
  }

  /** A number with its unit, in the units that people read: hours for long times, °C for C. */
  public static String quantity(double value, String unit) {
    return isLong(value, unit) ? hours(value) : with(number(value), unit);
  }

  /** The same for a number that is known to half a spread either way. */
  public static String quantity(double value, double half, String unit) {
    return isLong(value, unit) ? hours(value) : with(number(value, half), unit);
  }

  /** A range with its unit; a single quantity where both ends read the same. */
  public static String range(double low, double high, String unit) {
    String from = quantity(low, unit);
    String to = quantity(high, unit);
    if (from.equals(to)) {
      return from;
    }
    return isLong(high, unit) ? from + " to " + to : with(span(number(low), number(high)), unit);
  }

  /**
   * What a quantity may as well be, to stand in brackets behind it: without its unit, but for long
   * times. Empty where both ends read the same.
   */
  public static String spread(double low, double high, String unit) {
    double half = (high - low) / 2;
    if (isLong(high, unit)) {
      String from = quantity(low, half, unit);
      String to = quantity(high, half, unit);
      return from.equals(to) ? "" : from + " to " + to;
    }
    String from = number(low, half);
    String to = number(high, half);
    return from.equals(to) ? "" : span(from, to);
  }

  // A minus sign beside an en dash cannot be read.
  private static String span(String from, String to) {
    return from.startsWith("-") || to.startsWith("-") ? from + " to " + to : from + "–" + to;
  }

  private static boolean isLong(double value, String unit) {
    return unit.equals("min") && value >= 120;
  }

  private static String hours(double value) {
    long minutes = Math.round(value);
    return minutes % 60 == 0 ? minutes / 60 + " h" : minutes / 60 + " h " + minutes % 60 + " min";
  }

  private static String with(String number, String unit) {
    return switch (unit) {
      case "" -> number;
      case "C" -> number + " °C";
      case "cm3/g" -> number + " cm³/g";
      default -> number + " " + unit;
    };
  }

  /** A number rounded to so many decimals. */
  public static double rounded(double value, int decimals) {
    double scale = Math.pow(10, decimals);
    return Math.round(value * scale) / scale;
  }
}
