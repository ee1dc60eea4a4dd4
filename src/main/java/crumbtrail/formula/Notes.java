package crumbtrail.formula;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Collects what has to be said beside the numbers while one formula is worked. */
final class Notes {
  private static final Pattern THOUSANDS =
      Pattern.compile("(?<![\\d.,])([1-9])\\.(\\d{3})\\s?(g|gr|grams?|ml|millilit(?:re|er)s?)\\b");

  private final List<Formula.NotUnderstood> notUnderstood = new ArrayList<>();
  private final List<Formula.Contradiction> contradictions = new ArrayList<>();
  private final Set<String> assumptions = new LinkedHashSet<>();

  void contradict(String where, String what) {
    contradictions.add(new Formula.Contradiction(where, what));
  }

  void notUnderstood(String where, String written, String uncertain) {
    notUnderstood.add(new Formula.NotUnderstood(where, written, uncertain));
  }

  void assume(String what) {
    assumptions.add(what);
  }

  /**
   * Where a point with three figures after it may part thousands, as it does in half of Europe, it
   * is said how it was read.
   */
  void assumePoint(String written) {
    if (written.indexOf('.') < 0) {
      return;
    }
    Matcher point = THOUSANDS.matcher(written);
    if (point.find()) {
      String figures = point.group(1) + "." + point.group(2);
      String whole = point.group(1) + point.group(2) + " " + point.group(3);
      assume(
          "\""
              + written
              + "\": "
              + figures
              + " is read with a decimal point; if it is to be "
              + whole
              + ", write it without the point");
    }
  }

  List<Formula.NotUnderstood> notUnderstood() {
    return notUnderstood;
  }

  List<Formula.Contradiction> contradictions() {
    return contradictions;
  }

  List<String> assumptions() {
    return List.copyOf(assumptions);
  }

  /** A weight in words: "440 g", "2.5 g". */
  static String grams(double grams) {
    return grams < 10
        ? String.format(Locale.ROOT, "%.1f g", grams)
        : String.format(Locale.ROOT, "%.0f g", grams);
  }

  /** A percentage in words: "62.5 %". */
  static String percent(double percent) {
    return String.format(Locale.ROOT, "%.1f %%", percent);
  }
}
