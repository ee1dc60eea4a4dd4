package crumbtrail.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbtrail.sheet.Problem;
import java.util.List;

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

  /** The type of a refused sheet; every other error is fully told by its status. */
  private static final String SHEET = "urn:crumbtrail:problem:bake-sheet";

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
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("type", problems.isEmpty() ? "about:blank" : SHEET);
    node.put("title", problems.isEmpty() ? title : "The bake sheet cannot be used");
    node.put("status", status);
    node.put("detail", detail);
    if (!incident.isEmpty()) {
      node.put("incident", incident);
    }
    if (!problems.isEmpty()) {
      ArrayNode list = node.putArray("problems");
      for (Problem problem : problems) {
        list.addObject()
            .put("where", problem.where())
            .put("what", problem.what())
            .put("remedy", problem.remedy());
      }
    }
    return node.toString();
  }

  private static String titleOf(int status) {
    return switch (status) {
      case 400 -> "Bad request";
      case 403 -> "Forbidden";
      case 404 -> "Not found";
      case 405 -> "Method not allowed";
      case 413 -> "Content too large";
      case 415 -> "Unsupported media type";
      case 421 -> "Misdirected request";
      case 431 -> "Request header fields too large";
      case 500 -> "Internal server error";
      case 503 -> "Service unavailable";
      default -> status < 500 ? "Request refused" : "Server error";
    };
  }
}
