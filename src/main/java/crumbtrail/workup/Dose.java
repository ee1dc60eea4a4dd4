package crumbtrail.workup;

import crumbtrail.dough.Leaven;
import crumbtrail.knowledge.Style;
import crumbtrail.workup.Reading.Known;
import java.util.Optional;

/**
 * What raises the dough, taken from the formula or, where the formula is silent, from the habit of
 * the style.
 *
 * @param leaven doses in percent of flour
 * @param assumed whether the leavening itself had to be assumed
 */
record Dose(Leaven leaven, boolean assumed) {

  static Dose of(ReadingList readings, boolean sugarTolerantYeast) {
    Style style = readings.style();
    double salt = value(readings, "salt").orElse(middle(style, "salt", 2));
    double sugar = value(readings, "sugar").orElse(0.0);
    double yeast = value(readings, "yeast").orElse(0.0);
    double starter = value(readings, "starter").orElse(0.0);
    boolean silent = yeast <= 0 && starter <= 0;
    if (silent) {
      boolean sourdough = style.tags().contains("sourdough");
      yeast = sourdough ? 0 : middle(style, "yeast", 1);
      starter = sourdough ? middle(style, "starter", 20) : 0;
    }
    boolean assumed =
        silent
            || readings.get("yeast").map(Reading::known).filter(Known.ASSUMED::equals).isPresent();
    double wholeGrain = value(readings, "whole grain").orElse(0.0);
    return new Dose(
        new Leaven(yeast, starter, salt, sugar, wholeGrain, sugarTolerantYeast), assumed);
  }

  /** The leavening that is usual for the style: what the clock of a recipe reckons with. */
  static Leaven usual(Style style) {
    boolean sourdough = style.tags().contains("sourdough");
    double sugar = middle(style, "sugar", 0);
    return new Leaven(
        sourdough ? 0 : middle(style, "yeast", 1),
        sourdough ? middle(style, "starter", 20) : 0,
        middle(style, "salt", 2),
        sugar,
        style.tags().contains("wholegrain") ? 60 : 0,
        sugar > 10);
  }

  private static Optional<Double> value(ReadingList readings, String name) {
    return readings.get(name).map(Reading::value);
  }

  private static double middle(Style style, String reading, double otherwise) {
    return style.range(reading).map(Style.Range::middle).orElse(otherwise);
  }
}
