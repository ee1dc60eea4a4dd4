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
    return new Dose(new Leaven(yeast, starter, salt, sugar, sugarTolerantYeast), assumed);
  }

  private static Optional<Double> value(ReadingList readings, String name) {
    return readings.get(name).map(Reading::value);
  }

  private static double middle(Style style, String reading, double otherwise) {
    return style.range(reading).map(Style.Range::middle).orElse(otherwise);
  }
}
