package crumbtrail.report;

import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Kind;
import crumbtrail.pantry.Pantry;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Little yeast and salt by the teaspoon, for kitchens whose scale shows whole grams only. What a
 * spoon or a pinch of it weighs the pantry says.
 */
final class Spoons {
  /** More than this is a matter for the scale. */
  private static final double MOST = 4;

  private static final String[] EIGHTHS = {"", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"};

  private Spoons() {}

  /** "1¾ tsp", "1 pinch"; empty where it is much, or where nobody measures it so. */
  static Optional<String> of(String ingredient, double grams, Pantry pantry) {
    return pantry
        .lookup(ingredient)
        .filter(one -> one.kind() == Kind.YEAST || one.kind() == Kind.SALT)
        .filter(one -> grams > 0)
        .flatMap(one -> of(one, grams));
  }

  private static Optional<String> of(Ingredient ingredient, double grams) {
    OptionalDouble spoon = ingredient.grams("tsp");
    if (spoon.isEmpty() || grams > MOST * spoon.getAsDouble()) {
      return Optional.empty();
    }
    double spoons = grams / spoon.getAsDouble();
    // A spoon that is heaped or not matters more than an eighth of several.
    long eighths = spoons > 1 ? 2 * Math.round(4 * spoons) : Math.round(8 * spoons);
    if (eighths > 0) {
      String whole = eighths < 8 ? "" : String.valueOf(eighths / 8);
      return Optional.of(whole + EIGHTHS[(int) (eighths % 8)] + " tsp");
    }
    OptionalDouble pinch = ingredient.grams("pinch");
    if (pinch.isEmpty()) {
      return Optional.of("under ⅛ tsp");
    }
    long pinches = Math.max(1, Math.round(grams / pinch.getAsDouble()));
    return Optional.of(
        String.format(Locale.ROOT, pinches == 1 ? "%d pinch" : "%d pinches", pinches));
  }
}
