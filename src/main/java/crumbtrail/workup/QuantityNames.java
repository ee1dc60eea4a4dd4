package crumbtrail.workup;

import crumbtrail.quantity.Dimension;
import java.util.LinkedHashMap;
import java.util.Map;

/** What the quantities of a sheet are called in a sentence. */
final class QuantityNames {
  private static final Map<String, String> NAMES = new LinkedHashMap<>();

  static {
    NAMES.put("process.room", "kitchen");
    NAMES.put("process.temperatures.flour", "temperature of the flour");
    NAMES.put("process.temperatures.liquid", "temperature of the liquid");
    NAMES.put("process.temperatures.preferment", "temperature of the preferment");
    NAMES.put("process.mixing.time", "kneading");
    NAMES.put("process.mixing.rest", "rest before kneading");
    NAMES.put("process.mixing.doughTemperature", "temperature of the dough");
    NAMES.put("process.bulk.time", "first rise");
    NAMES.put("process.bulk.temperature", "temperature of the first rise");
    NAMES.put("process.bulk.humidity", "humidity of the first rise");
    NAMES.put("process.shaping.pieceWeight", "weight of the piece");
    NAMES.put("process.shaping.benchRest", "rest on the bench");
    NAMES.put("process.proof.time", "final proof");
    NAMES.put("process.proof.temperature", "temperature of the final proof");
    NAMES.put("process.proof.humidity", "humidity of the final proof");
    NAMES.put("process.baking.stages.time", "bake");
    NAMES.put("process.baking.stages.oven", "heat of the oven");
    NAMES.put("process.baking.coreTemperature", "core of the loaf");
    NAMES.put("process.cooling.time", "cooling");
    NAMES.put("process.storage.time", "keeping");
    NAMES.put("process.altitude", "height of the kitchen above the sea");
    NAMES.put("preferments.stages.time", "rise of the preferment");
    NAMES.put("preferments.stages.temperature", "temperature of the preferment's rise");
    NAMES.put("preferments.stages.humidity", "humidity of the preferment's rise");
  }

  private QuantityNames() {}

  /**
   * @param where the place on the sheet: {@code process.bulk[0].time}
   */
  static String of(String where) {
    String plain = where.replaceAll("\\[\\d+]", "");
    return NAMES.getOrDefault(plain, plain.substring(plain.lastIndexOf('.') + 1));
  }

  /** The unit in which readings and reports write a dimension. */
  static String unit(Dimension dimension) {
    return switch (dimension) {
      case TEMPERATURE -> "C";
      case TIME -> "min";
      case MASS -> "g";
      case VOLUME -> "ml";
      case LENGTH -> "m";
      case PERCENT -> "%";
      case COUNT -> "";
    };
  }
}
