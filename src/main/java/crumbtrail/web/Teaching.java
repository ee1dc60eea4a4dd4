package crumbtrail.web;

import crumbtrail.knowledge.Knowledge;
import crumbtrail.knowledge.ReadingKind;
import crumbtrail.lessons.Syllabus;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * What there is to learn about a cause and about a number. Immutable.
 *
 * @param syllabus lessons and knobs of causes
 * @param meanings what readings mean, by their English names
 */
public record Teaching(Syllabus syllabus, Map<String, String> meanings) {
  private static final String NAME = "teaching";
  private static final Teaching NONE = new Teaching(Syllabus.NONE, Map.of());

  public Teaching {
    meanings = Map.copyOf(meanings);
  }

  /** Nothing, on pages that no server answers. */
  public static Teaching none() {
    return NONE;
  }

  /** Lessons by key of the cause that they teach. */
  public Map<String, Syllabus.Lesson> lessons() {
    return syllabus.lessons();
  }

  /** Knobs by key of the cause that they mend. */
  public Map<String, Syllabus.Knob> knobs() {
    return syllabus.knobs();
  }

  /** What the catalogues have. */
  static Teaching of(Knowledge knowledge) {
    Map<String, String> meanings = new HashMap<>();
    for (ReadingKind reading : knowledge.readings()) {
      if (reading.what() != null && !reading.what().isBlank()) {
        meanings.put(reading.name(), reading.what());
      }
    }
    return new Teaching(Syllabus.of(knowledge), meanings);
  }

  /** Hands it to whatever answers a request, to be looked at where it is needed. */
  static void attend(Context ctx, Supplier<Teaching> teaching) {
    ctx.attribute(NAME, teaching);
  }

  /** What a request was handed. */
  static Teaching of(Context ctx) {
    Supplier<Teaching> known = ctx.attribute(NAME);
    return known == null ? NONE : known.get();
  }
}
