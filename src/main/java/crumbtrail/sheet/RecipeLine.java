package crumbtrail.sheet;

import crumbtrail.quantity.Dimension;
import crumbtrail.quantity.PlainText;
import crumbtrail.quantity.Quantities;
import crumbtrail.quantity.Quantity;
import crumbtrail.quantity.Scan;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Decides whether a line of a pasted recipe is an ingredient, or several, or none. */
final class RecipeLine {

  private static final int LONGEST = 200;
  private static final int MOST_WORDS = 14;
  private static final Pattern BULLET = Pattern.compile("^(?:[-*•·+▪◦‣●○☐□✓]|\\[[ xX]?\\]).*");
  private static final Pattern YIELD =
      Pattern.compile(
          "(?:\\p{L}+ )?(?:loaf|loaves|rolls?|buns?|servings?|portions?|pizzas?|slices?|baguettes?"
              + "|bagels?|tins?|times?)\\b.*",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern VAGUE_TAIL =
      Pattern.compile(
          ".*\\b(?:to taste|as (?:needed|required)|for (?:dusting|greasing|brushing|kneading))\\b.*",
          Pattern.CASE_INSENSITIVE);

  /** Cuts between one ingredient and the next where several share a line. */
  private static final Pattern BETWEEN = Pattern.compile(" ?[;+] ?| ?, (?:and )?| and (?=\\d)");

  private RecipeLine() {}

  /**
   * The ingredients of a line.
   *
   * @param listed whether the line stands in a list of ingredients, so that a name alone counts
   * @return one reading for each; empty when the line is no ingredient
   */
  static List<LineReading> ingredients(String where, String line, boolean listed) {
    if (line.length() > LONGEST) {
      return List.of();
    }
    boolean bullet = BULLET.matcher(line.strip()).matches();
    String text = line.strip().replaceFirst("^[-–—](?=\\S)", "");
    List<LineReading> several = several(where, text);
    if (!several.isEmpty()) {
      return several;
    }
    String plain = IngredientLine.stripBullet(PlainText.of(text));
    return isIngredient(plain, bullet && listed)
        ? List.of(IngredientLine.parse(where, text))
        : List.of();
  }

  /**
   * The ingredients of "500 g flour, 310 g water, 9 g salt"; empty unless there are two or more.
   * Each has a place of its own, since a line is found again by its place.
   */
  static List<LineReading> several(String where, String text) {
    if (text.length() > IngredientLine.LONGEST) {
      return List.of();
    }
    String plain = IngredientLine.stripBullet(PlainText.of(text));
    String[] pieces = BETWEEN.split(plain, -1);
    if (pieces.length < 2) {
      return List.of();
    }
    List<LineReading> read = new ArrayList<>();
    for (String piece : pieces) {
      String place = read.isEmpty() ? where : where + ", ingredient " + (read.size() + 1);
      LineReading reading = IngredientLine.parse(place, piece);
      Optional<FormulaLine> line = reading.line();
      boolean sentence = StepWords.startsStep(piece) || StepWords.isSentence(piece);
      if (sentence || line.isEmpty() || !isMeasured(line.get())) {
        return List.of();
      }
      read.add(reading);
    }
    return read.size() > 1 ? read : List.of();
  }

  private static boolean isMeasured(FormulaLine line) {
    String name = line.ingredient().toLowerCase(Locale.ROOT);
    boolean real = !name.matches("(?:protein|hydration|fat|each|plus .*|or .*|about .*)");
    Optional<Quantity> amount = line.amount();
    return real
        && amount.isPresent()
        && (amount.get().dimension() != Dimension.COUNT
            || name.matches(".*\\b(?:eggs?|yolks?)")
            || !amount.get().unit().symbol().isEmpty());
  }

  private static boolean isIngredient(String plain, boolean listed) {
    if (plain.isEmpty() || StepWords.count(plain) > MOST_WORDS) {
      return false;
    }
    Optional<Scan> time = Quantities.scan(plain, 0, EnumSet.of(Dimension.TIME));
    if (time.isPresent()) {
      return false;
    }
    Optional<Scan> front = Quantities.scan(plain, 0, LineAmounts.KINDS);
    if (front.isPresent()) {
      String name = plain.substring(front.get().end()).strip();
      boolean short5 = !front.get().bare() || StepWords.count(name) <= 7;
      return short5 && !StepWords.isSentence(name) && !stepAfterNumber(front.get(), name);
    }
    if (StepWords.startsStep(plain) || StepWords.isSentence(plain)) {
      return false;
    }
    return later(plain)
        || (StepWords.count(plain) <= 8 && VAGUE_TAIL.matcher(plain).matches())
        || plain.matches("(?i)(?:pinch|dash|handful) of .*")
        || (listed && StepWords.count(plain) <= 4);
  }

  private static boolean stepAfterNumber(Scan front, String name) {
    return front.bare()
        && (name.isEmpty() || StepWords.startsStep(name) || YIELD.matcher(name).matches());
  }

  /** Whether a short name comes first and its amount after it. */
  private static boolean later(String plain) {
    for (int place : LineAmounts.places(plain)) {
      Optional<Scan> scan = Quantities.scan(plain, place, LineAmounts.KINDS);
      if (scan.isPresent()) {
        boolean measured = !scan.get().bare() || scan.get().end() == plain.length();
        return measured
            && StepWords.count(plain.substring(0, place)) <= 6
            && StepWords.count(plain.substring(scan.get().end())) <= 7;
      }
    }
    return false;
  }
}
