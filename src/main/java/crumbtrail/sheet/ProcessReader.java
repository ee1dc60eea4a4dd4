package crumbtrail.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import crumbtrail.quantity.Dimension;
import crumbtrail.sheet.BakeProcess.Baking;
import crumbtrail.sheet.BakeProcess.Cooling;
import crumbtrail.sheet.BakeProcess.Mixing;
import crumbtrail.sheet.BakeProcess.OvenStage;
import crumbtrail.sheet.BakeProcess.Shaping;
import crumbtrail.sheet.BakeProcess.Storage;
import crumbtrail.sheet.BakeProcess.Temperatures;
import crumbtrail.sheet.BakeProcess.Vessel;
import crumbtrail.sheet.BakeProcess.VesselSize;
import java.util.List;
import java.util.Optional;

/** Reads what was done, from mixing to storage. */
final class ProcessReader {

  static final List<String> PROCESS =
      List.of(
          "room",
          "temperatures",
          "mixing",
          "bulk",
          "shaping",
          "vessel",
          "proof",
          "baking",
          "cooling",
          "storage",
          "altitude",
          "remarks");
  static final List<String> TEMPERATURES = List.of("flour", "liquid", "preferment");
  static final List<String> MIXING =
      List.of("method", "time", "speed", "rest", "fat", "doughTemperature");
  static final List<String> STAGE = List.of("time", "temperature", "folds", "covered", "humidity");
  static final List<String> SHAPING =
      List.of("pieces", "pieceWeight", "benchRest", "tension", "dustingFlour");
  static final List<String> VESSEL = List.of("kind", "size", "lid");
  static final List<String> BAKING =
      List.of("stages", "preheated", "steam", "fan", "scored", "coreTemperature");
  static final List<String> OVEN_STAGE = List.of("time", "oven");
  static final List<String> COOLING = List.of("time", "wrapped");
  static final List<String> STORAGE = List.of("place", "time");

  private ProcessReader() {}

  static BakeProcess read(Part sheet) {
    Part process = sheet.object("process", PROCESS);
    Problems problems = process.problems();
    return new BakeProcess(
        process.quantity("room", Dimension.TEMPERATURE, "a kitchen", -30, 60, "C"),
        temperatures(process.object("temperatures", TEMPERATURES)),
        mixing(process.object("mixing", MIXING, PartInWords::mixing)),
        process.list("bulk", (place, node) -> stage(place, node, problems)),
        shaping(process.object("shaping", SHAPING)),
        vessel(process.object("vessel", VESSEL, PartInWords::vessel)),
        process.list("proof", (place, node) -> stage(place, node, problems)),
        baking(process.object("baking", BAKING, PartInWords::baking)),
        cooling(process.object("cooling", COOLING, PartInWords::cooling)),
        storage(process.object("storage", STORAGE, PartInWords::storage)),
        process.quantity("altitude", Dimension.LENGTH),
        process.texts("remarks"),
        List.of(),
        List.of());
  }

  static Optional<Stage> stage(String where, JsonNode node, Problems problems) {
    if (node.isTextual()) {
      return inWords(where, node.textValue(), problems).map(StageText::stage);
    }
    if (!node.isObject()) {
      problems.add(
          where,
          Nodes.described(node) + " stands where a stage should",
          "write an object such as {\"time\": \"60 min\", \"temperature\": \"24 C\"}");
      return Optional.empty();
    }
    Part part = Part.of(where, node, problems, STAGE);
    return Optional.of(
        new Stage(
            part.quantity("time", Dimension.TIME),
            part.quantity("temperature", Dimension.TEMPERATURE),
            part.count("folds", 0, 50),
            part.yesOrNo("covered"),
            part.quantity("humidity", Dimension.PERCENT, "air", 0, 100, "%")));
  }

  /** A stage typed as words, "60 min at 24 C"; other words in it make it a remark too. */
  private static Optional<StageText> inWords(String where, String text, Problems problems) {
    StageText words = StageText.of(text);
    if (words.isEmpty()) {
      problems.add(
          where,
          Problems.quoted(text) + " names neither a time nor a temperature",
          "write for example 60 min at 24 C");
      return Optional.empty();
    }
    if (words.saysMore(text)) {
      problems.setAside(text.strip());
    }
    return Optional.of(words);
  }

  private static Temperatures temperatures(Part part) {
    return new Temperatures(
        part.quantity("flour", Dimension.TEMPERATURE),
        part.quantity("liquid", Dimension.TEMPERATURE),
        part.quantity("preferment", Dimension.TEMPERATURE));
  }

  private static Mixing mixing(Part part) {
    return new Mixing(
        part.text("method"),
        part.quantity("time", Dimension.TIME),
        part.text("speed"),
        part.quantity("rest", Dimension.TIME),
        part.text("fat"),
        part.quantity("doughTemperature", Dimension.TEMPERATURE, "a dough", -10, 80, "C"));
  }

  private static Shaping shaping(Part part) {
    return new Shaping(
        part.count("pieces", 1, 10_000),
        part.quantity("pieceWeight", Dimension.MASS),
        part.quantity("benchRest", Dimension.TIME),
        part.text("tension"),
        part.text("dustingFlour"));
  }

  private static Vessel vessel(Part part) {
    Optional<String> written = part.text("size");
    Optional<VesselSize> size = written.flatMap(VesselSizes::read);
    if (written.isPresent() && size.isEmpty()) {
      part.problems()
          .add(
              part.path("size"),
              Problems.quoted(written.get()) + " cannot be read as the size of a tin or pot",
              "write lengths with their unit, such as 9 x 5 x 2.75 in or 23 cm, or a volume such as"
                  + " 2 l");
    }
    return new Vessel(part.text("kind"), size, part.yesOrNo("lid"));
  }

  private static Baking baking(Part part) {
    return new Baking(
        part.list("stages", (place, node) -> ovenStage(place, node, part.problems())),
        part.yesOrNo("preheated"),
        part.text("steam"),
        part.yesOrNo("fan"),
        part.yesOrNo("scored"),
        part.quantity(
            "coreTemperature", Dimension.TEMPERATURE, "the middle of a loaf", 0, 130, "C"));
  }

  private static Optional<OvenStage> ovenStage(String where, JsonNode node, Problems problems) {
    if (node.isTextual()) {
      return inWords(where, node.textValue(), problems)
          .map(words -> new OvenStage(words.time(), words.temperature()));
    }
    if (!node.isObject()) {
      problems.add(
          where,
          Nodes.described(node) + " stands where a stage of the bake should",
          "write an object such as {\"time\": \"35 min\", \"oven\": \"220 C\"}");
      return Optional.empty();
    }
    Part part = Part.of(where, node, problems, OVEN_STAGE);
    return Optional.of(
        new OvenStage(
            part.quantity("time", Dimension.TIME), part.quantity("oven", Dimension.TEMPERATURE)));
  }

  private static Cooling cooling(Part part) {
    return new Cooling(part.quantity("time", Dimension.TIME), part.yesOrNo("wrapped"));
  }

  private static Storage storage(Part part) {
    return new Storage(part.text("place"), part.quantity("time", Dimension.TIME));
  }
}
