package crumbtrail.web;

import crumbtrail.quantity.Unit;
import java.util.List;

/**
 * How a metric number becomes a US customary one.
 *
 * @param unit the unit that is written
 * @param factor of this unit in one of the metric unit
 * @param offset what this unit says at zero of the metric unit
 * @param step what numbers are rounded to; 0 leaves that to how numbers are written
 */
record UsMeasure(String unit, double factor, double offset, double step) {

  /**
   * Grams below which ounces would be all noughts. Scales for yeast and salt show grams in a US
   * kitchen too.
   */
  private static final double SMALL_GRAMS = 5;

  /** Grams from which a scale is read in pounds and ounces. */
  private static final double HEAVY_GRAMS = 2 * Unit.POUND.factor();

  /** Degrees Celsius from which it must be an oven, whose dial nobody sets closer than this. */
  private static final double OVEN_CELSIUS = 120;

  private static final double DIAL = 5;

  static UsMeasure same(String unit) {
    return new UsMeasure(unit, 1, 0, 0);
  }

  /** The measure for a number of this size. */
  static UsMeasure of(double value, String unit) {
    return switch (unit) {
      case "g" -> weight(value);
      case "ml" -> volume(value);
      case "C", "°C" ->
          new UsMeasure("°F", 9.0 / 5, 32, Math.abs(value) >= OVEN_CELSIUS ? DIAL : 1);
      case "mm" -> new UsMeasure("in", 1 / Unit.INCH.factor(), 0, 0.25);
      case "cm" -> new UsMeasure("in", 10 / Unit.INCH.factor(), 0, 0.25);
      case "m" -> new UsMeasure("ft", 1000 / Unit.FOOT.factor(), 0, 10);
      default -> same(unit);
    };
  }

  private static UsMeasure weight(double grams) {
    double size = Math.abs(grams);
    if (size < SMALL_GRAMS) {
      return same("g");
    }
    return size < HEAVY_GRAMS
        ? new UsMeasure("oz", 1 / Unit.OUNCE.factor(), 0, size < 30 ? 0.05 : 0.1)
        : new UsMeasure("lb", 1 / Unit.POUND.factor(), 0, 0);
  }

  private static UsMeasure volume(double millilitres) {
    double size = Math.abs(millilitres);
    if (size < Unit.TABLESPOON.factor()) {
      return new UsMeasure("tsp", 1 / Unit.TEASPOON.factor(), 0, 0.25);
    }
    return size < Unit.CUP.factor() / 4
        ? new UsMeasure("tbsp", 1 / Unit.TABLESPOON.factor(), 0, 0.5)
        : new UsMeasure(
            size < 1.1 * Unit.CUP.factor() ? "cup" : "cups", 1 / Unit.CUP.factor(), 0, 0.25);
  }

  /** Whether the number is to be written in two units. */
  boolean pounds() {
    return unit.equals("lb");
  }

  double from(double metric) {
    double value = metric * factor + offset;
    return step > 0 ? Math.rint(value / step) * step : value;
  }

  /** Whether the number is one that bakers write with quarters. */
  boolean byTheCup() {
    return unit.startsWith("cup") || unit.equals("tsp") || unit.equals("tbsp");
  }

  /** A number of cups or spoons as "1½ cups". */
  String inQuarters(double millilitres) {
    long quarters = Math.round(millilitres * factor * 4);
    String rest = List.of("", "¼", "½", "¾").get((int) (quarters % 4));
    String whole = quarters < 4 && quarters > 0 ? "" : String.valueOf(quarters / 4);
    return whole + rest + " " + unit;
  }

  /** Grams as "2 lb 3 oz". */
  static String inPounds(double grams) {
    long ounces = Math.round(grams / Unit.OUNCE.factor());
    long left = Math.abs(ounces % 16);
    return ounces / 16 + " lb" + (left == 0 ? "" : " " + left + " oz");
  }
}
