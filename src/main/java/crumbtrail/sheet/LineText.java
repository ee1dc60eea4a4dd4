package crumbtrail.sheet;

import crumbtrail.quantity.Quantity;
import crumbtrail.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Writes formula lines anew with another amount, so that the words and the number say the same and
 * the line reads back as it stands.
 */
public final class LineText {
  private LineText() {}

  /** The line with a weight in place of whatever amount it had. */
  public static FormulaLine weighing(FormulaLine line, double grams) {
    return with(line, weight(grams));
  }

  /** The line with a percentage of the flour in place of whatever amount it had. */
  public static FormulaLine percent(FormulaLine line, double percent) {
    return with(line, of(percent, Unit.PERCENT));
  }

  /**
   * A line for something that was not in the formula.
   *
   * @param ingredient its name
   */
  public static FormulaLine added(String where, String ingredient, double grams) {
    return IngredientLine.read(where, weight(grams).written() + " " + ingredient).orElseThrow();
  }

  /** The same, as a percentage of the flour. */
  public static FormulaLine addedPercent(String where, String ingredient, double percent) {
    return IngredientLine.read(where, of(percent, Unit.PERCENT).written() + " " + ingredient)
        .orElseThrow();
  }

  /**
   * Grams as a kitchen scale shows them: whole ones from a hundred on, tenths from one on,
   * hundredths below.
   */
  public static double onScale(double grams) {
    int decimals = grams >= 100 ? 0 : grams >= 1 ? 1 : 2;
    return BigDecimal.valueOf(grams).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
  }

  private static Quantity weight(double grams) {
    return of(onScale(grams), Unit.GRAM);
  }

  private static Quantity of(double number, Unit unit) {
    String text =
        BigDecimal.valueOf(number)
            .setScale(3, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString();
    double shown = Double.parseDouble(text);
    return new Quantity(text + " " + unit.symbol(), unit, shown, shown, shown);
  }

  private static FormulaLine with(FormulaLine line, Quantity amount) {
    List<String> words = new ArrayList<>();
    words.add(amount.written() + " " + line.ingredient());
    words.addAll(line.notes());
    line.protein().ifPresent(percent -> words.add(plain(percent) + " % protein"));
    line.hydration().ifPresent(percent -> words.add(plain(percent) + " % hydration"));
    line.fallingNumber().ifPresent(seconds -> words.add("falling number " + plain(seconds)));
    return new FormulaLine(
        line.where(),
        String.join(", ", words),
        line.ingredient(),
        Optional.of(amount),
        Optional.empty(),
        "",
        line.notes(),
        line.protein(),
        line.hydration(),
        line.fallingNumber());
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
