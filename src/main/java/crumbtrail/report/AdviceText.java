package crumbtrail.report;

import crumbtrail.quantity.Amounts;
import crumbtrail.report.Report.CorrectionLine;
import crumbtrail.report.Report.DayStep;
import crumbtrail.report.Report.NextBakeSheet;
import crumbtrail.sheet.LineText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Advice in sentences, for terminal and page alike. */
public final class AdviceText {
  private AdviceText() {}

  /** A correction as one paragraph: what to do, from what to what, why, and what it brings. */
  public static String correction(CorrectionLine one) {
    return change(one) + " " + one.why() + " " + recheck(one);
  }

  /** What to do, and from what to what. */
  public static String change(CorrectionLine one) {
    String change = one.change();
    boolean told = !one.from().equals("not told");
    String span = told ? one.from() + " to " + one.to() : one.to();
    return one.to().equals(change) || one.to().isBlank()
        ? change + "."
        : change + ": " + span + ".";
  }

  /** What the re-check says, with the risk before and after. */
  public static String recheck(CorrectionLine one) {
    String risk =
        "Risk for the next bake of "
            + one.name()
            + " "
            + percent(one.riskBefore())
            + " before, "
            + percent(one.riskAfter())
            + " after";
    String moves =
        one.moves().stream()
            .limit(3)
            .map(
                move -> move.name() + " " + percent(move.before()) + " to " + percent(move.after()))
            .collect(Collectors.joining(", "));
    String verdict = one.recommended() ? "" : "; " + verdict(one);
    return risk + verdict + "." + (moves.isEmpty() ? "" : " It also moves " + moves + ".");
  }

  private static String verdict(CorrectionLine one) {
    return one.verdict().startsWith("helps")
        ? "it would help as well"
        : "not recommended by itself, it " + one.verdict();
  }

  /** What to change before a bake, or for the next one. */
  static List<String> recommended(Report report) {
    return report.corrections().stream()
        .filter(CorrectionLine::recommended)
        .map(AdviceText::correction)
        .toList();
  }

  /** Steps to try where the sheet does not tell how it was, so that nothing can be checked. */
  static List<String> steps(Report report, int most) {
    return report.corrections().stream()
        .filter(AdviceText::untold)
        .limit(most)
        .map(one -> change(one) + " " + one.why())
        .toList();
  }

  private static boolean untold(CorrectionLine one) {
    return one.verdict().startsWith("cannot be checked");
  }

  /** Other ways, tried and not taken. */
  static List<String> others(Report report, int most) {
    return report.corrections().stream()
        .filter(one -> !one.recommended() && !untold(one))
        .limit(most)
        .map(one -> change(one) + " " + recheck(one))
        .toList();
  }

  /** A signed hour before or after the mixing, or the time of day. */
  public static String when(DayStep step) {
    if (step.clock() != null) {
      return step.clock();
    }
    long minutes = Math.round(Math.abs(step.begins()));
    return String.format(
        Locale.ROOT, "%s%d:%02d", step.begins() < 0 ? "-" : "+", minutes / 60, minutes % 60);
  }

  /** How long a step takes; empty where it is a moment. */
  public static String length(DayStep step) {
    return step.minutes() <= 0 ? "" : Amounts.quantity(step.minutes(), "min");
  }

  /** The formula of a next bake, one line each. */
  static List<String> formula(NextBakeSheet next) {
    List<String> lines = new ArrayList<>();
    for (Report.FormulaRow row : next.lines()) {
      String part = row.part().isEmpty() ? "" : " [" + row.part() + "]";
      lines.add(
          String.format(
              Locale.ROOT,
              "%-52s %9s %9s",
              row.written() + part,
              row.grams() == null ? "" : Amounts.number(LineText.onScale(row.grams())) + " g",
              row.percent() == null ? "" : String.format(Locale.ROOT, "%.1f %%", row.percent())));
    }
    return lines;
  }

  static String percent(double risk) {
    return risk > 0.99 ? ">99 %" : risk < 0.01 ? "<1 %" : Math.round(risk * 100) + " %";
  }
}
