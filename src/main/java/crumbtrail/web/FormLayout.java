package crumbtrail.web;

import static crumbtrail.web.FormField.line;
import static crumbtrail.web.FormField.lines;
import static crumbtrail.web.FormField.number;
import static crumbtrail.web.FormField.text;
import static crumbtrail.web.FormField.yesNo;

import java.util.List;
import java.util.stream.Stream;

/** The fields of the form, in the order of a baker's day. */
final class FormLayout {

  /**
   * A stage of the day with its fields.
   *
   * @param rows fields that belong on one line
   */
  record Stage(String id, List<List<FormField>> rows) {}

  /** Where signs go on the sheet, those typed and those picked. */
  static final String SEEN_KEY = "seen";

  static final String NOT_SEEN_KEY = "notSeen";

  static final FormField TITLE = line("title", "title");
  static final FormField STYLE = line("style", "style");
  static final FormField SEEN = lines("seen", SEEN_KEY);
  static final FormField NOT_SEEN = lines("not-seen", NOT_SEEN_KEY);
  static final FormField RECIPE = text("recipe", "recipe");
  static final FormField REMARKS = lines("remarks", "process/remarks");

  static final FormField AHEAD_NAME = line("ahead-name", "preferments/0/name");
  static final FormField AHEAD = lines("ahead-formula", "preferments/0/formula");

  /** What a recipe can be laid out from. */
  static final List<FormField> FORMULA = List.of(RECIPE, AHEAD_NAME, AHEAD);

  static final List<Stage> STAGES =
      List.of(
          new Stage(
              "ahead",
              List.of(
                  List.of(
                      AHEAD_NAME,
                      line("ahead-time", "preferments/0/stages/0/time"),
                      line("ahead-temperature", "preferments/0/stages/0/temperature")),
                  List.of(AHEAD))),
          new Stage(
              "mixing",
              List.of(
                  List.of(
                      line("method", "process/mixing/method"),
                      line("mix-time", "process/mixing/time"),
                      line("speed", "process/mixing/speed")),
                  List.of(
                      line("liquid", "process/temperatures/liquid"),
                      line("flour", "process/temperatures/flour"),
                      line("preferment-at", "process/temperatures/preferment")),
                  List.of(
                      line("rest", "process/mixing/rest"),
                      line("fat", "process/mixing/fat"),
                      line("dough-at", "process/mixing/doughTemperature"),
                      line("room", "process/room")))),
          new Stage("bulk", List.of(rise("bulk", 0), rise("bulk", 1))),
          new Stage(
              "shaping",
              List.of(
                  List.of(
                      number("pieces", "process/shaping/pieces"),
                      line("piece-weight", "process/shaping/pieceWeight"),
                      line("bench-rest", "process/shaping/benchRest")),
                  List.of(
                      line("tension", "process/shaping/tension"),
                      line("dusting", "process/shaping/dustingFlour")),
                  List.of(
                      line("vessel", "process/vessel/kind"),
                      line("vessel-size", "process/vessel/size"),
                      yesNo("lid", "process/vessel/lid")))),
          new Stage("proof", List.of(proof(0), proof(1))),
          new Stage(
              "baking",
              List.of(
                  List.of(
                      line("bake-0-time", "process/baking/stages/0/time"),
                      line("bake-0-oven", "process/baking/stages/0/oven"),
                      line("bake-1-time", "process/baking/stages/1/time"),
                      line("bake-1-oven", "process/baking/stages/1/oven")),
                  List.of(
                      yesNo("preheated", "process/baking/preheated"),
                      yesNo("fan", "process/baking/fan"),
                      yesNo("scored", "process/baking/scored"),
                      line("steam", "process/baking/steam")),
                  List.of(
                      line("core", "process/baking/coreTemperature"),
                      line("altitude", "process/altitude")))),
          new Stage(
              "after",
              List.of(
                  List.of(
                      line("cooling", "process/cooling/time"),
                      yesNo("wrapped", "process/cooling/wrapped")),
                  List.of(
                      line("kept", "process/storage/place"),
                      line("kept-time", "process/storage/time")))));

  /** Every field of the form. */
  static final List<FormField> ALL =
      Stream.concat(
              Stream.of(TITLE, STYLE, SEEN, NOT_SEEN, RECIPE, REMARKS),
              STAGES.stream().flatMap(s -> s.rows().stream()).flatMap(List::stream))
          .toList();

  private FormLayout() {}

  private static List<FormField> rise(String kind, int row) {
    String name = kind + "-" + row;
    String path = "process/" + kind + "/" + row;
    return List.of(
        line(name + "-time", path + "/time"),
        line(name + "-temperature", path + "/temperature"),
        number(name + "-folds", path + "/folds"),
        yesNo(name + "-covered", path + "/covered"));
  }

  private static List<FormField> proof(int row) {
    String name = "proof-" + row;
    String path = "process/proof/" + row;
    return List.of(
        line(name + "-time", path + "/time"),
        line(name + "-temperature", path + "/temperature"),
        line(name + "-humidity", path + "/humidity"),
        yesNo(name + "-covered", path + "/covered"));
  }
}
