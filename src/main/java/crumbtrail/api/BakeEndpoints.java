package crumbtrail.api;

import crumbtrail.api.Endpoint.Body;
import crumbtrail.api.Endpoint.Example;
import crumbtrail.api.Endpoint.Parameter;
import crumbtrail.api.Endpoint.Shape;
import crumbtrail.api.Endpoint.Topic;
import crumbtrail.lessons.Board;
import crumbtrail.lessons.Variation;
import crumbtrail.report.RecipeLayout;
import crumbtrail.report.Report;
import crumbtrail.sheet.BakeSheet;
import java.util.List;

/** Addresses that take a bake sheet. */
public final class BakeEndpoints {
  private static final String JSON = "application/json";
  private static final List<Body> SHEET = List.of(new Body(JSON, Shape.one(BakeSheet.class)));
  private static final List<ProblemKind> REFUSALS =
      List.of(
          ProblemKind.BAD_REQUEST,
          ProblemKind.BAKE_SHEET,
          ProblemKind.CONTENT_TOO_LARGE,
          ProblemKind.UNSUPPORTED_TYPE,
          ProblemKind.TOO_OFTEN);

  /** Why a bake failed. */
  public static final Endpoint TRACE =
      sheet(
          "/api/trace",
          "trace",
          "Why a bake failed",
          "The report on one bake: causes with what speaks for and against them, what to change,"
              + " what is most worth finding out next.",
          List.of(
              Parameter.query(
                  "only",
                  "the causes alone, with what speaks for and against them: much sooner answered",
                  "causes")),
          Report.class,
          Example.post(
              "/api/trace",
              """
              {"formula": ["500 g bread flour", "310 g water", "5 g instant yeast"],
               "seen": ["tastes of nothing", "dough was slack and sticky"]}
              """,
              """
              {"causes": [{"key": "salt-omitted", "stage": "formula"}],
               "formula": {"flourGrams": 500, "hydration": {"liquid": 62}}}
              """));

  /** What may go wrong with a bake that is still to come. */
  public static final Endpoint PRECHECK =
      sheet(
          "/api/precheck",
          "precheck",
          "What may go wrong",
          "The report on a bake that is still to come: its causes are risks, and foresight says what"
              + " is missing and what would be seen.",
          List.of(),
          Report.class,
          Example.post(
              "/api/precheck",
              """
              {"formula": ["500 g bread flour", "310 g water", "5 g instant yeast"]}
              """,
              """
              {"causes": [{"key": "salt-omitted"}], "foresight": {"missing": [{"key": "no-temperature"}]}}
              """));

  /** The next bake. */
  public static final Endpoint NEXT =
      sheet(
          "/api/next",
          "next",
          "The next bake",
          "The bake that should follow one that failed: the corrected formula, the day, what to look"
              + " for, and all of it as a bake sheet.",
          List.of(
              Parameter.query("start", "when mixing begins", "9:00"),
              Parameter.query(
                  "ready", "when it is out of the oven; counts where start is missing", "18:30"),
              Parameter.query("bulk", "first rise", "60 min"),
              Parameter.query("proof", "final proof", "60 min"),
              Parameter.query("overnight", "a night in the refrigerator", "12 h"),
              Parameter.query("dough", "weight of the dough", "900 g"),
              Parameter.query("loaves", "how many loaves, each as heavy as before", "2"),
              Parameter.query("tin", "a tin to fill", "23 x 13 x 7 cm"),
              Parameter.query("instead", "what is taken in place of what lacks", "milk = water"),
              Parameter.query("one", "anything here: one change only", "yes")),
          Report.NextBakeSheet.class,
          Example.post(
              "/api/next?start=9:00&dough=900+g",
              """
              {"formula": ["500 g bread flour", "310 g water", "5 g instant yeast"],
               "seen": ["tastes of nothing"]}
              """,
              """
              {"changes": [{"cause": "salt-omitted", "from": "0 % of the flour"}]}
              """));

  /** A recipe laid out. */
  public static final Endpoint LAYOUT =
      new Endpoint(
          "POST",
          "/api/layout",
          "layout",
          Topic.BAKES,
          "A recipe laid out",
          "Each line in grams and baker's percent, with hydration, salt and yeast, and what was not"
              + " understood. Takes a bake sheet, or a recipe as plain text. A line that cannot be"
              + " used is listed under problems and the rest is laid out.",
          List.of(),
          List.of(
              new Body(JSON, Shape.one(BakeSheet.class)),
              new Body("text/plain", Shape.one(String.class))),
          List.of(Shape.one(RecipeLayout.class)),
          REFUSALS,
          new Example(
              "/api/layout",
              "text/plain",
              "500 g bread flour\n310 g water\n10 g salt\n5 g instant yeast",
              """
              {"lines": [{"written": "500 g bread flour", "grams": 500, "percent": 100},
                         {"written": "310 g water", "grams": 310, "percent": 62}],
               "salt": 2, "yeast": 1}
              """
                  .strip()));

  /** A quantity turned. */
  public static final Endpoint VARY =
      new Endpoint(
          "POST",
          "/api/vary",
          "vary",
          Topic.BAKES,
          "A quantity turned",
          "Turns one quantity of a bake, or two, and tells what moves: how likely each cause is, what"
              + " is worked out, what would be seen, and where it tips. One quantity is answered with"
              + " a variation, two with a board. The signs on the sheet are put aside.",
          List.of(),
          List.of(new Body(JSON, Shape.one(VaryRequest.class))),
          List.of(Shape.one(Variation.class), Shape.one(Board.class)),
          REFUSALS,
          Example.post(
              "/api/vary",
              """
              {"bake": "healthy-tin-loaf", "turn": {"salt": "0..4%"}, "steps": 5}
              """,
              """
              {"dial": {"key": "salt", "unit": "%", "low": 0, "high": 4},
               "points": [{"at": 0}, {"at": 1}]}
              """));

  /** All of them. */
  public static final List<Endpoint> ALL = List.of(TRACE, PRECHECK, NEXT, LAYOUT, VARY);

  private BakeEndpoints() {}

  private static Endpoint sheet(
      String path,
      String id,
      String summary,
      String detail,
      List<Parameter> parameters,
      Class<?> answer,
      Example example) {
    return new Endpoint(
        "POST",
        path,
        id,
        Topic.BAKES,
        summary,
        detail,
        parameters,
        SHEET,
        List.of(Shape.one(answer)),
        REFUSALS,
        example);
  }
}
