package crumbtrail.web;

import crumbtrail.knowledge.Knowledge;
import crumbtrail.knowledge.LessonKind;
import crumbtrail.knowledge.Remedy;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What there is to learn about a cause: the lesson that teaches it, and the knob that its remedies
 * turn. Immutable.
 *
 * @param lessons by key of the cause
 * @param knobs by key of the cause
 */
public record Teaching(Map<String, Lesson> lessons, Map<String, Knob> knobs) {
  private static final String NAME = "teaching";
  private static final Teaching NONE = new Teaching(Map.of(), Map.of());

  public Teaching {
    lessons = Map.copyOf(lessons);
    knobs = Map.copyOf(knobs);
  }

  /** A lesson: its number from 1, and its title. */
  public record Lesson(int number, String title) {}

  /** A knob: its key and its name in plain words. */
  public record Knob(String key, String name) {}

  /** Nothing, on pages that no server answers. */
  public static Teaching none() {
    return NONE;
  }

  /** What the catalogues have; of several lessons or knobs the first. */
  static Teaching of(Knowledge knowledge) {
    Map<String, Lesson> lessons = new HashMap<>();
    List<LessonKind> course = knowledge.lessons();
    for (int place = 0; place < course.size(); place++) {
      LessonKind lesson = course.get(place);
      lessons.putIfAbsent(lesson.cause(), new Lesson(place + 1, lesson.title()));
    }
    Map<String, Knob> knobs = new HashMap<>();
    for (Remedy remedy : knowledge.remedies()) {
      knowledge.knobs().stream()
          .filter(knob -> knob.key().equals(remedy.turn()))
          .findFirst()
          .ifPresent(knob -> knobs.putIfAbsent(remedy.cause(), new Knob(knob.key(), knob.name())));
    }
    return new Teaching(lessons, knobs);
  }

  /** Hands it to whatever answers a request. */
  void attend(Context ctx) {
    ctx.attribute(NAME, this);
  }

  /** What a request was handed. */
  static Teaching of(Context ctx) {
    Teaching known = ctx.attribute(NAME);
    return known == null ? NONE : known;
  }
}
