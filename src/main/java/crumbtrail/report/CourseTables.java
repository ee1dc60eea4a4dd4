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
import java.util.stream.DoubleStream;

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
    Bake bake =
        new Bake(
            curve.points().stream()
                .filter(p -> finite(p.minute(), p.core(), p.crust(), p.oven()))
                .map(
                    p ->
                        new BakePoint(
                            rounded(p.minute(), 1),
                            rounded(p.core(), 1),
                            rounded(p.crust(), 1),
                            rounded(p.oven(), 1)))
                .toList(),
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

  private static boolean finite(double... numbers) {
    return DoubleStream.of(numbers).allMatch(Double::isFinite);
  }
}
