package crumbtrail.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import crumbtrail.sheet.Problem;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An error as RFC 9457 problem details.
 *
 * @param type address of the section that tells of this kind of problem
 * @param title the kind in words, the same each time
 * @param status the HTTP status
 * @param detail what happened this time, in a sentence
 * @param incident number under which the log of the server has more; missing where there is none
 * @param problems what is wrong with the bake sheet; missing where that is not the matter
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record ProblemAnswer(
    String type,
    String title,
    int status,
    String detail,
    @Nullable String incident,
    @Nullable List<Problem> problems) {
  public ProblemAnswer {
    problems = List.copyOf(problems);
  }
}
