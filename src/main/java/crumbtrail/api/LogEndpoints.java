package crumbtrail.api;

import crumbtrail.api.Endpoint.Body;
import crumbtrail.api.Endpoint.Example;
import crumbtrail.api.Endpoint.Parameter;
import crumbtrail.api.Endpoint.Shape;
import crumbtrail.api.Endpoint.Topic;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Addresses of the bake log. */
public final class LogEndpoints {
  private static final String JSON = "application/json";

  /** A picture of four by three pixels. */
  private static final String PICTURE =
      "iVBORw0KGgoAAAANSUhEUgAAAAQAAAADCAIAAAA7ljmRAAAAEElEQVR42mO4vSARjhhwcg"
          + "C5BhZRZwDHsgAAAABJRU5ErkJggg==";

  private static final Parameter ID = Parameter.path("id", "number of the bake", "1");
  private static final Parameter PHOTO_ID = Parameter.path("id", "number of the photo", "1");

  /** The list. */
  public static final Endpoint BAKES =
      endpoint(
          "GET",
          "/api/log/bakes",
          "log-bakes",
          "The bakes that are kept",
          "The latest first; what is asked for narrows it down. Each page tells where the next"
              + " begins.",
          List.of(
              Parameter.query("words", "all of them stand in label, recipe or notes", "tin loaf"),
              Parameter.query("recipe", "name of the recipe, in any case", "Tin loaf"),
              Parameter.query(
                  "cause", "a cause that was confirmed, or that came first", "over-proofed"),
              Parameter.query("since", "baked on that day or later", "2026-03-01"),
              Parameter.query("until", "baked on that day or earlier", "2026-03-31"),
              Parameter.query("most", "how many, 1 to 200; 50 unless told", "1"),
              Parameter.query("after", "where the page before ended, its next", ""),
              Parameter.query("of", "number of a class, or all, for those who may", "")),
          null,
          KeptLines.class,
          List.of(ProblemKind.BAD_REQUEST),
          Example.get(
              "/api/log/bakes?recipe=Tin+loaf&since=2026-03-01&most=1",
              "{\"bakes\": [{\"recipe\": \"Tin loaf\"}]}"));

  /** A bake is kept. */
  public static final Endpoint KEEP =
      endpoint(
          "POST",
          "/api/log/bakes",
          "log-keep",
          "Keep a bake",
          "Traces the sheet and puts it into the log. When the answer comes, it is on disk.",
          List.of(),
          KeepRequest.class,
          KeptBake.class,
          List.of(),
          Example.post(
              "/api/log/bakes",
              """
              {"sheet": {"title": "Tin loaf", "formula": ["500 g bread flour", "310 g water", "5 g instant yeast"],
                         "seen": ["tastes of nothing", "dough was slack and sticky"]},
               "baked": "2026-03-03", "note": "the new flour", "outcome": "failed"}
              """,
              """
              {"label": "Tin loaf", "baked": "2026-03-03T12:00", "outcome": "failed",
               "ranking": [{"key": "salt-omitted"}], "confirmed": []}
              """));

  /** One bake. */
  public static final Endpoint BAKE =
      endpoint(
          "GET",
          "/api/log/bakes/{id}",
          "log-bake",
          "A bake that is kept",
          "Everything that was kept of it, photos without their pixels.",
          List.of(ID),
          null,
          KeptBake.class,
          List.of(ProblemKind.NOT_FOUND),
          Example.get("/api/log/bakes/1", "{\"id\": 1, \"recipe\": \"Tin loaf\"}"));

  /** Something is noted. */
  public static final Endpoint NOTE =
      endpoint(
          "PATCH",
          "/api/log/bakes/{id}",
          "log-note",
          "Change a bake",
          "Changes name, recipe, day, notes, outcome and what was found out; what is missing stays,"
              + " and so does the sheet. With If-Match and"
              + " the ETag of the bake, nothing is changed that somebody else has changed since.",
          List.of(ID),
          NoteRequest.class,
          KeptBake.class,
          List.of(ProblemKind.NOT_FOUND, ProblemKind.CHANGED_SINCE),
          new Example(
              "/api/log/bakes/1",
              JSON,
              "{\"label\": \"Tin loaf, warm\", \"confirmed\": [\"over-proofed\"], \"note\": \"the kitchen was warm\"}",
              "{\"id\": 1, \"label\": \"Tin loaf, warm\", \"note\": \"the kitchen was warm\", \"confirmed\": [\"over-proofed\"]}"));

