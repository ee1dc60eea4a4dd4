package crumbtrail.lessons;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crumbtrail.rules.RuleBase;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every lesson holds together, and its knob really moves its cause. */
class CourseTest {
  private static final Course COURSE = new Course(RuleBase.bundled());

  // From what nobody would name to what leads a bake that is still to come.
  private static final double MOVES = Stand.LEADS;

  static IntStream lessons() {
    return IntStream.rangeClosed(1, COURSE.all().size());
  }

  @Test
  void there_are_at_least_twelve_from_salt_to_lamination() {
    assertThat(COURSE.all()).hasSizeGreaterThanOrEqualTo(12);
    assertThat(COURSE.all().get(0).turn()).isEqualTo("salt");
    assertThat(COURSE.all().get(COURSE.all().size() - 1).cause()).startsWith("butter");
    assertThat(COURSE.all()).extracting(one -> one.cause()).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void the_knob_moves_the_cause(int number) {
    Course.Lesson lesson = COURSE.lesson(number);
    Variation variation = COURSE.variation(lesson);
    double[] likely =
        variation.points().stream()
            .mapToDouble(point -> point.causes().getOrDefault(lesson.cause().key(), 0.0))
            .toArray();
    double most = java.util.Arrays.stream(likely).max().orElse(0);
    double least = java.util.Arrays.stream(likely).min().orElse(0);
    assertThat(most - least).as(lesson.kind().title()).isGreaterThanOrEqualTo(MOVES);
    assertThat(variation.tipping()).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void the_mystery_is_the_one_that_the_lesson_names(int number) {
    Course.Lesson lesson = COURSE.lesson(number);
    assertThat(COURSE.mystery(lesson).cause()).isEqualTo(lesson.kind().mystery());
  }

  @Test
  void there_is_no_lesson_nought() {
    assertThatThrownBy(() -> COURSE.lesson(0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> COURSE.lesson(99)).isInstanceOf(IllegalArgumentException.class);
  }
}
