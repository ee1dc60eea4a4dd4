package crumbtrail.formula;

import crumbtrail.pantry.Ingredient;
import crumbtrail.quantity.Quantity;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Turns volumes and counts of an ingredient into grams, with the published spread of the measure.
 */
final class Measures {
  private static final double CUP_ML = 236.5882365;
  private static final double TABLESPOON_ML = CUP_ML / 16;
  private static final double TEASPOON_ML = CUP_ML / 48;

  /** Spread of a spoon or cup for which nobody published one. Common practice. */
  private static final double UNPUBLISHED = 0.05;

  /** One large egg is 50 g (usda-sr26) or 47 g (reinhart-2001): six percent either way. */
  private static final double SIZED_EGG = 0.06;

  /** Pieces without a size: common practice. */
  private static final double PIECE = 0.15;

  private Measures() {}

  /** Grams of a mass, volume or count; empty if the pantry has no measure for it. */
  static Optional<Level> grams(Ingredient ingredient, Quantity amount, String size) {
    return switch (amount.dimension()) {
      case MASS -> Optional.of(Level.of(amount.low(), amount.value(), amount.high()));
      case VOLUME -> volume(ingredient, amount);
      case COUNT -> count(ingredient, amount, size);
      default -> Optional.empty();
    };
  }

  /**
   * What so many grams of an ingredient fill, millilitres, by its spoon where it is little and by
   * its cup where it is much; empty if the pantry has no such measure for it.
   */
  static OptionalDouble millilitres(Ingredient ingredient, double grams) {
    OptionalDouble cup = per(ingredient, "cup", CUP_ML);
    OptionalDouble tbsp = per(ingredient, "tbsp", TABLESPOON_ML);
    OptionalDouble tsp = per(ingredient, "tsp", TEASPOON_ML);
    OptionalDouble spoon = first(tsp, tbsp, cup);
    boolean little = spoon.isPresent() && grams / spoon.getAsDouble() < CUP_ML / 4;
    OptionalDouble density = little ? spoon : first(cup, tbsp, tsp);
    return density.isPresent() && density.getAsDouble() > 0
        ? OptionalDouble.of(grams / density.getAsDouble())
        : OptionalDouble.empty();
  }

  private static Optional<Level> volume(Ingredient ingredient, Quantity amount) {
    OptionalDouble density = density(ingredient, amount);
    if (density.isEmpty()) {
      return Optional.empty();
    }
    double gramsPerMl = density.getAsDouble();
    double down = 1 - UNPUBLISHED;
    double up = 1 + UNPUBLISHED;
    OptionalDouble cup = ingredient.grams("cup");
    if (cup.isPresent()) {
      down = ingredient.grams("cup_low").orElse(cup.getAsDouble()) / cup.getAsDouble();
      up = ingredient.grams("cup_high").orElse(cup.getAsDouble()) / cup.getAsDouble();
    }
    return Optional.of(
        Level.of(
            amount.low() * gramsPerMl * down,
            amount.value() * gramsPerMl,
            amount.high() * gramsPerMl * up));
  }

  /**
   * Grams in a millilitre, from the measure that was used. A spoon of the sheet counts as a spoon
   * of the pantry whatever its nominal millilitres.
   */
  private static OptionalDouble density(Ingredient ingredient, Quantity amount) {
    String unit = amount.unit().name();
    OptionalDouble tbsp = per(ingredient, "tbsp", TABLESPOON_ML);
    OptionalDouble tsp = per(ingredient, "tsp", TEASPOON_ML);
    OptionalDouble cup = per(ingredient, "cup", CUP_ML);
    if (unit.startsWith("TEASPOON") || unit.startsWith("TSP")) {
      OptionalDouble own = per(ingredient, "tsp", amount.unit().factor());
      return first(own, tbsp, cup);
    }
    if (unit.startsWith("TABLESPOON") || unit.startsWith("TBSP")) {
      OptionalDouble own = per(ingredient, "tbsp", amount.unit().factor());
      return first(own, tsp, cup);
    }
    return first(cup, tbsp, tsp);
  }

  private static OptionalDouble per(Ingredient ingredient, String measure, double millilitres) {
    OptionalDouble grams = ingredient.grams(measure);
    return grams.isPresent()
        ? OptionalDouble.of(grams.getAsDouble() / millilitres)
        : OptionalDouble.empty();
  }

  private static OptionalDouble first(OptionalDouble... candidates) {
    for (OptionalDouble candidate : candidates) {
      if (candidate.isPresent()) {
        return candidate;
      }
    }
    return OptionalDouble.empty();
  }

  private static Optional<Level> count(Ingredient ingredient, Quantity amount, String size) {
    String unit = amount.unit().name();
    String measure =
        switch (unit) {
          case "PACKET", "CAKE", "STICK", "PINCH", "DASH" -> unit.toLowerCase(Locale.ROOT);
          case "PIECE" -> sized(ingredient, size);
          default -> "";
        };
    // A block of fresh yeast is no cake of it: the words decide which was meant.
    if (measure.equals("cake")
        && (ingredient.grams("cake").isEmpty() || amount.written().contains("cube"))) {
      measure = "piece";
    }
    OptionalDouble one = ingredient.grams(measure);
    if (one.isEmpty()) {
      return Optional.empty();
    }
    double grams = one.getAsDouble();
    double down = grams;
    double up = grams;
    if (measure.equals("pinch")) {
      down = grams / 2;
      up = grams * 2;
    } else if (measure.equals("large") && size.isEmpty()) {
      down = ingredient.grams("medium").orElse(grams * (1 - PIECE));
      up = ingredient.grams("xl").orElse(grams * (1 + PIECE));
    } else if (ingredient.grams("large").isPresent()) {
      down = grams * (1 - SIZED_EGG);
      up = grams * (1 + SIZED_EGG);
    } else if (measure.equals("piece")) {
      down = grams * (1 - PIECE);
      up = grams * (1 + PIECE);
    }
    return Optional.of(
        Level.of(
            Math.min(amount.low() * down, amount.value() * grams),
            amount.value() * grams,
            Math.max(amount.high() * up, amount.value() * grams)));
  }

  private static String sized(Ingredient ingredient, String size) {
    String asked =
        switch (size.toLowerCase(Locale.ROOT).strip()) {
          case "small" -> "small";
          case "medium" -> "medium";
          case "extra large", "extra-large", "xl", "very large" -> "xl";
          case "jumbo" -> "jumbo";
          default -> "large";
        };
    boolean said = !size.isBlank();
    if (ingredient.grams(asked).isPresent() && (said || ingredient.grams("xl").isPresent())) {
      return asked;
    }
    return "piece";
  }
}
