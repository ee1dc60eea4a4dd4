package crumbtrail.report;

import crumbtrail.advice.Correction;
import crumbtrail.advice.Foresight;
import crumbtrail.advice.NextBake;
import crumbtrail.advice.Plan;
import crumbtrail.advice.Timetable;
import crumbtrail.advice.Wish;
import crumbtrail.findings.Findings;
import crumbtrail.formula.LaidOut;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.pantry.Pantry;
import crumbtrail.quantity.Amounts;
import crumbtrail.report.Report.CorrectionLine;
import crumbtrail.report.Report.DayStep;
import crumbtrail.report.Report.ForesightTable;
import crumbtrail.report.Report.FormulaRow;
import crumbtrail.report.Report.Gap;
import crumbtrail.report.Report.LevelLine;
import crumbtrail.report.Report.Move;
import crumbtrail.report.Report.NextBakeSheet;
import crumbtrail.report.Report.PredictedSign;
import crumbtrail.report.Report.Risk;
import crumbtrail.sheet.SheetWriter;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Puts advice into the shape of the report. */
final class AdviceTables {
  /** Risks that are left over are told down to this. */
  private static final double TOLD = 0.05;

  private static final int MOST = 5;
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private final Catalogue catalogue;

  AdviceTables(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** What was diagnosed first is answered first. */
  List<CorrectionLine> corrections(Plan plan, Findings findings) {
    String first = findings.ranked().isEmpty() ? "" : findings.ranked().get(0).cause().key();
    return corrections(plan).stream()
        .sorted(
            Comparator.comparing(one -> !one.recommended() ? 2 : one.cause().equals(first) ? 0 : 1))
        .toList();
  }

  private List<CorrectionLine> corrections(Plan plan) {
    Set<Object> recommended =
        plan.recommended().stream().map(Correction::remedy).collect(Collectors.toSet());
    List<CorrectionLine> lines = new ArrayList<>();
    // What was worked out upon other corrections is told with the numbers it has there.
    plan.recommended().forEach(one -> lines.add(line(one, true)));
    plan.tried().stream()
        .filter(one -> !recommended.contains(one.remedy()))
        .forEach(one -> lines.add(line(one, false)));
    return lines;
  }

  private CorrectionLine line(Correction one, boolean recommended) {
    String source = one.remedy().source() == null ? "common practice" : one.remedy().source();
    return new CorrectionLine(
        one.cause(),
        name(one.cause()),
        one.change(),
        one.from(),
        one.to(),
        one.why(),
        ReportWriter.rounded(one.riskBefore(), 4),
        ReportWriter.rounded(one.riskAfter(), 4),
        recommended,
        one.verdict().words(),
        one.moved().stream()
            .map(
                moved ->
                    new Move(
                        moved.cause(),
                        name(moved.cause()),
                        ReportWriter.rounded(moved.before(), 4),
                        ReportWriter.rounded(moved.after(), 4)))
            .toList(),
        one.knob(),
        catalogue.cited(source));
  }

  /**
   * @param pantry says what a spoon of yeast or salt weighs
   */
  NextBakeSheet next(NextBake next, List<String> conflicts, Wish wish, Pantry pantry) {
    Report.FormulaTable formula = FormulaTables.of(next.sheet(), next.workup().formula());
    return new NextBakeSheet(
        next.sheet().title(),
        next.changes().stream().map(one -> line(one, true)).toList(),
        conflicts,
        next.notes(),
        formula == null
            ? List.of()
            : formula.lines().stream()
                .map(line -> line.spooned(pantry).written(told(line, next, pantry)))
                .toList(),
        formula == null ? 0 : formula.doughGrams(),
        steps(next.timetable(), begins(next.timetable(), wish)),
        next.timetable().untold(),
        risks(next.risks()),
        next.sheet().formula().isEmpty() ? null : SheetWriter.node(next.sheet()));
  }

  // A stronger flour has the name of the weaker one: what tells them apart stands beside it.
  private static String told(FormulaRow row, NextBake next, Pantry pantry) {
    List<Double> proteins =
        LaidOut.of(next.sheet(), next.workup().formula(), pantry).stream()
            .filter(line -> line.part().equals(row.part()))
            .filter(line -> line.ingredient().filter(row.ingredient()::equals).isPresent())
            .flatMap(line -> line.line().protein().stream().boxed())
            .distinct()
            .toList();
    return proteins.size() == 1
        ? row.written() + ", " + Amounts.number(proteins.get(0)) + " % protein"
        : row.written();
  }

  private static Optional<LocalTime> begins(Timetable timetable, Wish wish) {
    return wish.start()
        .or(() -> wish.ready().map(ready -> ready.minusMinutes(Math.round(timetable.end()))));
  }

  private static List<DayStep> steps(Timetable timetable, Optional<LocalTime> mixing) {
    return timetable.steps().stream()
        .map(
            step ->
                new DayStep(
                    step.key(),
                    step.name(),
                    mixing.map(at -> clock(at, step.begins())).orElse(null),
                    Math.round(step.begins()),
                    Math.round(step.minutes()),
                    step.how(),
                    step.look()))
        .toList();
  }

  private static String clock(LocalTime mixing, double begins) {
    double minute = mixing.toSecondOfDay() / 60.0 + begins;
    int days = (int) Math.floor(minute / 1440);
    String time = mixing.plusMinutes(Math.round(begins)).format(CLOCK);
    return days == 0 ? time : time + (days < 0 ? " (day " + days + ")" : " (day +" + days + ")");
  }

  private List<Risk> risks(Findings findings) {
    return findings.ranked().stream()
        .filter(finding -> finding.probability() >= TOLD)
        .limit(MOST)
        .map(
            finding ->
                new Risk(
                    finding.cause().key(),
                    finding.cause().name(),
                    ReportWriter.rounded(finding.probability(), 4)))
        .toList();
  }

  ForesightTable foresight(Foresight ahead) {
    return new ForesightTable(
        ahead.predicted().stream()
            .map(
                one ->
                    new PredictedSign(
                        one.sign().key(),
                        one.sign().name(),
                        ReportWriter.rounded(one.probability(), 4),
                        one.cause()))
            .toList(),
        ahead.missing().stream().map(gap -> new Gap(gap.key(), gap.what(), gap.why())).toList(),
        ahead.levels().stream()
            .map(level -> new LevelLine(level.reading(), level.words(), level.outside()))
            .toList(),
        steps(ahead.timetable(), Optional.empty()));
  }

  private String name(String cause) {
    return catalogue.cause(cause).map(Cause::name).orElse(cause);
  }
}
