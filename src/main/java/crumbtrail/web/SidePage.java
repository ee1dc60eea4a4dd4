package crumbtrail.web;

import crumbtrail.bakelog.Bake;
import crumbtrail.compare.Comparison;
import crumbtrail.compare.Comparison.Explained;
import crumbtrail.compare.Difference;
import crumbtrail.study.SideBySide;
import java.util.List;

/**
 * Two bakes side by side, ready to be drawn. What differs is said in English, as on the sheet.
 *
 * @param id number of the bake in question
 * @param name of it
 * @param better number of the other one, 0 where none is known
 * @param betterName of that
 * @param betterDay when it was baked
 * @param telling what can explain the change, best first
 * @param together how much of the suspicion all differences explain, as a percentage
 * @param others what differs too
 * @param appeared signs seen on this bake alone
 * @param gone signs seen on the other alone
 * @param readings what was worked out and differs
 */
public record SidePage(
    long id,
    String name,
    long better,
    String betterName,
    String betterDay,
    List<Line> telling,
    String together,
    List<Row> others,
    String appeared,
    String gone,
    List<Row> readings) {
  /** Differences that explain less are listed without a number. */
  private static final double TELLING = 0.01;

  private static final int CAUSES = 3;

  /** One respect in which two bakes differ. */
  public record Row(String what, String before, String now) {}

  /** A difference and the risks that it moves, in sentences. */
  public record Line(Row row, List<String> moves) {}

  static SidePage none(Bake bake, Texts t) {
    return new SidePage(
        bake.id(), named(bake, t), 0, "", "", List.of(), "", List.of(), "", "", List.of());
  }

  static SidePage of(SideBySide both, CauseNamer causes, Texts t) {
    Comparison found = both.comparison();
    return new SidePage(
        both.bake().id(),
        named(both.bake(), t),
        both.better().id(),
        named(both.better(), t),
        Days.shown(both.better().baked(), t),
        found.differences().stream()
            .filter(one -> one.power() >= TELLING)
            .map(one -> line(one, causes, t))
            .toList(),
        t.number(ReportWords.percent(found.together())),
        found.differences().stream()
            .filter(one -> one.power() < TELLING)
            .map(one -> row(one.difference()))
            .toList(),
        t.names(found.appeared(), ", "),
        t.names(found.gone(), ", "),
        found.readings().stream().map(SidePage::row).toList());
  }

  private static Line line(Explained one, CauseNamer causes, Texts t) {
    return new Line(
        row(one.difference()),
        one.moved().stream()
            .limit(CAUSES)
            .map(
                moved ->
                    t.of(
                        "study.risk",
                        causes.name(moved.cause(), t),
                        t.number(ReportWords.percent(moved.before())),
                        t.number(ReportWords.percent(moved.after()))))
            .toList());
  }

  private static Row row(Difference difference) {
    return new Row(difference.what(), difference.before(), difference.after());
  }

  private static String named(Bake bake, Texts t) {
    String label = bake.label().isEmpty() ? bake.recipe() : bake.label();
    return label.isEmpty() ? t.of("report.yours") : label;
  }
}
