package crumbtrail.api;

import com.fasterxml.jackson.databind.JsonNode;
import crumbtrail.api.Classroom.Lesson;
import crumbtrail.api.Classroom.LessonLine;
import crumbtrail.api.Endpoint.Example;
import crumbtrail.api.Endpoint.Parameter;
import crumbtrail.api.Endpoint.Shape;
import crumbtrail.api.Endpoint.Topic;
import crumbtrail.api.Shelf.CauseCard;
import crumbtrail.api.Shelf.CauseLine;
import crumbtrail.api.Shelf.KnobLine;
import crumbtrail.api.Shelf.SignLine;
import crumbtrail.api.Shelf.StyleLine;
import java.util.List;

/** Addresses that are only read. */
public final class LookUpEndpoints {
  /** The course. */
  public static final Endpoint LESSONS =
      list(
          "/api/lessons",
          "lessons",
          Topic.TEACHING,
          "The course",
          "All lessons in order: from salt to layers of butter.",
          LessonLine.class,
          "[{\"number\": 1}, {\"number\": 2}]");

  /** One lesson. */
  public static final Endpoint LESSON =
      one(
          "/api/lessons/{number}",
          "lesson",
          Topic.TEACHING,
          "A lesson",
          "What it teaches, and what moves as its knob is turned.",
          Parameter.path("number", "number of the lesson, from 1", "1"),
          Lesson.class,
          "/api/lessons/1",
          "{\"lesson\": {\"number\": 1}, \"variation\": {\"turns\": true}}");

  /** A mystery loaf. */
  public static final Endpoint MYSTERY =
      new Endpoint(
          "GET",
          "/api/mystery",
          "mystery",
          Topic.TEACHING,
          "A mystery loaf",
          "A loaf that failed for a hidden reason. Ask for one, ask what you want to know by adding"
              + " keys of open to asked, and name the cause. The server keeps nothing: level and seed"
              + " bring the loaf again.",
          List.of(
              Parameter.query("level", "easy, middling or hard; easy unless told", "easy"),
              Parameter.query("seed", "which loaf, a whole number; any unless told", "7"),
              Parameter.query(
                  "asked", "keys of what is asked, in order, by commas", "recipe,crumb"),
              Parameter.query("named", "key of the cause that is named, or give-up", "give-up")),
          List.of(),
          List.of(Shape.one(Mystery.class)),
          List.of(ProblemKind.BAD_REQUEST),
          Example.get(
              "/api/mystery?level=easy&seed=7&asked=recipe",
              "{\"seed\": 7, \"level\": \"easy\", \"told\": [{\"clue\": \"recipe\"}]}"));

  /** All causes. */
  public static final Endpoint CAUSES =
      list(
          "/api/causes",
          "causes",
          Topic.KNOWLEDGE,
          "All causes",
          "Every cause that is known, and the stage of the bake at which it arises.",
          CauseLine.class,
          "[{\"stage\": \"formula\"}]");

  /** The card of a cause. */
  public static final Endpoint CAUSE =
      one(
          "/api/causes/{key}",
          "cause",
          Topic.KNOWLEDGE,
          "The card of a cause",
          "What it is, how it shows, how to tell it from its neighbours, what to do, and a small bake"
              + " that proves it.",
          Parameter.path("key", "key of the cause", "over-proofed"),
          CauseCard.class,
          "/api/causes/over-proofed",
          "{\"key\": \"over-proofed\", \"sections\": [{\"heading\": \"What it is\"}]}");

  /** All signs. */
  public static final Endpoint SIGNS =
      list(
          "/api/signs",
          "signs",
          Topic.KNOWLEDGE,
          "All signs",
          "Everything that a baker can see, smell, taste or feel, and how to look for it.",
          SignLine.class,
          "[{}, {}]");

  /** All styles. */
  public static final Endpoint STYLES =
      list(
          "/api/styles",
          "styles",
          Topic.KNOWLEDGE,
          "All styles of bread",
          "Every style with its usual ranges and their sources.",
          StyleLine.class,
          "[{}, {}]");

  /** All knobs. */
  public static final Endpoint KNOBS =
      list(
          "/api/knobs",
          "knobs",
          Topic.KNOWLEDGE,
          "All that can be turned",
          "The quantities that can be turned, each with the range that makes sense.",
          KnobLine.class,
          "[{\"key\": \"salt\", \"unit\": \"%\"}]");

