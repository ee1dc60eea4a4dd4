package crumbtrail.cli;

import crumbtrail.sheet.Problem;
import java.util.ArrayList;
import java.util.List;

/** Thrown when what the user gave cannot be used; carries the lines that tell them why. */
public final class BadInput extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<String> lines;

  /**
   * @param lines what is wrong and what would do
   */
  public BadInput(List<String> lines) {
    super(String.join(System.lineSeparator(), lines));
    this.lines = List.copyOf(lines);
  }

  /** Of a sheet or something like it, with every problem and its place. */
  public static BadInput of(String source, List<Problem> problems) {
    List<String> lines = new ArrayList<>();
    lines.add(source + " cannot be used as it stands (" + problems.size() + " problem(s)):");
    for (Problem problem : problems) {
      lines.add(
          "  "
              + (problem.where().isEmpty() ? "sheet" : problem.where())
              + ": "
              + problem.what()
              + ". "
              + problem.remedy());
    }
    return new BadInput(lines);
  }

  List<String> lines() {
    return lines;
  }
}
