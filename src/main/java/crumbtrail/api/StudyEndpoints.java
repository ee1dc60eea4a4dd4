package crumbtrail.api;

import crumbtrail.api.Endpoint.Example;
import crumbtrail.api.Endpoint.Parameter;
import crumbtrail.study.ComparedBakes;
import crumbtrail.study.Kitchen;
import crumbtrail.study.OwnRecord;
import crumbtrail.study.Trends;
import java.util.List;

/** Addresses that study the bake log. */
public final class StudyEndpoints {
  private static final Parameter ID = Parameter.path("id", "number of the bake", "1");
  private static final Parameter OF =
      Parameter.query("of", "number of a class, or all, for those who may", "");

  /** What changed since a recipe last worked. */
  public static final Endpoint SINCE =
      endpoint(
          "/api/log/bakes/{id}/since",
          "log-since",
          "What changed since it last worked",
          "Holds a bake against the last good one of its recipe before it.",
          List.of(ID),
          ComparedBakes.class,
          List.of(ProblemKind.NOT_FOUND, ProblemKind.BAKE_SHEET),
          Example.get(
              "/api/log/bakes/1/since", "{\"bake\": {\"id\": 1, \"recipe\": \"Tin loaf\"}}"));

  /** Two bakes side by side. */
  public static final Endpoint COMPARE =
      endpoint(
          "/api/log/bakes/{id}/compare",
          "log-compare",
          "A bake against another one",
          "What was done otherwise, and what of it can explain the outcome.",
          List.of(ID, Parameter.query("better", "number of the bake that it is held against", "2")),
          ComparedBakes.class,
          List.of(ProblemKind.BAD_REQUEST, ProblemKind.NOT_FOUND, ProblemKind.BAKE_SHEET),
          Example.get(
              "/api/log/bakes/1/compare?better=2",
              "{\"better\": {\"id\": 2}, \"bake\": {\"id\": 1}, \"differences\": []}"));

  /** Trends. */
  public static final Endpoint TRENDS =
      endpoint(
          "/api/log/trends",
          "log-trends",
          "Trends of the log",
          "Charts of readings, causes by frequency, and what is most worth learning next, from the"
              + " latest bakes.",
          List.of(
              Parameter.query("recipe", "name of the recipe, in any case", "Tin loaf"),
              Parameter.query(
                  "most", "how many of the latest bakes, 1 to 999; 200 unless told", "50"),
              OF),
          Trends.class,
          List.of(ProblemKind.BAD_REQUEST),
          Example.get("/api/log/trends?recipe=Tin+loaf&most=50", "{\"recipe\": \"Tin loaf\"}"));

  /** What was learnt. */
  public static final Endpoint LEARNT =
      endpoint(
          "/api/log/learnt",
          "log-learnt",
          "What the log has taught",
          "How often each cause was foretold and confirmed in one's own kitchen, and by how much its"
              + " odds move there.",
          List.of(),
          Kitchen.class,
          List.of(),
          Example.get("/api/log/learnt", "{\"judged\": 1}"));

  /** How well causes were foretold. */
  public static final Endpoint CALIBRATION =
      endpoint(
          "/api/log/calibration",
          "log-calibration",
          "How well causes were foretold",
          "What the rankings said against what was confirmed.",
          List.of(OF),
          OwnRecord.class,
          List.of(ProblemKind.BAD_REQUEST),
          Example.get("/api/log/calibration", "{\"bakes\": 1, \"first\": 1}"));

  /** All of them. */
  public static final List<Endpoint> ALL = List.of(SINCE, COMPARE, TRENDS, LEARNT, CALIBRATION);

  private StudyEndpoints() {}

  private static Endpoint endpoint(
      String path,
      String id,
      String summary,
      String detail,
      List<Parameter> parameters,
      Class<?> answers,
      List<ProblemKind> refusals,
      Example example) {
    return LogEndpoints.endpoint(
        "GET", path, id, summary, detail, parameters, null, answers, refusals, example);
  }
}
