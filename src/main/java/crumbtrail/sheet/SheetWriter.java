package crumbtrail.sheet;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeProcess.Baking;
import crumbtrail.sheet.BakeProcess.Mixing;
import crumbtrail.sheet.BakeProcess.Shaping;
import crumbtrail.sheet.BakeProcess.VesselSize;
import crumbtrail.sheet.BakeSheet.SeenSign;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Writes a bake sheet in the JSON form that {@link SheetReader} takes, each quantity in the words
 * in which it was written. Parts that the baker did not mention are left out.
 */
public final class SheetWriter {

  /** What follows is no ingredient and no remark. */
  private static final String STEPS = "Method:\n";

  private SheetWriter() {}

  /** The sheet as JSON text with line breaks. */
  public static String write(BakeSheet sheet) {
    return node(sheet).toPrettyString();
  }

  /** The sheet as a JSON tree. */
  public static ObjectNode node(BakeSheet sheet) {
    ObjectNode out = object();
    word(out, "title", Optional.of(sheet.title()));
    word(out, "style", Optional.of(sheet.style()));
    put(out, "formula", formula(sheet.formula()));
    ArrayNode preferments = out.arrayNode();
    for (BakeSheet.Preferment preferment : sheet.preferments()) {
      ObjectNode one = object();
      word(one, "name", Optional.of(preferment.name()));
      put(one, "formula", formula(preferment.formula()));
      put(one, "stages", stages(preferment.stages()));
      preferments.add(one);
    }
    put(out, "preferments", preferments);
    put(out, "process", process(sheet.process()));
    if (!sheet.process().steps().isEmpty()) {
      out.put("recipe", STEPS + String.join("\n", sheet.process().steps()));
    }
    ArrayNode seen = out.arrayNode();
    sheet.seen().forEach(sign -> seen(seen, sign));
    put(out, "seen", seen);
    put(out, "notSeen", words(sheet.notSeen()));
    put(out, "knownCauses", words(sheet.knownCauses()));
    return out;
  }

  private static void seen(ArrayNode seen, SeenSign sign) {
    if (sign.degree().isEmpty()) {
      seen.add(sign.words());
    } else {
      ObjectNode one = object();
      one.put("sign", sign.words());
      one.put("degree", sign.degree().get().name().toLowerCase(Locale.ROOT));
      seen.add(one);
    }
  }

  private static ArrayNode formula(List<FormulaLine> lines) {
    return words(lines.stream().map(FormulaLine::written).toList());
  }

  private static ObjectNode process(BakeProcess process) {
    ObjectNode out = object();
    quantity(out, "room", process.room());
    ObjectNode temperatures = object();
    quantity(temperatures, "flour", process.temperatures().flour());
    quantity(temperatures, "liquid", process.temperatures().liquid());
    quantity(temperatures, "preferment", process.temperatures().preferment());
    put(out, "temperatures", temperatures);
    put(out, "mixing", mixing(process.mixing()));
    put(out, "bulk", stages(process.bulk()));
    put(out, "shaping", shaping(process.shaping()));
    ObjectNode vessel = object();
    word(vessel, "kind", process.vessel().kind());
    word(vessel, "size", process.vessel().size().map(VesselSize::written));
    flag(vessel, "lid", process.vessel().lid());
    put(out, "vessel", vessel);
    put(out, "proof", stages(process.proof()));
    put(out, "baking", baking(process.baking()));
    ObjectNode cooling = object();
    quantity(cooling, "time", process.cooling().time());
    flag(cooling, "wrapped", process.cooling().wrapped());
    put(out, "cooling", cooling);
    ObjectNode storage = object();
    word(storage, "place", process.storage().place());
    quantity(storage, "time", process.storage().time());
    put(out, "storage", storage);
    quantity(out, "altitude", process.altitude());
    put(out, "remarks", words(process.remarks()));
    return out;
  }

  private static ObjectNode mixing(Mixing mixing) {
    ObjectNode out = object();
    word(out, "method", mixing.method());
    quantity(out, "time", mixing.time());
    word(out, "speed", mixing.speed());
    quantity(out, "rest", mixing.rest());
    word(out, "fat", mixing.fat());
    quantity(out, "doughTemperature", mixing.doughTemperature());
    return out;
  }

  private static ObjectNode shaping(Shaping shaping) {
    ObjectNode out = object();
    shaping.pieces().ifPresent(pieces -> out.put("pieces", pieces));
    quantity(out, "pieceWeight", shaping.pieceWeight());
    quantity(out, "benchRest", shaping.benchRest());
    word(out, "tension", shaping.tension());
    word(out, "dustingFlour", shaping.dustingFlour());
    return out;
  }

  private static ObjectNode baking(Baking baking) {
    ObjectNode out = object();
    ArrayNode stages = out.arrayNode();
    for (BakeProcess.OvenStage stage : baking.stages()) {
      ObjectNode one = object();
      quantity(one, "time", stage.time());
      quantity(one, "oven", stage.oven());
      stages.add(one);
    }
    put(out, "stages", stages);
    flag(out, "preheated", baking.preheated());
    word(out, "steam", baking.steam());
    flag(out, "fan", baking.fan());
    flag(out, "scored", baking.scored());
    quantity(out, "coreTemperature", baking.coreTemperature());
    return out;
  }

  private static ArrayNode stages(List<Stage> stages) {
    ArrayNode out = JsonNodeFactory.instance.arrayNode();
    for (Stage stage : stages) {
      ObjectNode one = object();
      quantity(one, "time", stage.time());
      quantity(one, "temperature", stage.temperature());
      stage.folds().ifPresent(folds -> one.put("folds", folds));
      flag(one, "covered", stage.covered());
      quantity(one, "humidity", stage.humidity());
      out.add(one);
    }
    return out;
  }

  private static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }

  private static ArrayNode words(List<String> words) {
    ArrayNode out = JsonNodeFactory.instance.arrayNode();
    words.forEach(out::add);
    return out;
  }

  private static void put(ObjectNode out, String key, ObjectNode part) {
    if (!part.isEmpty()) {
      out.set(key, part);
    }
  }

  private static void put(ObjectNode out, String key, ArrayNode part) {
    if (!part.isEmpty()) {
      out.set(key, part);
    }
  }

  private static void word(ObjectNode out, String key, Optional<String> word) {
    word.filter(w -> !w.isBlank()).ifPresent(w -> out.put(key, w));
  }

  private static void flag(ObjectNode out, String key, Optional<Boolean> flag) {
    flag.ifPresent(f -> out.put(key, f));
  }

  private static void quantity(ObjectNode out, String key, Optional<Quantity> quantity) {
    quantity.ifPresent(q -> out.put(key, q.written()));
  }
}
