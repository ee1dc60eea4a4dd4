package crumbtrail.api;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Why a request can be refused. Each kind has a section on the page that describes the API. */
public enum ProblemKind {
  BAD_REQUEST(
      400,
      "Bad request",
      "The request cannot be read: broken text, a query parameter that makes no sense, a body that"
          + " is no JSON. The detail says which."),
  BAKE_SHEET(
      400,
      "The bake sheet cannot be used",
      "Something on the sheet cannot be read. All that was found is listed under problems: the"
          + " place, what stands there, and what would do."),
  NOT_LOGGED_IN(
      401,
      "Not logged in",
      "Several people share the log. Log in at POST /api/log/session, and send the token with every"
          + " request as Authorization: Bearer TOKEN."),
  FOREIGN_PAGE(
      403,
      "Forbidden",
      "The request was sent by a page of another origin, or whoever asks may see something but not"
          + " change it. The detail says which. Programs send neither Origin nor Sec-Fetch-Site and"
          + " are not concerned with the first."),
  NOT_FOUND(
      404, "Not found", "There is nothing at this address, or nothing known under this name."),
  METHOD_NOT_ALLOWED(
      405, "Method not allowed", "The address takes other methods; the header Allow names them."),
  NOT_ACCEPTABLE(
      406,
      "Not acceptable",
      "The header Accept leaves out the only type in which there is an answer. Leave it away, or"
          + " accept application/json."),
  CHANGED_SINCE(
      412,
      "Changed since",
      "Somebody has changed it since the ETag in If-Match was given out. Ask for it again."),
  CONTENT_TOO_LARGE(
      413,
      "Content too large",
      "The body is longer than 64 KiB, for the log than 384 KiB, for a photo than 25 MB. A long"
          + " recipe with its process is under 8 KiB."),
  UNSUPPORTED_TYPE(
      415,
      "Unsupported media type",
      "The body must be of a type that the address takes, in UTF-8, and Content-Type must say so."),
  MISDIRECTED(
      421,
      "Misdirected request",
      "A server that listens on this machine only answers to localhost and to no other name."),
  TOO_OFTEN(
      429,
      "Too many requests",
      "So much at once is not taken from one account or one address. Retry-After says how many"
          + " seconds to wait."),
  HEADERS_TOO_LARGE(431, "Request header fields too large", "The headers are longer than 8 KiB."),
  PROGRAM_FAULT(
      500,
      "Internal server error",
      "The program is at fault, not the request. The incident number stands in the log of the"
          + " server, with more beside it."),
  UNAVAILABLE(
      503,
      "Service unavailable",
      "The server is stopping, has too much to do, or cannot use its log.");

  /** Where the kinds are told of. */
  private static final String PAGE = "/api/docs#";

  private final int status;
  private final String title;
  private final String meaning;

  ProblemKind(int status, String title, String meaning) {
    this.status = status;
    this.title = title;
    this.meaning = meaning;
  }

  /** The first kind with this status. */
  public static Optional<ProblemKind> of(int status) {
    return Arrays.stream(values()).filter(kind -> kind.status == status).findFirst();
  }

  /** The HTTP status. */
  public int status() {
    return status;
  }

  /** Short and the same each time. */
  public String title() {
    return title;
  }

  /** What it means and what to do, in sentences. */
  public String meaning() {
    return meaning;
  }

  /** The id of its section on the page. */
  public String anchor() {
    return "problem-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Its type as problem details name it: an address that leads to its section. */
  public String type() {
    return PAGE + anchor();
  }
}
