package crumbtrail.api;

import java.util.List;

/**
 * One address of the interface for programs. The routes are registered by it, and the description
 * is written from it, so that neither can say more than the other.
 *
 * @param method "GET", "POST", "PATCH" or "DELETE"
 * @param path with its parameters in braces: {@code /api/causes/{key}}
 * @param id short name, unique; the page has its section under it
 * @param topic the group that it belongs to
 * @param summary what it does, a few words
 * @param detail more of it, in sentences
 * @param parameters of the path and the query
 * @param takes the bodies that it takes, empty for none
 * @param answers what it answers with; the first of several is the usual one
 * @param refusals why it can refuse, beyond what every address can
 * @param example a request that works and part of its answer
 */
public record Endpoint(
    String method,
    String path,
    String id,
    Topic topic,
    String summary,
    String detail,
    List<Parameter> parameters,
    List<Body> takes,
    List<Shape> answers,
    List<ProblemKind> refusals,
    Example example) {

  public Endpoint {
    parameters = List.copyOf(parameters);
    takes = List.copyOf(takes);
    answers = List.copyOf(answers);
    refusals = List.copyOf(refusals);
  }

  /** What addresses are about. */
  public enum Topic {
    BAKES("Bakes", "A bake sheet in, an answer on that bake out. Nothing is kept."),
    LOG("The bake log", "Bakes that are kept, where the server keeps a log."),
    PEOPLE(
        "People",
        "Accounts and classes, where several people share the log; on any other server there is"
            + " nothing to log in to, and these answer 404."),
    TEACHING("Teaching", "The course, and loaves that failed for a hidden reason."),
    KNOWLEDGE("Knowledge", "Causes, signs, breads and knobs, as the rules know them."),
    PROGRAM("The program", "Its state, its version, and the description of this interface.");

    private final String title;
    private final String about;

    Topic(String title, String about) {
      this.title = title;
      this.about = about;
    }

    /** A heading. */
    public String title() {
      return title;
    }

    /** A sentence or two below it. */
    public String about() {
      return about;
    }
  }

  /**
   * A parameter of the path or the query.
   *
   * @param in "path" or "query"
   * @param what what it is for, in a sentence
   * @param example a value that works
   */
  public record Parameter(String name, String in, String what, String example) {
    static Parameter path(String name, String what, String example) {
      return new Parameter(name, "path", what, example);
    }

    static Parameter query(String name, String what, String example) {
      return new Parameter(name, "query", what, example);
    }
  }

  /**
   * A body that is taken.
   *
   * @param type its media type
   * @param shape what stands in it
   */
  public record Body(String type, Shape shape) {}

  /**
   * The shape of a value.
   *
   * @param type its record; the bake sheet stands for its schema, a string for plain text, and
   *     {@code JsonNode} for any object
   * @param list whether there is a list of them
   */
  public record Shape(Class<?> type, boolean list) {
    static Shape one(Class<?> type) {
      return new Shape(type, false);
    }

    static Shape many(Class<?> type) {
      return new Shape(type, true);
    }
  }

  /**
   * A request that works.
   *
   * @param address path and query, written as in a URL
   * @param type media type of the body, empty where there is none
   * @param body empty where there is none
   * @param shown part of the answer as JSON; a list shows its first entries
   */
  public record Example(String address, String type, String body, String shown) {
    static Example get(String address, String shown) {
      return new Example(address, "", "", shown.strip());
    }

    static Example post(String address, String body, String shown) {
      return new Example(address, "application/json", body.strip(), shown.strip());
    }

    /** The request as a line for a shell, where a body is posted and everything else is got. */
    public String curl(String server) {
      return curl(body.isEmpty() ? "GET" : "POST", server, false);
    }

    private String curl(String method, String server, boolean token) {
      StringBuilder line = new StringBuilder("curl -s ");
      if (!method.equals(body.isEmpty() ? "GET" : "POST")) {
        line.append("-X ").append(method).append(' ');
      }
      boolean plain = address.matches("[\\w/.-]*");
      line.append(plain ? server + address : "'" + server + address + "'");
      if (token) {
        line.append(" \\\n  -H \"Authorization: Bearer $TOKEN\"");
      }
      if (!body.isEmpty()) {
        line.append(" \\\n  -H 'Content-Type: ").append(type).append("' \\\n  -d '");
        line.append(body.replace("'", "'\\''")).append("'");
      }
      return line.toString();
    }
  }

  /** The example as a line for a shell. */
  public String curl(String server) {
    return example.curl(method, server, access() == Access.LOGGED_IN);
  }

  /** Who can ask. */
  public enum Access {
    /** Everybody. */
    FREE,
    /** Whoever is logged in; everybody where one person keeps the log. */
    KEEPS_LOG,
    /** Whoever is logged in. */
    LOGGED_IN
  }

  /** Who can ask. */
  public Access access() {
    return switch (topic) {
      case LOG -> Access.KEEPS_LOG;
      case PEOPLE -> PeopleEndpoints.OPEN.contains(this) ? Access.FREE : Access.LOGGED_IN;
      default -> Access.FREE;
    };
  }

  /** Whether the answer is a resource that stays the same until the program changes. */
  public boolean stands() {
    return method.equals("GET");
  }
}
