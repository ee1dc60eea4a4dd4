package crumbtrail.lessons;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;

/** Lessons as JSON. */
public final class LessonJson {
  private static final ObjectMapper JSON = new ObjectMapper();

  private LessonJson() {}

  /** With line breaks. */
  public static String pretty(Object lesson) {
    try {
      return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(lesson) + "\n";
    } catch (JsonProcessingException fault) {
      throw new IllegalStateException("a lesson cannot be written", fault);
    }
  }
}
