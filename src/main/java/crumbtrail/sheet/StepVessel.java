package crumbtrail.sheet;

import crumbtrail.sheet.BakeProcess.VesselSize;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The tin that a step names, and into how many pieces the dough goes: "divide in two", "into two 9
 * x 5 inch loaf pans".
 */
final class StepVessel {
  private static final List<String> COUNTS =
      List.of(
          "", "", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven",
          "twelve");
  private static final String COUNT = "(\\d{1,2}|" + String.join("|", COUNTS.subList(2, 13)) + ")";
  private static final String LENGTH =
      "\\d+(?:[ -]\\d/\\d|\\.\\d+)?(?: ?-?(?:inch(?:es)?|in|cm|mm|\"))?";
  private static final Pattern TIN =
      Pattern.compile(
          "(?:\\b"
              + COUNT
              + "(?! ?(?:x|by)\\b) (?:\\w+ ){0,2}?)?(?<![\\d.])("
              + LENGTH
              + "(?: ?(?:x|by) ?"
              + LENGTH
              + "){1,2})[ -]?((?:\\w+ )?(?:loaf|bread|cake|pullman|sandwich)? ?(?:pan|tin|mould|mold))s?\\b",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern PIECES =
      Pattern.compile(
          "\\b(?:divid\\w+|portion\\w*|cut|scale|split)\\b.{0,40}?\\b(?:in|into) (?:(half)|"
              + COUNT
              + ")\\b(?!\\s*(?:g|grams?|oz|ounces?|inch|cm)\\b)",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern MADE =
      Pattern.compile(
          "\\b(?:shape|form|roll)\\w*\\b.{0,30}?\\binto "
              + COUNT
              + " (?:\\w+ )?(?:loaves|balls|rolls|buns|baguettes|rounds|pieces|bagels|boules)\\b",
          Pattern.CASE_INSENSITIVE);

  private StepVessel() {}

  /**
   * A tin as a step names it.
   *
   * @param kind "loaf pan"
   * @param pieces how many of it; empty where one is meant or nothing is said
   */
  record Named(String kind, VesselSize size, Optional<Integer> pieces) {}

  /** The tin with its lengths. */
  static Optional<Named> tin(String words) {
    Matcher matcher = TIN.matcher(words);
    if (!matcher.find()) {
      return Optional.empty();
    }
    String kind = matcher.group(3).strip();
    return VesselSizes.read(
            matcher.group(2).replace("\"", " in").replaceAll("(?<=\\d)-(?=[a-z])", " "))
        .map(size -> new Named(kind, size, count(matcher.group(1))));
  }

  /** Into how many pieces the dough is divided or shaped. */
  static Optional<Integer> pieces(String words) {
    Matcher divided = PIECES.matcher(words);
    if (divided.find()) {
      return divided.group(1) != null ? Optional.of(2) : count(divided.group(2));
    }
    Matcher made = MADE.matcher(words);
    return made.find() ? count(made.group(1)) : Optional.empty();
  }

  private static Optional<Integer> count(String word) {
    if (word == null) {
      return Optional.empty();
    }
    int number =
        Character.isDigit(word.charAt(0))
            ? Integer.parseInt(word)
            : COUNTS.indexOf(word.toLowerCase(Locale.ROOT));
    return number > 1 ? Optional.of(number) : Optional.empty();
  }
}
