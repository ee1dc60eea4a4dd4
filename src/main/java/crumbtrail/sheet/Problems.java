package crumbtrail.sheet;

import java.util.ArrayList;
import java.util.List;

/** The problems of one sheet, gathered while it is read on to the end. */
final class Problems {

  /** More than these help nobody. */
  private static final int MOST = 100;

  private final List<Problem> found = new ArrayList<>();

  private final List<String> aside = new ArrayList<>();

  void add(String where, String what, String remedy) {
    add(new Problem(where, what, remedy));
  }

  void add(Problem problem) {
    if (found.size() < MOST) {
      found.add(problem);
    } else if (found.size() == MOST) {
      found.add(
          new Problem(
              "",
              "there are more problems than these " + MOST,
              "mend these first, then try again"));
    }
  }

  /** Keeps words that stand beside a value which could be read; they become remarks. */
  void setAside(String words) {
    aside.add(words);
  }

  List<String> setAside() {
    return List.copyOf(aside);
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  List<Problem> found() {
    return List.copyOf(found);
  }

  /** The start of a text, for naming it in a sentence. */
  static String quoted(String text) {
    String shown = text.length() <= 60 ? text : text.substring(0, 57) + "…";
    return "“" + shown + "”";
  }
}
