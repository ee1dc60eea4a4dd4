package crumbtrail.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A run of words within a line of the handbook.
 *
 * @param words as they are read, without marks
 * @param target where they lead, as the handbook writes it, or empty
 * @param kind how they stand out
 */
public record Inline(String words, String target, Kind kind) {
  /** How words stand out. */
  public enum Kind {
    PLAIN,
    EMPHASIS,
    CODE
  }

  private static final Pattern MARK =
      Pattern.compile("\\[([^\\]]*)\\]\\(([^)\\s]*)\\)|\\*([^*]+)\\*|`([^`]+)`");

  /** The runs of a line, in their order. */
  public static List<Inline> of(String line) {
    List<Inline> runs = new ArrayList<>();
    Matcher mark = MARK.matcher(line);
    int from = 0;
    while (mark.find()) {
      plain(runs, line.substring(from, mark.start()));
      if (mark.group(1) != null) {
        runs.add(new Inline(mark.group(1), mark.group(2), Kind.PLAIN));
      } else if (mark.group(3) != null) {
        runs.add(new Inline(mark.group(3), "", Kind.EMPHASIS));
      } else {
        runs.add(new Inline(mark.group(4), "", Kind.CODE));
      }
      from = mark.end();
    }
    plain(runs, line.substring(from));
    return runs;
  }

  private static void plain(List<Inline> runs, String words) {
    if (!words.isEmpty()) {
      runs.add(new Inline(words, "", Kind.PLAIN));
    }
  }
}
