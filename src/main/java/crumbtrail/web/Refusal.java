package crumbtrail.web;

import crumbtrail.sheet.Problem;
import java.util.List;

/** Ends a request with an error status; the message is for the person who asked. */
final class Refusal extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final int status;
  private final transient List<Problem> problems;

  /**
   * @param status an HTTP status from 400 up
   * @param detail a sentence of ours that holds nothing of the request
   */
  Refusal(int status, String detail) {
    this(status, detail, List.of());
  }

  Refusal(int status, String detail, List<Problem> problems) {
    super(detail);
    this.status = status;
    this.problems = List.copyOf(problems);
  }

  int status() {
    return status;
  }

  List<Problem> problems() {
    return problems;
  }
}
