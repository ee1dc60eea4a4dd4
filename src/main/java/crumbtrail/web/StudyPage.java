package crumbtrail.web;

import crumbtrail.quantity.Amounts;
import crumbtrail.study.Kitchen;
import crumbtrail.study.OwnRecord;
import crumbtrail.study.ReadingChart;
import crumbtrail.study.Trends;
import crumbtrail.study.Trends.Count;
import crumbtrail.web.ReportView.Figure;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the log teaches, ready to be drawn.
 *
 * @param asked what was asked for
 * @param bakes how many bakes were looked at
 * @param judged of how many of them a cause was confirmed
 * @param figures a chart of each reading
 * @param confirmed confirmed causes, the most frequent first
 * @param suspected causes that the traces put first
 * @param lessons what is most worth learning next
 * @param learnt what was learnt of the kitchen, rows of a table; empty where nothing was
 * @param record how well causes were foretold, in sentences; empty where there is nothing to count
 */
public record StudyPage(
    Asked asked,
    int bakes,
    int judged,
    List<Figure> figures,
    List<Counted> confirmed,
    List<Counted> suspected,
    List<Lesson> lessons,
    List<List<String>> learnt,
    List<String> record) {
  private static final int CAUSES = 10;
  private static final double TELLING = 0.5;

  /** Whose bakes of which recipe. */
  public record Asked(String of, String recipe) {}

  /** A cause and in how many bakes it came up. */
  public record Counted(String key, String name, int bakes) {}

  /** A lesson, 0 where there is none, and why it is worth taking. */
  public record Lesson(int number, String title, String cause, String why) {}

  static StudyPage of(
      Trends trends,
      Optional<Kitchen> kitchen,
      OwnRecord record,
      Asked asked,
      CauseNamer causes,
      Texts t) {
    return new StudyPage(
        asked,
        trends.bakes(),
        trends.judged(),
        trends.charts().stream().map(chart -> figure(chart, t)).toList(),
        counted(trends.confirmed(), causes, t),
        counted(trends.namedFirst(), causes, t),
        trends.learn().stream().limit(CAUSES).map(one -> lesson(one, trends, causes, t)).toList(),
        kitchen.map(one -> learnt(one, causes, t)).orElse(List.of()),
        record(record, t));
  }

  private static Figure figure(ReadingChart chart, Texts t) {
    String name = t.name(chart.reading());
    String heading = name.substring(0, 1).toUpperCase(t.language().locale()) + name.substring(1);
    boolean few = chart.points().size() < ChartPicture.FEW;
    boolean same =
        chart.points().stream().mapToDouble(ReadingChart.Point::value).distinct().count() == 1;
    String caption =
        same
            ? t.of("study.same", shown(chart, chart.centre(), t))
            : few
                ? t.of("study.few", shown(chart, chart.centre(), t), ChartPicture.FEW)
                : t.of(
                    "study.usual",
                    shown(chart, chart.lower(), t),
                    shown(chart, chart.upper(), t),
                    shown(chart, chart.centre(), t));
    return new Figure(
        "chart-" + chart.reading().replace(' ', '-'),
        heading,
        Stream.of(Frame.WIDE, Frame.NARROW)
            .map(frame -> ChartPicture.of(chart, heading, caption, frame, t))
            .toList(),
        caption,
        false,
        List.of(),
        List.of(t.of("study.bake"), t.of("study.day"), heading, t.of("study.out")),
        chart.points().stream()
            .map(
                point ->
                    List.of(
                        String.valueOf(point.bake()),
                        Days.shown(LocalDateTime.parse(point.baked()), t),
                        shown(chart, point.value(), t),
                        !few && ChartPicture.out(chart, point) ? t.of("study.out.yes") : ""))
            .toList());
  }

  private static String shown(ReadingChart chart, double value, Texts t) {
    return t.number(Amounts.quantity(Amounts.rounded(value, chart.decimals()), chart.unit()));
  }

  private static List<Counted> counted(List<Count> counts, CauseNamer causes, Texts t) {
    return counts.stream()
        .limit(CAUSES)
        .map(one -> new Counted(one.cause(), causes.name(one.cause(), t), one.bakes()))
        .toList();
  }

  private static Lesson lesson(Trends.ToLearn one, Trends trends, CauseNamer causes, Texts t) {
    String names =
        String.join(
            ", ", one.causes().stream().map(cause -> causes.name(cause.cause(), t)).toList());
    return new Lesson(
        one.lesson() == null ? 0 : one.lesson(),
        one.title(),
        one.causes().get(0).cause(),
        t.of("study.why", names, one.bakes(), trends.judged()));
  }

  private static List<List<String>> learnt(Kitchen kitchen, CauseNamer causes, Texts t) {
    return kitchen.causes().stream()
        .filter(one -> Math.abs(one.decibans()) >= TELLING)
        .limit(2L * CAUSES)
        .map(
            one ->
                List.of(
                    causes.name(one.cause(), t),
                    t.number(String.format(Locale.ROOT, "%.1f", one.foretold())),
                    String.valueOf(one.confirmed()),
                    t.number(
                        "× "
                            + String.format(
                                Locale.ROOT, "%.2g", Math.pow(10, one.decibans() / 10)))))
        .toList();
  }

  private static List<String> record(OwnRecord record, Texts t) {
    if (record.bakes() == 0) {
      return List.of();
    }
    String counts = t.of("study.record", record.bakes(), record.first(), record.three());
    return record.bakes() < OwnRecord.FEW
        ? List.of(counts, t.of("study.record.few", OwnRecord.FEW))
        : List.of(counts);
  }
}
