package crumbtrail.web;

import crumbtrail.quantity.Amounts;
import crumbtrail.report.CourseWords;
import crumbtrail.report.Courses;
import crumbtrail.report.Courses.Bake;
import crumbtrail.report.Courses.BakePoint;
import crumbtrail.report.Courses.Rise;
import crumbtrail.report.Courses.RisePoint;
import crumbtrail.report.Courses.Span;
import crumbtrail.report.Report.WorkedReading;
import crumbtrail.web.ReportView.Figure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** The pictures of the report page, each with its sentences and its numbers. */
final class Figures {
  private static final int ROWS = 12;

  private Figures() {}

  /** All figures for which there are points. */
  static List<Figure> of(Courses courses, Map<String, WorkedReading> workup, Units units, Texts t) {
    Degrees degrees = new Degrees(units);
    List<Figure> figures = new ArrayList<>();
    if (courses != null && courses.rise() != null && !courses.rise().points().isEmpty()) {
      figures.add(rise(courses.rise(), workup, degrees, t));
    }
    if (courses != null && courses.bake() != null && !courses.bake().points().isEmpty()) {
      figures.add(bake(courses.bake(), workup, degrees, t));
    }
    return figures;
  }

  private static Figure rise(
      Rise rise, Map<String, WorkedReading> workup, Degrees degrees, Texts t) {
    return new Figure(
        "rise",
        t.of("rise.title"),
        Stream.of(Frame.WIDE, Frame.NARROW)
            .map(frame -> RisePicture.of(rise, frame, degrees, t))
            .toList(),
        rise.marks().stream().anyMatch(Courses.Mark::beyond)
            ? t.of("rise.caption") + " " + t.of("rise.caption.never")
            : t.of("rise.caption"),
        false,
        CourseWords.warnings(rise, workup).stream().map(degrees::said).toList(),
        columns(t, "rise.after", "rise.stage", "rise.times", "rise.dough"),
        chosen(rise.points(), RisePoint::minute).stream()
            .map(
                p ->
                    List.of(
                        t.number(CourseWords.time(p.minute())),
                        t.name(stage(rise, p.minute())),
                        t.number(Amounts.number(Math.round(p.rise() * 100) / 100.0)),
                        t.number(degrees.text(p.celsius()))))
            .toList());
  }

  private static Figure bake(
      Bake bake, Map<String, WorkedReading> workup, Degrees degrees, Texts t) {
    return new Figure(
        "bake",
        t.of("baking.title"),
        Stream.of(Frame.WIDE, Frame.NARROW)
            .map(frame -> BakePicture.of(bake, frame, degrees, t))
            .toList(),
        degrees.said(CourseWords.done(bake)),
        true,
        CourseWords.warnings(bake, workup).stream().map(degrees::said).toList(),
        columns(t, "baking.in", "baking.core", "baking.crust", "baking.oven"),
        chosen(bake.points(), BakePoint::minute).stream()
            .map(
                p ->
                    List.of(
                        t.number(CourseWords.time(p.minute())),
                        t.number(degrees.text(p.core())),
                        t.number(degrees.text(p.crust())),
                        t.number(degrees.text(p.oven()))))
            .toList());
  }

  private static List<String> columns(Texts t, String... keys) {
    return Stream.of(keys).map(t::of).toList();
  }

  // A stage owns its last moment: "bulk, 120 min" is where the bulk has come to.
  private static String stage(Rise rise, double minute) {
    return rise.spans().stream()
        .filter(span -> minute >= span.from() && minute <= span.to())
        .min(Comparator.comparingDouble(Span::from))
        .map(Span::name)
        .orElse("");
  }

  // The points that lie nearest to even steps: true points of the course, nothing in between.
  private static <T> List<T> chosen(List<T> points, ToDoubleFunction<T> minute) {
    double end = minute.applyAsDouble(points.get(points.size() - 1));
    return Stream.iterate(0, i -> i <= ROWS, i -> i + 1)
        .map(i -> end * i / ROWS)
        .map(
            at ->
                points.stream()
                    .min(Comparator.comparingDouble(p -> Math.abs(minute.applyAsDouble(p) - at)))
                    .orElseThrow())
        .distinct()
        .toList();
  }
}
