package crumbtrail.web;

import crumbtrail.lessons.Drawn;
import crumbtrail.picture.LoafPictures;
import crumbtrail.report.AdviceText;
import crumbtrail.report.Report;
import crumbtrail.report.Report.CorrectionLine;
import crumbtrail.report.Report.DayStep;
import crumbtrail.report.Report.ForesightTable;
import crumbtrail.report.Report.FormulaRow;
import crumbtrail.report.Report.NextBakeSheet;
import crumbtrail.report.Report.PredictedSign;
import crumbtrail.sheet.LineText;
import crumbtrail.web.AdviceView.Ahead;
import crumbtrail.web.AdviceView.Change;
import crumbtrail.web.AdviceView.Level;
import crumbtrail.web.AdviceView.Next;
import crumbtrail.web.AdviceView.Risk;
import crumbtrail.web.AdviceView.Step;
import crumbtrail.web.AdviceView.Weighed;
import crumbtrail.web.ReportView.Pair;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Lays advice out for the page. */
final class AdviceViews {
  /** So many expected signs are drawn one by one. */
  private static final int SINGLE = 4;

  private AdviceViews() {}

  static AdviceView of(Report report, LoafPictures pictures, WishForm wish, Units units, Texts t) {
    return new AdviceView(
        report.corrections().stream()
            .filter(CorrectionLine::recommended)
            .map(one -> change(one, units, t))
            .toList(),
        report.corrections().stream()
            .filter(one -> !one.recommended())
            .map(one -> change(one, units, t))
            .toList(),
        report.nextBake() == null ? null : next(report.nextBake(), units, t),
        report.foresight() == null ? null : ahead(report, pictures, t),
        report.nextBake() == null ? null : wish);
  }

  /** A next bake by itself. */
  static Next next(NextBakeSheet next) {
    return next(next, Units.METRIC, Texts.english());
  }

  /** A next bake in the baker's units. */
  static Next next(NextBakeSheet next, Units units, Texts t) {
    List<String> notes = new ArrayList<>(next.conflicts());
    notes.addAll(next.notes());
    return new Next(
        next.title(),
        NextHead.of(next, units, t),
        next.changes().stream().map(one -> change(one, units, t)).toList(),
        notes,
        next.lines().stream().map(row -> weighed(row, units, t)).toList(),
        next.doughGrams() > 0
            ? t.number(units.quantity(LineText.onScale(next.doughGrams()), "g"))
            : "",
        next.steps().stream().anyMatch(step -> step.clock() != null),
        next.steps().stream().map(step -> step(step, t)).toList(),
        next.untold().stream().distinct().map(t::name).toList(),
        next.risks().stream()
            .map(risk -> new Pair(t.name(risk.name()), likely(risk.probability(), t)))
            .toList());
  }

  private static Change change(CorrectionLine one, Units units, Texts t) {
    boolean told = !one.from().equals("not told") && !one.from().isBlank();
    boolean said = one.to().isBlank() || one.to().equals(one.change());
    return new Change(
        one.change(),
        said
            ? ""
            : told
                ? t.of(
                    "change.span", t.number(units.said(one.from())), t.number(units.said(one.to())))
                : t.number(units.said(one.to())),
        one.why(),
        t.name(one.name()),
        Risk.of(one.riskBefore(), t),
        Risk.of(one.riskAfter(), t),
        one.recommended() ? "" : t.of(helps(one) ? "change.helps" : "change.not"),
        one.recommended() || helps(one) ? "" : "It " + one.verdict() + ".",
        one.moves().stream()
            .map(
                move ->
                    t.of(
                        "change.move",
                        t.name(move.name()),
                        t.number(ReportWords.percent(move.before())),
                        t.number(ReportWords.percent(move.after()))))
            .toList(),
        one.source() == null ? "" : one.source());
  }

  private static boolean helps(CorrectionLine one) {
    return one.verdict().startsWith("helps");
  }

  private static Weighed weighed(FormulaRow row, Units units, Texts t) {
    return new Weighed(
        row.part() == null ? "" : row.part(),
        row.written(),
        row.percent() == null ? "" : t.number(String.format(Locale.ROOT, "%.1f %%", row.percent())),
        row.grams() == null ? "" : t.number(units.quantity(LineText.onScale(row.grams()), "g")),
        row.spoons() == null ? "" : t.number(row.spoons()));
  }

  private static Step step(DayStep step, Texts t) {
    return new Step(
        AdviceText.when(step),
        t.name(step.name()),
        t.number(AdviceText.length(step)),
        step.how() == null ? "" : step.how(),
        step.look() == null ? "" : step.look());
  }

  private static Ahead ahead(Report report, LoafPictures pictures, Texts t) {
    ForesightTable table = report.foresight();
    List<PredictedSign> drawn =
        table.predicted().stream().filter(sign -> pictures.draws(sign.sign())).toList();
    Map<String, Double> strengths = new LinkedHashMap<>();
    drawn.forEach(sign -> strengths.put(sign.sign(), sign.probability()));
    return new Ahead(
        table.missing().stream().map(gap -> new Pair(gap.what(), gap.why())).toList(),
        table.levels().stream().map(level -> new Level(level.words(), level.outside())).toList(),
        drawn.isEmpty()
            ? null
            : new Drawn(t.of("ahead.together"), pictures.of(report.style(), strengths)),
        drawn.stream()
            .limit(SINGLE)
            .map(
                sign ->
                    new Drawn(
                        t.name(sign.name())
                            + ", "
                            + t.number(ReportWords.percent(sign.probability())),
                        pictures.of(sign.sign(), report.style()).orElseThrow()))
            .toList(),
        table.predicted().stream()
            .map(sign -> new Pair(t.name(sign.name()), likely(sign.probability(), t)))
            .toList(),
        table.watch().stream()
            .filter(step -> step.look() != null && !step.look().isEmpty())
            .map(step -> new Pair(t.name(step.name()), step.look()))
            .toList());
  }

  private static String likely(double probability, Texts t) {
    return t.likelihood(probability) + ", " + t.number(ReportWords.percent(probability));
  }
}
