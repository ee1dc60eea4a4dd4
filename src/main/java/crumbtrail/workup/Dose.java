package crumbtrail.workup;

import crumbtrail.dough.DoughMix;
import crumbtrail.dough.Leaven;
import crumbtrail.formula.Enzymes;
import crumbtrail.formula.Formula;
import crumbtrail.knowledge.Style;
import crumbtrail.workup.Reading.Known;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The dough as the yeast finds it, taken from the formula or, where the formula is silent, from the
 * habit of the style.
 *
 * @param mix the dough of the sheet
 * @param usual the same with the leavening, salt and sugar that are usual for the bread: what the
 *     clock of a recipe reckons with
 * @param spread how uncertain the leavening is, as a share of it
 * @param assumed whether the leavening had to be assumed
 */
record Dose(DoughMix mix, DoughMix usual, double spread, boolean assumed) {
  private static final double WHITE_PROTEIN = 11.7;
  private static final double USUAL_WATER = 62;

  // Strength left in yeast that the baker speaks ill of (common practice in direction, our choice
  // in size).
  private static final Map<String, Double> TIRED =
      Map.of(
          "yeast-old", 0.7,
          "yeast-expired", 0.6,
          "yeast-stored-badly", 0.6,
          "yeast-did-not-foam", 0.3);

  /**
   * @param grown yeast that grew in a preferment beyond what was put into it, percent of flour
   */
  static Dose of(ReadingList readings, Formula formula, Set<String> circumstances, double grown) {
    Style style = readings.style();
    boolean sourdough = style.tags().contains("sourdough");
    double yeast = value(readings, "yeast").orElse(0.0);
    double starter = value(readings, "starter").orElse(0.0);
    boolean silent = yeast <= 0 && starter <= 0;
    if (silent) {
      yeast = sourdough ? 0 : middle(style, "yeast", 1);
      starter = sourdough ? middle(style, "starter", 20) : 0;
    }
    double vigour =
        circumstances.stream().mapToDouble(key -> TIRED.getOrDefault(key, 1.0)).min().orElse(1);
    boolean tolerant = formula.circumstances().contains("osmotolerant-yeast");
    double salt = value(readings, "salt").orElse(middle(style, "salt", 2));
    // A formula that names nothing that raises has not told the rest either.
    double sugar = silent ? middle(style, "sugar", 0) : value(readings, "sugar").orElse(0.0);
    DoughMix mix = mix(readings, new Leaven(yeast + grown, starter, tolerant, vigour), salt, sugar);
    double usualSugar = middle(style, "sugar", 0);
    DoughMix usual =
        mix(
            readings,
            new Leaven(
                sourdough ? 0 : middle(style, "yeast", 1),
                sourdough ? middle(style, "starter", 20) : 0,
                usualSugar > 10,
                1),
            middle(style, "salt", 2),
            usualSugar);
    boolean assumed =
        silent
            || vigour < 1
            || readings.get("yeast").map(Reading::known).filter(Known.ASSUMED::equals).isPresent();
    return new Dose(mix, usual, spread(readings, yeast, starter), assumed);
  }

  private static DoughMix mix(ReadingList readings, Leaven leaven, double salt, double sugar) {
    double water = value(readings, "total water").filter(w -> w > 20).orElse(USUAL_WATER);
    double fat =
        value(readings, "yeast").orElse(0.0) + value(readings, "starter").orElse(0.0) > 0
            ? value(readings, "fat").orElse(0.0)
            : middle(readings.style(), "fat", 0);
    double protein =
        readings
            .get("flour protein")
            .filter(reading -> reading.known() != Known.ASSUMED)
            .map(Reading::value)
            .or(() -> readings.style().habits().value("flour protein"))
            .orElse(WHITE_PROTEIN);
    return new DoughMix(
        leaven,
        water,
        salt,
        sugar,
        fat,
        protein,
        value(readings, "whole grain").orElse(0.0),
        value(readings, "rye").orElse(0.0),
        value(readings, "falling number").map(Dose::enzymes).orElse(1.0),
        100 + water + salt + sugar + fat,
        value(readings, "development").map(percent -> percent / 100).orElse(1.0));
  }

  // Against flour of which nothing is told, for which the model was set.
  private static double enzymes(double fallingNumber) {
    return Enzymes.shareOfNormal(fallingNumber) / Enzymes.shareOfNormal(Enzymes.USUAL);
  }

  private static double spread(ReadingList readings, double yeast, double starter) {
    return Math.max(relative(readings, "yeast", yeast), relative(readings, "starter", starter));
  }

  private static double relative(ReadingList readings, String name, double value) {
    return readings
        .get(name)
        .filter(reading -> value > 0)
        .map(reading -> (reading.high() - reading.low()) / 2 / value)
        .orElse(0.0);
  }

  private static Optional<Double> value(ReadingList readings, String name) {
    return readings.get(name).map(Reading::value);
  }

  private static double middle(Style style, String reading, double otherwise) {
    return style.range(reading).map(Style.Range::middle).orElse(otherwise);
  }
}
