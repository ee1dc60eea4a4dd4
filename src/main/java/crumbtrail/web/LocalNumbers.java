package crumbtrail.web;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/**
 * Writes amounts as readers of a language do: decimal sign, spaces, and the words between and
 * behind numbers. Amounts come as {@link Units} and the report write them, in English; sentences
 * must not be given to it.
 */
final class LocalNumbers {
  private static final List<String> UNITS =
      List.of(
          "tsp",
          "tbsp",
          "cup",
          "cups",
          "in",
          "ft",
          "times ready",
          "times",
          "points",
          "pinches",
          "pinch");
  private static final String MEASURES = "g|kg|mg|ml|l|cm³/g|cm|mm|m|min|h|°C|°F|oz|lb|K";
  private static final Pattern SPACED =
      Pattern.compile("(?<=[\\d¼½¾⅛⅜⅝⅞]) (?=(" + MEASURES + ")(?![\\p{L}\\d]))");
  private static final Pattern DECIMAL = Pattern.compile("(?<=\\d)\\.(?=\\d)");
  private static final Pattern PERCENT = Pattern.compile("(?<=\\d) ?%");
  private static final Pattern MINUS = Pattern.compile("(?<![\\d\\p{L}])-(?=\\d)");
  private static final Pattern THOUSANDS = Pattern.compile("(?<=\\d)(?=(\\d{3})+(?!\\d))");
  private static final Pattern LONG = Pattern.compile("(?<![\\d.,])\\d{5,}");

  private final UnaryOperator<String> texts;
  private final boolean asWritten;

  /**
   * @param language of the reader
   * @param texts the text of a key
   */
  LocalNumbers(Language language, UnaryOperator<String> texts) {
    this.texts = texts;
    this.asWritten = language.english();
  }

  /** An amount, a range or a list of amounts in the reader's writing. */
  String write(String amount) {
    if (asWritten || amount == null || amount.isEmpty()) {
      return amount;
    }
    String thin = texts.apply("number.space");
    String written =
        LONG.matcher(amount).replaceAll(m -> THOUSANDS.matcher(m.group()).replaceAll(thin));
    written = DECIMAL.matcher(written).replaceAll(texts.apply("number.decimal"));
    written = MINUS.matcher(written).replaceAll("−");
    for (String unit : UNITS) {
      written =
          written.replaceAll(
              "(?<=[\\d¼½¾⅛⅜⅝⅞]) " + unit + "(?![\\p{L}\\d])",
              " " + texts.apply("unit." + unit.replace(' ', '-')));
    }
    written =
        written.replaceAll("(?<=[\\d\\p{L}]) to (?=[\\d−])", " " + texts.apply("number.to") + " ");
    written = written.replaceAll("^over (?=\\d)", texts.apply("number.over") + " ");
    written = written.replaceAll("^under (?=[\\d⅛])", texts.apply("number.under") + " ");
    written = PERCENT.matcher(written).replaceAll(thin + "%");
    return SPACED.matcher(written).replaceAll(thin);
  }
}
