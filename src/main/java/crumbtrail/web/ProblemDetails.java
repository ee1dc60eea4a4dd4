package crumbtrail.web;

import crumbtrail.api.ProblemAnswer;
import crumbtrail.api.ProblemKind;
import crumbtrail.sheet.Problem;
import java.util.List;
import java.util.Optional;

/**
 * An error as RFC 9457 problem details.
 *
 * @param status the HTTP status
 * @param title the status in words
 * @param detail what happened this time, in a sentence
 * @param incident the number under which the log has more, or empty
 * @param problems what is wrong with the bake sheet, if that is the matter
 */
public record ProblemDetails(
    int status, String title, String detail, String incident, List<Problem> problems) {

  static final String TYPE = "application/problem+json";

  public ProblemDetails {
    problems = List.copyOf(problems);
  }

  static ProblemDetails of(int status, String detail) {
    return of(status, detail, List.of());
  }

  static ProblemDetails of(int status, String detail, List<Problem> problems) {
    return new ProblemDetails(status, titleOf(status), detail, "", problems);
  }

  static ProblemDetails fault(String incident) {
    return new ProblemDetails(
        500, titleOf(500), "The program is at fault, not the request.", incident, List.of());
  }

  String json() {
    Optional<ProblemKind> kind =
        problems.isEmpty() ? ProblemKind.of(status) : Optional.of(ProblemKind.BAKE_SHEET);
    return ApiJson.text(
        new ProblemAnswer(
            kind.map(ProblemKind::type).orElse("about:blank"),
            kind.map(ProblemKind::title).orElse(title),
            status,
            detail,
            incident,
            problems));
  }

  private static String titleOf(int status) {
    return ProblemKind.of(status)
        .map(ProblemKind::title)
        .orElse(status < 500 ? "Request refused" : "Server error");
  }
}
