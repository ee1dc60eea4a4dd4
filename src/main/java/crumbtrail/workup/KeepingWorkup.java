package crumbtrail.workup;

import crumbtrail.keeping.Spoilage;
import crumbtrail.keeping.Spoilage.Damp;
import crumbtrail.keeping.Staling;
import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.workup.Reading.Known;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/** Where the bread was kept and for how long: staling, and conditions for mould and rope. */
final class KeepingWorkup {
  private static final double FRIDGE = 4;
  private static final double FREEZER = -18;
  private static final double ROOM = 21;

  /** The least that bakers call warm, °C. Our choice. */
  private static final double WARM = 26;

  // Crumb of sourdough and of yeast bread where nothing better is known (common practice).
  private static final double SOURDOUGH = 4.1;
  private static final double YEAST_BREAD = 5.4;

  private final BakeProcess process;
  private final ReadingList readings;
  private final Set<String> heard;

  private KeepingWorkup(BakeProcess process, ReadingList readings, Set<String> heard) {
    this.process = process;
    this.readings = readings;
    this.heard = heard;
  }

  /**
   * @param heard keys of the circumstances that the baker tells
   */
  static void work(BakeProcess process, ReadingList readings, Set<String> heard) {
    new KeepingWorkup(process, readings, heard).work();
  }

  private void work() {
    Optional<Quantity> told = process.storage().time();
    if (told.isEmpty()) {
      return;
    }
    boolean placeKnown = process.storage().place().isPresent() || heard("stored-");
    Known known = placeKnown ? Known.WORKED_OUT : Known.ASSUMED;
    double celsius = celsius();
    double day = 24 * 60;
    Quantity time = told.get();
    Staling.Rate rate = Staling.rate(celsius);
    readings.put(
        "staleness",
        time.value() / day * rate.value(),
        time.low() / day * rate.low(),
        time.high() / day * rate.high(),
        known);
    double pH =
        readings
            .get("acidity")
            .map(Reading::value)
            .orElse(readings.style().tags().contains("sourdough") ? SOURDOUGH : YEAST_BREAD);
    Damp damp = damp();
    hazard("mould hazard", time, days -> Spoilage.mould(days, celsius, damp, pH), known);
    hazard("rope hazard", time, days -> Spoilage.rope(days, celsius, pH), known);
  }

  private void hazard(String name, Quantity time, DoubleUnaryOperator of, Known known) {
    double day = 24 * 60;
    readings.put(
        name,
        100 * of.applyAsDouble(time.value() / day),
        100 * of.applyAsDouble(time.low() / day),
        100 * of.applyAsDouble(time.high() / day),
        known);
  }

  private double celsius() {
    double room = process.room().map(Quantity::value).orElse(ROOM);
    if (heard.contains("stored-freezer")) {
      return FREEZER;
    }
    if (heard.contains("stored-fridge")) {
      return FRIDGE;
    }
    return heard.contains("stored-warm-damp") ? Math.max(WARM, room) : room;
  }

  private Damp damp() {
    if (heard.contains("wrapped-warm") || process.cooling().wrapped().orElse(false)) {
      return Damp.SWEATED;
    }
    if (heard.contains("stored-warm-damp")) {
      return Damp.CLOSED;
    }
    return heard.contains("stored-open") ? Damp.OPEN : Damp.ORDINARY;
  }

  private boolean heard(String start) {
    return heard.stream().anyMatch(key -> key.startsWith(start));
  }
}
