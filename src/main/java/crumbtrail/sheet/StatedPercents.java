package crumbtrail.sheet;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The numbers by which a line describes its ingredient: protein and falling number of a flour,
 * hydration of a starter.
 *
 * @param rest the line without them
 */
record StatedPercents(
    String rest, OptionalDouble protein, OptionalDouble hydration, OptionalDouble fallingNumber) {
  private static final Pattern EMPTY_BRACKETS = Pattern.compile("[(\\[] ?[)\\]]");
  private static final Pattern AFTER_OPENING = Pattern.compile("([(\\[]) ?[,;] ?");
  private static final Pattern BEFORE_CLOSING = Pattern.compile(" ?[,;] ?([)\\]])");
  private static final Pattern BLANKS = Pattern.compile(" {2,}");

  private static final String NUMBER = "(\\d{1,3}(?:[.,]\\d{1,3})?)";
  private static final String RANGED = "(?:" + NUMBER + " ?%? ?(?:-|to) ?)?" + NUMBER;
  private static final String PERCENT = " ?(?:%|percent\\b|per cent\\b)";

  private static final Pattern PROTEIN =
      pattern(
          "(?:(?:with|at|about|ca\\.?|~) ?)*"
              + RANGED
              + "(?:"
              + PERCENT
              + "|(?= ?g(?:rams)? (?:of )?protein per 100)(?: ?g(?:rams)?))"
              + " ?(?:of )?protein(?: content)?(?: per 100 ?g(?:rams)?)?");
  private static final Pattern PROTEIN_FIRST =
      pattern(
          "\\b(?:with )?protein(?: content)?(?: of| is)?:? ?(?:about |ca\\.? |~)?"
              + RANGED
              + " ?(?:%|percent\\b)");
  private static final Pattern HYDRATION =
      pattern("(?:(?:with|at|about|ca\\.?|~) ?)*" + RANGED + PERCENT + "[ -]?hydrat(?:ion|ed)");
  private static final Pattern HYDRATION_FIRST =
      pattern("\\bhydration(?: of| is)?:? ?(?:about |ca\\.? |~)?" + RANGED + " ?(?:%|percent\\b)");

  private static final Pattern FALLING =
      pattern(
          "\\b(?:with (?:an? )?)?(?:hagberg )?(?:falling (?:number|time)|hagberg number|FN)(?: of| is)?:?"
              + " ?(?:about |ca\\.? |~)?"
              + RANGED
              + "(?: ?(?:s|secs?|seconds)\\b\\.?)?");

  static StatedPercents of(String plain) {
    Taken protein = take(plain, 1, 95, PROTEIN, PROTEIN_FIRST);
    Taken hydration = take(protein.rest, 10, 500, HYDRATION, HYDRATION_FIRST);
    Taken falling = take(hydration.rest, 50, 700, FALLING);
    return new StatedPercents(falling.rest, protein.value, hydration.value, falling.value);
  }

  private record Taken(String rest, OptionalDouble value) {}

  private static Taken take(String text, double least, double most, Pattern... patterns) {
    for (Pattern pattern : patterns) {
      Matcher m = pattern.matcher(text);
      if (m.find()) {
        double value = number(m.group(2));
        if (m.group(1) != null) {
          value = (value + number(m.group(1))) / 2;
        }
        if (value >= least && value <= most) {
          String rest = text.substring(0, m.start()) + " " + text.substring(m.end());
          return new Taken(tidy(rest), OptionalDouble.of(value));
        }
      }
    }
    return new Taken(text, OptionalDouble.empty());
  }

  private static String tidy(String text) {
    String tidy = EMPTY_BRACKETS.matcher(text).replaceAll(" ");
    tidy = AFTER_OPENING.matcher(tidy).replaceAll("$1");
    tidy = BEFORE_CLOSING.matcher(tidy).replaceAll("$1");
    return BLANKS.matcher(tidy).replaceAll(" ").strip();
  }

  private static double number(String digits) {
    return Double.parseDouble(digits.replace(',', '.'));
  }

  private static Pattern pattern(String regex) {
    return Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
  }
}
