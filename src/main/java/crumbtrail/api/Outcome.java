package crumbtrail.api;

import crumbtrail.sheet.Problem;
import java.util.List;
import java.util.Optional;

/**
 * An answer, or all that is wrong with the request.
 *
 * @param answer empty where there is a problem
 * @param <T> kind of the answer
 */
public record Outcome<T>(Optional<T> answer, List<Problem> problems) {
  public Outcome {
    problems = List.copyOf(problems);
  }

  static <T> Outcome<T> made(T answer) {
    return new Outcome<>(Optional.of(answer), List.of());
  }

  static <T> Outcome<T> refused(List<Problem> problems) {
    return new Outcome<>(Optional.empty(), problems);
  }
}
