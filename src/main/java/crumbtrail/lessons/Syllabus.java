package crumbtrail.lessons;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.knowledge.LessonKind;
import crumbtrail.knowledge.Remedy;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What there is to learn about a cause: the lesson that teaches it, and the knob that its remedies
 * turn. Of several the first. Immutable.
 *
 * @param lessons by key of the cause that they teach
 * @param turning lessons by key of the knob that they turn
 * @param knobs by key of the cause
 */
public record Syllabus(
    Map<String, Lesson> lessons, Map<String, Lesson> turning, Map<String, Knob> knobs) {

  /** Of which there is nothing to learn. */
  public static final Syllabus NONE = new Syllabus(Map.of(), Map.of(), Map.of());

  public Syllabus {
    lessons = Map.copyOf(lessons);
    turning = Map.copyOf(turning);
    knobs = Map.copyOf(knobs);
  }

  /** A lesson: its number from 1, and its title. */
  public record Lesson(int number, String title) {}

  /** A knob: its key and its name in plain words. */
  public record Knob(String key, String name) {}

  /** What the catalogues have. */
  public static Syllabus of(Knowledge knowledge) {
    Map<String, Lesson> lessons = new HashMap<>();
    Map<String, Lesson> turning = new HashMap<>();
    List<LessonKind> course = knowledge.lessons();
    for (int place = 0; place < course.size(); place++) {
      LessonKind kind = course.get(place);
      Lesson lesson = new Lesson(place + 1, kind.title());
      lessons.putIfAbsent(kind.cause(), lesson);
      turning.putIfAbsent(kind.turn(), lesson);
    }
    Map<String, Knob> knobs = new HashMap<>();
    for (Remedy remedy : knowledge.remedies()) {
      knowledge.knobs().stream()
          .filter(knob -> knob.key().equals(remedy.turn()))
          .findFirst()
          .ifPresent(knob -> knobs.putIfAbsent(remedy.cause(), new Knob(knob.key(), knob.name())));
    }
    return new Syllabus(lessons, turning, knobs);
  }

  /**
   * The lesson that comes nearest to a cause: the one that teaches it, or teaches what it is a kind
   * of, or turns the knob that mends it.
   *
   * @param cause key
   */
  public Optional<Lesson> nearest(String cause, Catalogue catalogue) {
    return Optional.ofNullable(lessons.get(cause))
        .or(
            () ->
                catalogue.cause(cause).stream()
                    .flatMap(one -> one.refines().stream())
                    .filter(lessons::containsKey)
                    .findFirst()
                    .map(lessons::get))
        .or(() -> Optional.ofNullable(knobs.get(cause)).map(knob -> turning.get(knob.key())));
  }
}