  /** What is running. */
  public static final Endpoint VERSION =
      list(
          "/api/version",
          "version",
          Topic.PROGRAM,
          "What is running",
          "Version of the program and of its rules.",
          Shelf.Version.class,
          "{\"program\": \"crumbtrail\"}");

  /** Whether it is up. */
  public static final Endpoint HEALTH =
      list(
          "/health",
          "health",
          Topic.PROGRAM,
          "Whether it is up",
          "Answers as long as the server takes requests.",
          Health.class,
          "{\"status\": \"up\"}");

  /** Whether it can work. */
  public static final Endpoint READY =
      new Endpoint(
          "GET",
          "/ready",
          "ready",
          Topic.PROGRAM,
          "Whether it can work",
          "Answers with 200 once the rules are laid out and the log, if there is one, answers; with"
              + " 503 as long as they do not. Asking opens the log.",
          List.of(),
          List.of(),
          List.of(Shape.one(Health.class)),
          List.of(ProblemKind.UNAVAILABLE),
          Example.get("/ready", "{\"status\": \"ready\"}"));

  /** What it measures of itself. Not JSON: Prometheus reads its own text. */
  public static final Endpoint METRICS =
      new Endpoint(
          "GET",
          "/metrics",
          "metrics",
          Topic.PROGRAM,
          "What it measures of itself",
          "Requests by route and status, how long they took, sheets worked on, memory and threads, as"
              + " text for Prometheus. Told on the machine of the server only, unless its settings say"
              + " otherwise.",
          List.of(),
          List.of(),
          List.of(Shape.one(String.class)),
          List.of(ProblemKind.FOREIGN_PAGE, ProblemKind.NOT_FOUND),
          Example.get("/metrics", "\"crumbtrail_http_requests_total\""));

  /** This description. */
  public static final Endpoint OPENAPI =
      list(
          "/openapi.json",
          "openapi",
          Topic.PROGRAM,
          "This description",
          "The OpenAPI 3.1 description of all addresses.",
          JsonNode.class,
          "{\"openapi\": \"3.1.1\"}");

  /** The schema of the bake sheet. */
  public static final Endpoint SHEET_SCHEMA =
      list(
          "/schemas/bake-sheet.json",
          "sheet-schema",
          Topic.PROGRAM,
          "Schema of the bake sheet",
          "The JSON Schema (2020-12) of what a bake sheet may look like.",
          JsonNode.class,
          "{\"$id\": \"/schemas/bake-sheet.json\"}");

  /** The schema of the report. */
  public static final Endpoint REPORT_SCHEMA =
      list(
          "/schemas/report.json",
          "report-schema",
          Topic.PROGRAM,
          "Schema of the report",
          "The JSON Schema (2020-12) of a report.",
          JsonNode.class,
          "{\"$id\": \"/schemas/report.json\"}");

  /** All of them. */
  public static final List<Endpoint> ALL =
      List.of(
          LESSONS,
          LESSON,
          MYSTERY,
          CAUSES,
          CAUSE,
          SIGNS,
          STYLES,
          KNOBS,
          VERSION,
          HEALTH,
          READY,
          OPENAPI,
          SHEET_SCHEMA,
          REPORT_SCHEMA);

  private LookUpEndpoints() {}

  /**
   * Whether the server is up, or ready.
   *
   * @param status "up" or "ready"
   */
  public record Health(String status) {}

  // Lists by the kind of their entries, and single things of the program.
  private static Endpoint list(
      String path,
      String id,
      Topic topic,
      String summary,
      String detail,
      Class<?> type,
      String shown) {
    Shape shape = topic == Topic.PROGRAM ? Shape.one(type) : Shape.many(type);
    return new Endpoint(
        "GET",
        path,
        id,
        topic,
        summary,
        detail,
        List.of(),
        List.of(),
        List.of(shape),
        List.of(),
        Example.get(path, shown));
  }

  private static Endpoint one(
      String path,
      String id,
      Topic topic,
      String summary,
      String detail,
      Parameter parameter,
      Class<?> type,
      String address,
      String shown) {
    return new Endpoint(
        "GET",
        path,
        id,
        topic,
        summary,
        detail,
        List.of(parameter),
        List.of(),
        List.of(Shape.one(type)),
        List.of(ProblemKind.NOT_FOUND),
        Example.get(address, shown));
  }
}
