package crumbtrail.web;

import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.LessonKind;
import crumbtrail.lessons.Course;
import crumbtrail.lessons.School;
import crumbtrail.lessons.Variation;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/**
 * One lesson on a page.
 *
 * @param number from 1
 * @param last number of the last lesson
 * @param cause what it teaches
 * @param view what moves
 */
public record LessonPage(int number, int last, LessonKind kind, Cause cause, VaryView view) {

  static LessonPage of(School school, int number, Texts t) {
    Course course = school.course();
    Course.Lesson lesson = course.lesson(number);
    Variation variation = course.variation(lesson);
    return new LessonPage(
        number,
        course.all().size(),
        lesson.kind(),
        lesson.cause(),
        VaryView.of(variation, school.drawings().of(variation), t));
  }

  /** Where the lesson's knob can be turned by hand. */
  public String turnAddress() {
    return "/vary?bake="
        + kind.sheet()
        + "&turn="
        + kind.turn()
        + "&range="
        + URLEncoder.encode(kind.range(), StandardCharsets.UTF_8);
  }
}
