package crumbtrail.web;

import crumbtrail.report.Report;
import crumbtrail.report.Report.KitchenShift;
import java.util.List;
import java.util.Locale;

/**
 * What the odds of one kitchen moved in a ranking, ready to be drawn.
 *
 * @param moved causes, the most moved first; empty where nothing was moved
 */
public record KitchenView(List<Moved> moved) {
  public KitchenView {
    moved = List.copyOf(moved);
  }

  /**
   * A cause.
   *
   * @param odds how its own odds differ here, in words
   * @param elsewhere how likely it would be by the odds of all kitchens, and its place by them
   * @param here how likely it is by those of this one, and its place
   */
  public record Moved(String name, String odds, String elsewhere, String here) {}

  /** Of this report; null where it goes by the odds of all kitchens. */
  static KitchenView of(Report report, Texts t) {
    return report.kitchen() == null
        ? null
        : new KitchenView(report.kitchen().stream().map(one -> moved(one, t)).toList());
  }

  private static Moved moved(KitchenShift shift, Texts t) {
    double factor = Math.pow(10, shift.decibans() / 10);
    return new Moved(
        t.name(shift.name()),
        shift.decibans() == 0
            ? t.of("report.kitchen.same")
            : t.of("report.kitchen.times", t.number(String.format(Locale.ROOT, "%.2g", factor))),
        placed(shift.before(), shift.placeBefore(), t),
        placed(shift.now(), shift.place(), t));
  }

  private static String placed(double probability, int place, Texts t) {
    String percent = t.number(ReportWords.percent(probability));
    return place == 0 ? percent : t.of("report.kitchen.place", percent, place);
  }
}
