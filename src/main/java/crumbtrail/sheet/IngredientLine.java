package crumbtrail.sheet;

import crumbtrail.quantity.PlainText;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads one ingredient of a recipe as bakers write it: "3 1/2 cups (440 g) bread flour", "2 large
 * eggs, beaten", "1 (7 g) packet instant yeast", "butter, 50 g, softened", "2 % salt", "salt to
 * taste". Nothing here throws, whatever the text.
 *
 * <p>Where a weight and a volume are given the weight is the amount and the volume is kept beside
 * it. Words that tell ingredients apart (coarse, fresh, active dry, whole, salted) stay in the
 * name; what was done to the ingredient (softened, lukewarm) goes to the notes. A line without an
 * amount is accepted; a bare number before something that is weighed ("500 flour") is not.
 */
public final class IngredientLine {
  private static final Pattern BULLET = Pattern.compile("^(?:[-*•·+▪◦‣●○☐□✓>]|\\[[ xX]?\\]) +");
  private static final Pattern JOINED_BULLET = Pattern.compile("^[•·▪◦‣●○☐□✓*]+");
  private static final Pattern LINE_NUMBER = Pattern.compile("^\\(?\\d{1,2}[.)] +(?=\\S)");

  /** Characters in one line; a longer one is no ingredient. */
  static final int LONGEST = 400;

  private IngredientLine() {}

  /** Reads a line; empty when it names no ingredient or its amount cannot be meant. */
  public static Optional<FormulaLine> read(String where, String text) {
    return parse(where, text).line();
  }

  /** Reads a line, and says what is wrong when it cannot be used. */
  public static LineReading parse(String where, String text) {
    if (text.length() > LONGEST) {
      return LineReading.refused(
          where,
          "this line has " + text.length() + " characters, too many for one ingredient",
          "write one ingredient to a line, at most " + LONGEST + " characters");
    }
    String plain = stripBullet(PlainText.of(text));
    if (plain.chars().noneMatch(Character::isLetter)) {
      return LineReading.refused(
          where,
          plain.isEmpty() ? "this line is empty" : "“" + plain + "” names no ingredient",
          "write amount and ingredient, such as 500 g bread flour");
    }
    return new LineDraft(where, text.strip(), plain).finish();
  }

  /**
   * Reads an ingredient whose parts were typed apart.
   *
   * @param amount as written; empty when none was given
   * @param note as written; empty when there is none
   */
  public static LineReading ofParts(String where, String ingredient, String amount, String note) {
    String front = amount.isBlank() ? "" : amount.strip() + " ";
    String tail = note.isBlank() ? "" : ", " + note.strip();
    return parse(where, front + ingredient.strip() + tail);
  }

  /** Takes list marks and line numbers off the front. */
  static String stripBullet(String plain) {
    String bare = BULLET.matcher(plain).replaceFirst("");
    bare = JOINED_BULLET.matcher(bare).replaceFirst("");
    return LINE_NUMBER.matcher(bare).replaceFirst("").strip();
  }
}
