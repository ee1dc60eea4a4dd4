package crumbtrail.web;

import crumbtrail.sheet.Problem;
import java.util.List;

/**
 * What became of a bake sheet: an answer, or the reasons why there is none.
 *
 * @param <T> kind of the answer
 */
public sealed interface Traced<T> {

  /** There is an answer. */
  record Made<T>(T report) implements Traced<T> {}

  /** The sheet cannot be used; the problems are all that were found, not only the first. */
  record Refused<T>(List<Problem> problems) implements Traced<T> {
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
