package crumbtrail.sheet;

import crumbtrail.quantity.PlainText;
import crumbtrail.quantity.Quantities;
import java.util.regex.Pattern;

/** Tells whether a text that stands alone as an amount is one. */
final class AmountText {

  private static final Pattern VAGUE =
      Pattern.compile(
          "(?:to taste|as (?:needed|required)|some|a (?:little|bit|handful|touch|drizzle)|enough"
              + "|optional|a few|for dusting|not measured|unknown)\\b.*",
          Pattern.CASE_INSENSITIVE);

  private AmountText() {}

  static boolean isAmount(String written) {
    if (written.length() > IngredientLine.LONGEST) {
      return false;
    }
    String plain = PlainText.of(written);
    return VAGUE.matcher(plain).matches()
        || Quantities.scan(plain, 0, LineAmounts.KINDS).isPresent()
        || plain.matches("(?i)(?:pinch|dash|stick|packet|sachet)\\b.*");
  }
}
