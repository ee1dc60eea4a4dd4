package crumbtrail.words;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * What was heard in the texts of late. A what-if turns one knob and leaves the baker's words as
 * they are, and the same text always means the same, so that it need not be heard again. Bounded:
 * long texts are not kept, and when it is full it is emptied. Safe for use by many threads.
 */
final class Remembered {
  private static final int MOST_TEXTS = 1000;
  private static final int LONGEST_TEXT = 300;

  private final Map<String, Heard> known = new ConcurrentHashMap<>();

  /** What a text says, heard only if it is not known. */
  Heard of(String text, Function<String, Heard> hearing) {
    if (text.length() > LONGEST_TEXT) {
      return hearing.apply(text);
    }
    Heard before = known.get(text);
    if (before != null) {
      return before;
    }
    Heard heard = hearing.apply(text);
    if (known.size() >= MOST_TEXTS) {
      known.clear();
    }
    known.put(text, heard);
    return heard;
  }
}