  /** A bake goes. */
  public static final Endpoint DELETE =
      endpoint(
          "DELETE",
          "/api/log/bakes/{id}",
          "log-delete",
          "Delete a bake",
          "For good, its photos too. Takes If-Match as a change does.",
          List.of(ID),
          null,
          Gone.class,
          List.of(ProblemKind.NOT_FOUND, ProblemKind.CHANGED_SINCE),
          Example.get("/api/log/bakes/3", "{\"gone\": \"bake 3\"}"));

  /** A photo comes. */
  public static final Endpoint ADD_PHOTO =
      endpoint(
          "POST",
          "/api/log/bakes/{id}/photos",
          "log-add-photo",
          "Add a photo to a bake",
          "The picture is made smaller and painted anew, so that place, time and camera are gone.",
          List.of(ID),
          PhotoRequest.class,
          KeptBake.class,
          List.of(ProblemKind.NOT_FOUND),
          Example.post(
              "/api/log/bakes/2/photos",
              "{\"picture\": \"" + PICTURE + "\"}",
              "{\"id\": 2, \"photos\": [{\"kind\": \"image/png\", \"width\": 4, \"height\": 3}]}"));

  /** A photo. */
  public static final Endpoint PHOTO =
      endpoint(
          "GET",
          "/api/log/photos/{id}",
          "log-photo",
          "A photo",
          "With its pixels.",
          List.of(PHOTO_ID),
          null,
          KeptPhoto.class,
          List.of(ProblemKind.NOT_FOUND),
          Example.get("/api/log/photos/1", "{\"id\": 1, \"kind\": \"image/png\"}"));

  /** A photo goes. */
  public static final Endpoint DELETE_PHOTO =
      endpoint(
          "DELETE",
          "/api/log/photos/{id}",
          "log-delete-photo",
          "Delete a photo",
          "For good.",
          List.of(PHOTO_ID),
          null,
          Gone.class,
          List.of(ProblemKind.NOT_FOUND),
          Example.get("/api/log/photos/2", "{\"gone\": \"photo 2\"}"));

  /** All of them. */
  public static final List<Endpoint> ALL =
      List.of(BAKES, KEEP, BAKE, NOTE, DELETE, ADD_PHOTO, PHOTO, DELETE_PHOTO);

  private LogEndpoints() {}

  /** An address of the log. */
  static Endpoint endpoint(
      String method,
      String path,
      String id,
      String summary,
      String detail,
      List<Parameter> parameters,
      @Nullable Class<?> takes,
      Class<?> answers,
      List<ProblemKind> refusals,
      Example example) {
    return endpoint(
        Topic.LOG,
        method,
        path,
        id,
        summary,
        detail,
        parameters,
        takes,
        answers,
        refusals,
        example);
  }

  /** An address of the log, on one of its topics. */
  static Endpoint endpoint(
      Topic topic,
      String method,
      String path,
      String id,
      String summary,
      String detail,
      List<Parameter> parameters,
      @Nullable Class<?> takes,
      Class<?> answers,
      List<ProblemKind> refusals,
      Example example) {
    List<ProblemKind> all = new ArrayList<>(refusals);
    all.add(ProblemKind.NOT_LOGGED_IN);
    all.add(ProblemKind.FOREIGN_PAGE);
    all.add(ProblemKind.UNAVAILABLE);
    if (!method.equals("GET")) {
      all.add(ProblemKind.TOO_OFTEN);
    }
    if (takes != null) {
      all.add(ProblemKind.BAD_REQUEST);
      all.add(ProblemKind.BAKE_SHEET);
      all.add(ProblemKind.CONTENT_TOO_LARGE);
      all.add(ProblemKind.UNSUPPORTED_TYPE);
    }
    return new Endpoint(
        method,
        path,
        id,
        topic,
        summary,
        detail,
        parameters,
        takes == null ? List.of() : List.of(new Body(JSON, Shape.one(takes))),
        List.of(Shape.one(answers)),
        all.stream().distinct().toList(),
        example);
  }

  /** An address of accounts and classes. */
  static Endpoint people(
      String method,
      String path,
      String id,
      String summary,
      String detail,
      List<Parameter> parameters,
      @Nullable Class<?> takes,
      Class<?> answers,
      Example example) {
    return endpoint(
        Topic.PEOPLE,
        method,
        path,
        id,
        summary,
        detail,
        parameters,
        takes,
        answers,
        List.of(ProblemKind.BAD_REQUEST, ProblemKind.NOT_FOUND),
        example);
  }
}
