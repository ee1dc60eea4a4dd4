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
import crumbtrail.web.ReportView.Line;
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

  static AdviceView of(Report report, LoafPictures pictures, WishForm wish, Units units) {
    return new AdviceView(
        report.corrections().stream()
            .filter(CorrectionLine::recommended)
            .map(one -> change(one, units))
            .toList(),
        report.corrections().stream()
            .filter(one -> !one.recommended())
            .map(one -> change(one, units))
            .toList(),
        report.nextBake() == null ? null : next(report.nextBake(), units),
        report.foresight() == null ? null : ahead(report, pictures),
        report.nextBake() == null ? null : wish);
  }

  /** A next bake by itself. */
  static Next next(NextBakeSheet next) {
    return next(next, Units.METRIC);
  }

  /** A next bake in the baker's units. */
  static Next next(NextBakeSheet next, Units units) {
    List<String> notes = new ArrayList<>(next.conflicts());
    notes.addAll(next.notes());
    return new Next(
        next.title(),
        next.changes().stream().map(one -> change(one, units)).toList(),
        notes,
        next.lines().stream().map(row -> line(row, units)).toList(),
        next.doughGrams() > 0 ? units.quantity(LineText.onScale(next.doughGrams()), "g") : "",
        next.steps().stream().anyMatch(step -> step.clock() != null),
        next.steps().stream().map(AdviceViews::step).toList(),
        next.untold().stream().distinct().toList(),
        next.risks().stream()
            .map(risk -> new Pair(risk.name(), likely(risk.probability())))
            .toList());
  }

  private static Change change(CorrectionLine one, Units units) {
    boolean told = !one.from().equals("not told") && !one.from().isBlank();
    boolean said = one.to().isBlank() || one.to().equals(one.change());
    return new Change(
        one.change(),
        said
            ? ""
            : told
                ? "from " + units.said(one.from()) + " to " + units.said(one.to())
                : units.said(one.to()),
        one.why(),
        one.name(),
        Risk.of(one.riskBefore()),
        Risk.of(one.riskAfter()),
        one.recommended() ? "" : verdict(one),
        one.moves().stream()
            .map(
                move ->
                    move.name()
                        + " from "
                        + ReportWords.percent(move.before())
                        + " to "
                        + ReportWords.percent(move.after()))
            .toList(),
        one.source() == null ? "" : one.source());
  }

  private static String verdict(CorrectionLine one) {
    return one.verdict().startsWith("helps")
        ? "It would help as well."
        : "Not recommended by itself: it " + one.verdict() + ".";
  }

  private static Line line(FormulaRow row, Units units) {
    return new Line(
        row.part() == null ? "" : row.part(),
        row.written(),
        "",
        row.percent() == null ? "" : String.format(Locale.ROOT, "%.1f %%", row.percent()),
        row.grams() == null ? "" : units.quantity(LineText.onScale(row.grams()), "g"));
  }

  private static Step step(DayStep step) {
    return new Step(
        AdviceText.when(step),
        step.name(),
        AdviceText.length(step),
        step.how() == null ? "" : step.how(),
        step.look() == null ? "" : step.look());
  }

  private static Ahead ahead(Report report, LoafPictures pictures) {
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
            : new Drawn(
                "All of it together, each sign as plain as it is likely",
                pictures.of(report.style(), strengths)),
        drawn.stream()
            .limit(SINGLE)
            .map(
                sign ->
                    new Drawn(
                        sign.name() + ", " + ReportWords.percent(sign.probability()),
                        pictures.of(sign.sign(), report.style()).orElseThrow()))
            .toList(),
        table.predicted().stream()
            .map(sign -> new Pair(sign.name(), likely(sign.probability())))
            .toList(),
        table.watch().stream()
            .filter(step -> step.look() != null && !step.look().isEmpty())
            .map(step -> new Pair(step.name(), step.look()))
            .toList());
  }

  private static String likely(double probability) {
    return ReportWords.likelihood(probability) + ", " + ReportWords.percent(probability);
  }
}
