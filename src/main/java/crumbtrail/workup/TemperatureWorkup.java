package crumbtrail.workup;

import crumbtrail.dough.DoughTemperature;
import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.workup.Reading.Known;
import java.util.Locale;
import java.util.Optional;

/** Temperatures at mixing: the room, the liquid, the dough. */
final class TemperatureWorkup {
  /** A kitchen of which nothing is said, °C (common practice). */
  static final double KITCHEN = 21;

  // Warming by friction (Cook's Illustrated how-to 5818): by hand 5 °F, stand mixer 20 °F, food
  // processor 25 °F.
  private static final double BY_HAND = 3;
  private static final double BY_MIXER = 11;
  private static final double BY_PROCESSOR = 14;

  // One part of liquid, two parts of flour where the formula gives no weights (common practice).
  private static final double USUAL_LIQUID = 60;

  private TemperatureWorkup() {}

  static void work(BakeProcess process, ReadingList readings) {
    readings.measured("room", process.room());
    readings.measured("liquid temperature", process.temperatures().liquid());
    readings.measured("altitude", process.altitude());
    if (process.mixing().doughTemperature().isPresent()) {
      readings.measured("dough temperature", process.mixing().doughTemperature());
    } else {
      fromParts(process, readings);
    }
  }

  private static void fromParts(BakeProcess process, ReadingList readings) {
    Optional<Quantity> room = process.room();
    Optional<Quantity> liquid = process.temperatures().liquid();
    Optional<Quantity> flour = process.temperatures().flour();
    if (room.isEmpty() && liquid.isEmpty() && flour.isEmpty()) {
      return;
    }
    double place = room.map(Quantity::value).orElse(KITCHEN);
    double wet = readings.get("hydration").map(Reading::value).orElse(USUAL_LIQUID);
    double celsius =
        DoughTemperature.mixed(
            100,
            flour.map(Quantity::value).orElse(place),
            Math.max(wet, 20),
            liquid.map(Quantity::value).orElse(place),
            friction(process.mixing()));
    boolean told = liquid.isPresent() && (room.isPresent() || flour.isPresent());
    double spread = (told ? 2.5 : 4) + liquid.map(Quantity::spread).orElse(0.0) / 2;
    readings.put(
        "dough temperature",
        celsius,
        celsius - spread,
        celsius + spread,
        told ? Known.WORKED_OUT : Known.ASSUMED);
  }

  private static double friction(BakeProcess.Mixing mixing) {
    String method = mixing.method().orElse("").toLowerCase(Locale.ROOT);
    if (method.contains("processor")) {
      return BY_PROCESSOR;
    }
    if (method.contains("mixer")) {
      return BY_MIXER;
    }
    return method.contains("no-knead") || method.contains("no knead") ? 0 : BY_HAND;
  }
}
