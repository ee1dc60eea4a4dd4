package crumbtrail.report;

import static crumbtrail.report.ReportWriter.rounded;

import crumbtrail.report.Courses.Bake;
import crumbtrail.report.Courses.BakePoint;
import crumbtrail.report.Courses.Mark;
import crumbtrail.report.Courses.Rise;
import crumbtrail.report.Courses.RisePoint;
import crumbtrail.report.Courses.Span;
import crumbtrail.workup.BakeCurve;
import crumbtrail.workup.RiseCourse;
import crumbtrail.workup.Workup;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Rounds the courses of a workup for the report. A model may fail on a strange sheet: what is not
 * finite is left out, so that it can spoil neither JSON nor picture.
 */
final class CourseTables {
  private CourseTables() {}

  /** The courses, or null where there is none. */
  static Courses of(Workup workup) {
    Rise rise = workup.rise().map(CourseTables::rise).orElse(null);
    Bake bake = workup.bake().map(CourseTables::bake).orElse(null);
    return rise == null && bake == null ? null : new Courses(rise, bake);
  }

  // Null where no point is left.
  private static Rise rise(RiseCourse course) {
    Rise rise =
        new Rise(
            course.points().stream()
                .filter(p -> finite(p.minute(), p.rise(), p.celsius()))
                .map(
                    p ->
                        new RisePoint(
                            rounded(p.minute(), 1), rounded(p.rise(), 3), rounded(p.celsius(), 1)))
                .toList(),
            course.spans().stream()
                .filter(s -> finite(s.from(), s.to(), s.place()))
                .map(
                    s ->
                        new Span(
                            s.name(),
                            rounded(s.from(), 1),
                            rounded(s.to(), 1),
                            rounded(s.place(), 1)))
                .toList(),
            course.marks().stream()
                .filter(m -> finite(m.minute()))
                .map(m -> new Mark(m.name(), rounded(m.minute(), 1), m.beyond()))
                .toList(),
            course.assumed());
    return rise.points().isEmpty() ? null : rise;
  }

  private static Bake bake(BakeCurve curve) {
    List<BakeCurve.Point> points =
        curve.points().stream()
            .filter(p -> finite(p.minute(), p.core(), p.crust(), p.oven()))
            .toList();
    Bake bake =
        new Bake(
            IntStream.range(0, points.size()).mapToObj(at -> point(points, at)).toList(),
            rounded(curve.wantedCore(), 1),
            rounded(curve.boiling(), 1),
            curve.setAt().isPresent() && finite(curve.setAt().getAsDouble())
                ? Double.valueOf(rounded(curve.setAt().getAsDouble(), 1))
                : null,
            curve.measuredCore().filter(CourseTables::finite).map(c -> rounded(c, 1)).orElse(null),
            curve.assumed());
    boolean usable = !bake.points().isEmpty() && finite(curve.wantedCore(), curve.boiling());
    return usable ? bake : null;
  }

  // The model tells the oven in which the loaf has been; a reader wants the one that it is in.
  private static BakePoint point(List<BakeCurve.Point> points, int at) {
    BakeCurve.Point point = points.get(at);
    BakeCurve.Point next = points.get(Math.min(at + 1, points.size() - 1));
    return new BakePoint(
        rounded(point.minute(), 1),
        rounded(point.core(), 1),
        rounded(point.crust(), 1),
        rounded(next.oven(), 1));
  }

  private static boolean finite(double... numbers) {
    return DoubleStream.of(numbers).allMatch(Double::isFinite);
  }
}
