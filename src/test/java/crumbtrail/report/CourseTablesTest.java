package crumbtrail.report;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.workup.BakeCurve;
import crumbtrail.workup.Heard;
import crumbtrail.workup.RiseCourse;
import crumbtrail.workup.Workup;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CourseTablesTest {

  @Test
  void without_courses_the_report_has_none() {
    assertThat(CourseTables.of(workup(null, null))).isNull();
  }

  @Test
  void what_is_not_finite_is_left_out() {
    RiseCourse rise =
        new RiseCourse(
            List.of(
                new RiseCourse.Point(0, 1, 24.04),
                new RiseCourse.Point(5, Double.NaN, 24),
                new RiseCourse.Point(10, 1.23456, 24)),
            List.of(new RiseCourse.Span("bulk", 0, Double.POSITIVE_INFINITY, 24)),
            List.of(new RiseCourse.Mark("ready to shape", Double.NaN, true)),
            true);
    BakeCurve bake =
        new BakeCurve(
            List.of(new BakeCurve.Point(0, 24, 24, 220)),
            95,
            100,
            OptionalDouble.of(Double.NaN),
            Optional.of(Double.NaN),
            false);

    Courses courses = CourseTables.of(workup(rise, bake));

    assertThat(courses.rise().points())
        .containsExactly(new Courses.RisePoint(0, 1, 24), new Courses.RisePoint(10, 1.235, 24));
    assertThat(courses.rise().spans()).isEmpty();
    assertThat(courses.rise().marks()).isEmpty();
    assertThat(courses.rise().assumed()).isTrue();
    assertThat(courses.bake().setAt()).isNull();
    assertThat(courses.bake().measuredCore()).isNull();
  }

  @Test
  void a_course_without_points_is_none() {
    BakeCurve bake =
        new BakeCurve(List.of(), 95, 100, OptionalDouble.empty(), Optional.empty(), false);
    assertThat(CourseTables.of(workup(null, bake))).isNull();
  }

  private static Workup workup(RiseCourse rise, BakeCurve bake) {
    return new Workup(
        null,
        null,
        List.of(),
        new Heard(List.of(), List.of(), List.of()),
        List.of(),
        Optional.ofNullable(rise),
        Optional.ofNullable(bake));
  }
}
