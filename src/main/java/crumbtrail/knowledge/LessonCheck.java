package crumbtrail.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Looks whether lessons and mystery loaves speak of what the catalogues know. */
final class LessonCheck {
  private static final String LESSONS = "lessons.yaml";
  private static final String MYSTERIES = "mysteries.yaml";

  private final Places places;
  private final Set<String> causes;
  private final Set<String> knobs;
  private final List<Fault> faults = new ArrayList<>();

  private LessonCheck(Knowledge knowledge, Places places) {
    this.places = places;
    causes = knowledge.causes().stream().map(Cause::key).collect(Collectors.toSet());
    knobs = knowledge.knobs().stream().map(KnobKind::key).collect(Collectors.toSet());
  }

  /**
   * @param unread the catalogues that could not be read in full; while there is one, nothing is
   *     said
   */
  static List<Fault> faults(Knowledge knowledge, Set<String> unread, Places places) {
    if (!unread.isEmpty()) {
      return List.of();
    }
    LessonCheck check = new LessonCheck(knowledge, places);
    for (LessonKind lesson : knowledge.lessons()) {
      check.whole(
          LESSONS,
          lesson.cause(),
          Stream.of(lesson.title(), lesson.look(), lesson.sheet(), lesson.range()),
          lesson.level());
      check.known(LESSONS, lesson.cause(), "cause", lesson.cause(), check.causes);
      check.known(LESSONS, lesson.cause(), "mystery", lesson.mystery(), check.causes);
      check.known(LESSONS, lesson.cause(), "turn", lesson.turn(), check.knobs);
    }
    for (MysteryKind mystery : knowledge.mysteries()) {
      check.whole(MYSTERIES, mystery.cause(), Stream.of(mystery.sheet()), mystery.level());
      check.known(MYSTERIES, mystery.cause(), "cause", mystery.cause(), check.causes);
      if (mystery.turn() != null) {
        check.known(MYSTERIES, mystery.cause(), "turn", mystery.turn(), check.knobs);
        if (mystery.to() == null) {
          check.fault(
              MYSTERIES,
              mystery.cause(),
              "turn",
              "\"" + mystery.turn() + "\" is turned, and it is not said how far",
              "Say it under to");
        }
      }
    }
    return check.faults;
  }

  private void whole(String file, String cause, Stream<String> parts, MysteryKind.Level level) {
    if (level == null || parts.anyMatch(part -> part == null || part.isBlank())) {
      fault(
          file,
          cause,
          "",
          "the entry on \"" + cause + "\" is incomplete",
          file.equals(LESSONS)
              ? "Give it title, cause, look, sheet, turn, range, level, seed and mystery"
              : "Give it cause, level and sheet");
    }
  }

  private void known(String file, String cause, String part, String key, Set<String> all) {
    if (!all.contains(Objects.requireNonNullElse(key, ""))) {
      fault(
          file,
          cause,
          part,
          "\"" + key + "\" is no " + (part.equals("turn") ? "knob" : "cause"),
          all.isEmpty() || key == null
              ? "Take one of the catalogue"
              : "Nearest: \"" + Nearest.of(key, all) + "\"");
    }
  }

  private void fault(String file, String cause, String part, String what, String remedy) {
    faults.add(places.fault(file, String.valueOf(cause), part, what, remedy));
  }
}
