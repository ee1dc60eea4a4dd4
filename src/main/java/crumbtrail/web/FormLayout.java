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
  record Stage(String id, String name, List<List<FormField>> rows) {}

  /** Where signs go on the sheet, those typed and those picked. */
  static final String SEEN_KEY = "seen";

  static final String NOT_SEEN_KEY = "notSeen";

  static final FormField TITLE =
      line("title", "title", "Name of the bake", "For your own notes: Tin loaf, Tuesday class");
  static final FormField STYLE =
      line("style", "style", "Kind of bread", "White tin loaf, baguette, country loaf …");
  static final FormField SEEN =
      lines(
          "seen",
          SEEN_KEY,
          "What you saw",
          "In your own words, one thing a line: dense near the base, pale crust, sour smell");
  static final FormField NOT_SEEN =
      lines(
          "not-seen",
          NOT_SEEN_KEY,
          "What you looked for and did not see",
          "One thing a line: big holes");
  static final FormField RECIPE =
      text(
              "recipe",
              "recipe",
              "Recipe",
              "Paste it as it stands, steps and all; or one ingredient a line: 500 g bread flour")
          .us("Paste it as it stands, steps and all; or one ingredient a line: 4 cups bread flour");
  static final FormField REMARKS =
      lines(
          "remarks",
          "process/remarks",
          "Anything else",
          "Swaps, slips, oddities, one a line: the yeast was opened a year ago");

  static final FormField AHEAD_NAME =
      line("ahead-name", "preferments/0/name", "What it is", "Poolish, starter, scald");
  static final FormField AHEAD =
      lines(
          "ahead-formula",
          "preferments/0/formula",
          "What went into it",
          "One ingredient a line, beside those of the recipe above");

  /** What a recipe can be laid out from. */
  static final List<FormField> FORMULA = List.of(RECIPE, AHEAD_NAME, AHEAD);

  static final List<Stage> STAGES =
      List.of(
          new Stage(
              "ahead",
              "Made ahead",
              List.of(
                  List.of(
                      AHEAD_NAME,
                      line("ahead-time", "preferments/0/stages/0/time", "Time", "12 h"),
                      line(
                              "ahead-temperature",
                              "preferments/0/stages/0/temperature",
                              "Temperature",
                              "20 C")
                          .us("68 F")),
                  List.of(AHEAD))),
          new Stage(
              "mixing",
              "Mixing",
              List.of(
                  List.of(
                      line("method", "process/mixing/method", "By", "Hand, stand mixer, machine"),
                      line("mix-time", "process/mixing/time", "Time", "8 min"),
                      line("speed", "process/mixing/speed", "Speed", "Medium")),
                  List.of(
                      line("liquid", "process/temperatures/liquid", "Liquid at", "38 C")
                          .us("100 F"),
                      line("flour", "process/temperatures/flour", "Flour at", "20 C").us("68 F"),
                      line(
                              "preferment-at",
                              "process/temperatures/preferment",
                              "What was made ahead, at",
                              "20 C")
                          .us("68 F")),
                  List.of(
                      line("rest", "process/mixing/rest", "Rest before kneading", "20 min"),
                      line("fat", "process/mixing/fat", "Fat went in", "At the start"),
                      line(
                              "dough-at",
                              "process/mixing/doughTemperature",
                              "Dough after mixing",
                              "26 C")
                          .us("78 F"),
                      line("room", "process/room", "Kitchen", "21 C").us("70 F")))),
          new Stage("bulk", "First rise", List.of(rise("bulk", 0), rise("bulk", 1))),
          new Stage(
              "shaping",
              "Shaping",
              List.of(
                  List.of(
                      number("pieces", "process/shaping/pieces", "Pieces", "2"),
                      line("piece-weight", "process/shaping/pieceWeight", "Each weighs", "450 g")
                          .us("16 oz"),
                      line(
                          "bench-rest",
                          "process/shaping/benchRest",
                          "Rest before shaping",
                          "15 min")),
                  List.of(
                      line("tension", "process/shaping/tension", "Shaped", "Loose, good, tight"),
                      line(
                          "dusting",
                          "process/shaping/dustingFlour",
                          "Flour on the bench",
                          "Light")),
                  List.of(
                      line(
                          "vessel",
                          "process/vessel/kind",
                          "Baked in or on",
                          "Tin, stone, pot, sheet"),
                      line(
                              "vessel-size",
                              "process/vessel/size",
                              "Its size",
                              "23 x 13 x 7 cm, or its volume")
                          .us("9 x 5 x 2.75 in, or its volume"),
                      yesNo("lid", "process/vessel/lid", "With a lid")))),
          new Stage("proof", "Last rise", List.of(proof(0), proof(1))),
          new Stage(
              "baking",
              "Baking",
              List.of(
                  List.of(
                      line("bake-0-time", "process/baking/stages/0/time", "First for", "15 min"),
                      line("bake-0-oven", "process/baking/stages/0/oven", "Oven at", "230 C")
                          .us("450 F"),
                      line("bake-1-time", "process/baking/stages/1/time", "Then for", "20 min"),
                      line("bake-1-oven", "process/baking/stages/1/oven", "Oven at", "200 C")
                          .us("400 F")),
                  List.of(
                      yesNo("preheated", "process/baking/preheated", "Oven hot before"),
                      yesNo("fan", "process/baking/fan", "Fan on"),
                      yesNo("scored", "process/baking/scored", "Cut before baking"),
                      line("steam", "process/baking/steam", "Steam", "None, some, plenty")),
                  List.of(
                      line("core", "process/baking/coreTemperature", "Middle of the loaf", "94 C")
                          .us("201 F"),
                      line("altitude", "process/altitude", "Height above the sea", "1600 m")
                          .us("5200 ft")))),
          new Stage(
              "after",
              "Cooling and keeping",
              List.of(
                  List.of(
                      line("cooling", "process/cooling/time", "Cooled before cutting", "2 h"),
                      yesNo("wrapped", "process/cooling/wrapped", "Wrapped while warm")),
                  List.of(
                      line("kept", "process/storage/place", "Kept in", "Bread bin, refrigerator"),
                      line("kept-time", "process/storage/time", "For", "2 d")))));

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
        line(name + "-time", path + "/time", row == 0 ? "First for" : "Then for", "60 min"),
        line(name + "-temperature", path + "/temperature", "At", row == 0 ? "24 C" : "4 C")
            .us(row == 0 ? "75 F" : "39 F"),
        number(name + "-folds", path + "/folds", "Folds", "2"),
        yesNo(name + "-covered", path + "/covered", "Covered"));
  }

  private static List<FormField> proof(int row) {
    String name = "proof-" + row;
    String path = "process/proof/" + row;
    return List.of(
        line(name + "-time", path + "/time", row == 0 ? "First for" : "Then for", "60 min"),
        line(name + "-temperature", path + "/temperature", "At", "28 C").us("82 F"),
        line(name + "-humidity", path + "/humidity", "Dampness of the air", "80 %"),
        yesNo(name + "-covered", path + "/covered", "Covered"));
  }
}
