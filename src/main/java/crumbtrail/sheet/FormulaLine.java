package crumbtrail.sheet;

import crumbtrail.quantity.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One line of a formula, taken apart but not yet weighed.
 *
 * @param where the place on the sheet: {@code formula[2]}
 * @param written the line as the baker wrote it
 * @param ingredient the name of the ingredient, cleaned of amounts and remarks: "bread flour",
 *     "eggs"
 * @param amount the amount that counts: the weight if one is given, else the volume, the number of
 *     pieces or the percentage of flour; empty for "salt to taste"
 * @param alsoGiven the other amount where two are given: "3 1/2 cups (440 g)" has the cups here
 * @param size "small", "medium", "large", "extra large", "jumbo" where the line says so, else empty
 * @param notes what else the line says, in pieces: "beaten", "coarse", "lukewarm"
 * @param protein percent protein where the line states it
 * @param hydration percent of water to flour where the line states it (starters, preferments)
 * @param fallingNumber seconds, where the line of a flour states it
 */
public record FormulaLine(
    String where,
    String written,
    String ingredient,
    Optional<Quantity> amount,
    Optional<Quantity> alsoGiven,
    String size,
    List<String> notes,
    OptionalDouble protein,
    OptionalDouble hydration,
    OptionalDouble fallingNumber) {

  public FormulaLine {
    notes = List.copyOf(notes);
  }

  /** A line that states no falling number. */
  public FormulaLine(
      String where,
      String written,
      String ingredient,
      Optional<Quantity> amount,
      Optional<Quantity> alsoGiven,
      String size,
      List<String> notes,
      OptionalDouble protein,
      OptionalDouble hydration) {
    this(
        where,
        written,
        ingredient,
        amount,
        alsoGiven,
        size,
        notes,
        protein,
        hydration,
        OptionalDouble.empty());
  }
}
