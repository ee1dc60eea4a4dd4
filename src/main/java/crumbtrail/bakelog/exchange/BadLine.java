package crumbtrail.bakelog.exchange;

import crumbtrail.sheet.Problem;
import java.util.List;

/** A line that is no bake; carries everything that is wrong with it. */
public final class BadLine extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  BadLine(List<Problem> problems) {
    super(problems.isEmpty() ? "" : problems.get(0).what());
    this.problems = List.copyOf(problems);
  }

  BadLine(String where, String what, String remedy) {
    this(List.of(new Problem(where, what, remedy)));
  }

  /** What is wrong. */
  public List<Problem> problems() {
    return problems;
  }
}
