package crumbtrail.formula;

import crumbtrail.pantry.Find;
import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Kind;
import crumbtrail.sheet.FormulaLine;
import java.util.Optional;

/**
 * A line of the sheet with what the pantry makes of it.
 *
 * @param line as read from the sheet
 * @param find the ingredient, empty if unknown
 * @param grams its weight; empty if the line gives no amount or one that cannot be turned into
 *     grams; for a percentage filled in once the flour is known
 * @param way how the amount was given
 * @param inDough false for flour to dust with, butter for the tin, seeds for the top
 */
record WeighedLine(
    FormulaLine line, Optional<Find> find, Optional<Level> grams, Way way, boolean inDough) {

  /** How the amount of a line was given. */
  enum Way {
    WEIGHT,
    VOLUME,
    COUNT,
    PERCENT,
    NONE
  }

  Optional<Ingredient> ingredient() {
    return find.map(Find::ingredient);
  }

  boolean isKind(Kind kind) {
    return find.isPresent() && find.get().ingredient().kind() == kind;
  }

  boolean has(String flag) {
    return find.isPresent() && find.get().ingredient().has(flag);
  }

  /** The percentage that the line states, 0 if it states none. */
  double percent() {
    return way == Way.PERCENT ? line.amount().orElseThrow().value() : 0;
  }

  /** This line with its percentage turned into grams. */
  WeighedLine on(double flourGrams) {
    return line.amount()
        .filter(amount -> way == Way.PERCENT)
        .map(
            amount -> Level.of(amount.low(), amount.value(), amount.high()).times(flourGrams / 100))
        .map(grams -> new WeighedLine(line, find, Optional.of(grams), way, inDough))
        .orElse(this);
  }
}
