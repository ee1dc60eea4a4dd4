package crumbtrail.formula;

import crumbtrail.pantry.Ingredient;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something that goes into the dough, by weight.
 *
 * @param ingredient empty if unknown
 * @param name to print
 * @param part the part of the dough through which it comes in
 * @param protein percent protein where the line states it
 * @param fallingNumber seconds, where the line of a flour states it
 * @param leavening whether it is flour or water of a ripe sourdough culture named as a line
 */
record Share(
    Optional<Ingredient> ingredient,
    String name,
    Level grams,
    PartKind part,
    OptionalDouble protein,
    OptionalDouble fallingNumber,
    boolean leavening) {

  Share(
      Optional<Ingredient> ingredient,
      String name,
      Level grams,
      PartKind part,
      OptionalDouble protein,
      boolean leavening) {
    this(ingredient, name, grams, part, protein, OptionalDouble.empty(), leavening);
  }

  Share times(double factor) {
    return new Share(
        ingredient, name, grams.times(factor), part, protein, fallingNumber, leavening);
  }

  Share in(PartKind other) {
    return new Share(ingredient, name, grams, other, protein, fallingNumber, leavening);
  }

  boolean has(String flag) {
    return ingredient.map(known -> known.has(flag)).orElse(false);
  }
}
