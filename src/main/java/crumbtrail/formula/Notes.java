package crumbtrail.formula;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Collects what has to be said beside the numbers while one formula is worked. */
final class Notes {
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
