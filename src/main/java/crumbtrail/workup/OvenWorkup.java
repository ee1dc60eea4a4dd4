package crumbtrail.workup;

import crumbtrail.knowledge.Style;
import crumbtrail.oven.BakeTime;
import crumbtrail.oven.Boiling;
import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.BakeProcess.OvenStage;
import crumbtrail.workup.Reading.Known;
import java.util.List;
import java.util.Optional;

/** Oven temperatures, bake time against what the loaf wants, core temperature. */
final class OvenWorkup {
  /** Above this the rule for bake times does not hold: pizza ovens, °C. */
  private static final double HOTTEST = 300;

  private static final double BELOW_BOILING = 2;
  private static final double USUAL_GRAMS = 900;

  private OvenWorkup() {}

  static void work(BakeProcess process, ReadingList readings) {
    BakeProcess.Baking baking = process.baking();
    List<OvenStage> stages = baking.stages();
    stages.stream()
        .flatMap(stage -> stage.oven().stream())
        .findFirst()
        .ifPresent(oven -> readings.measured("oven temperature", Optional.of(oven)));
    List<Quantity> times = stages.stream().flatMap(stage -> stage.time().stream()).toList();
    if (!times.isEmpty()) {
      double minutes = times.stream().mapToDouble(Quantity::value).sum();
      readings.put(
          "bake time",
          minutes,
          times.stream().mapToDouble(Quantity::low).sum(),
          times.stream().mapToDouble(Quantity::high).sum(),
          Known.MEASURED);
      mean(stages)
          .ifPresent(
              mean -> {
                readings.put("oven mean", mean, mean - 5, mean + 5, Known.MEASURED);
                share(readings, minutes, mean);
              });
    }
    readings.measured("core temperature", baking.coreTemperature());
    margin(process, readings);
    readings.measured("cooling time", process.cooling().time());
    readings.measured("storage time", process.storage().time());
  }

  private static Optional<Double> mean(List<OvenStage> stages) {
    double sum = 0;
    double minutes = 0;
    for (OvenStage stage : stages) {
      if (stage.time().isPresent() && stage.oven().isPresent()) {
        sum += stage.time().get().value() * stage.oven().get().value();
        minutes += stage.time().get().value();
      }
    }
    return minutes > 0 ? Optional.of(sum / minutes) : Optional.empty();
  }

  private static void share(ReadingList readings, double minutes, double celsius) {
    Style.Spell usual = readings.style().habits().oven();
    if (usual == null || usual.minutes() <= 0 || celsius > HOTTEST || celsius < 120) {
      return;
    }
    double usualGrams = readings.style().habits().value("piece weight").orElse(USUAL_GRAMS);
    Optional<Reading> piece = readings.get("piece weight");
    double grams = piece.map(Reading::value).filter(g -> g > 20).orElse(usualGrams);
    double wanted = BakeTime.wanted(usual.minutes(), usual.celsius(), usualGrams, celsius, grams);
    readings.put(
        "bake share",
        100 * minutes / wanted,
        piece.isPresent() ? 0.1 : 0.2,
        piece.isPresent() ? Known.WORKED_OUT : Known.ASSUMED);
  }

  // Up a mountain water boils before the usual core temperature is reached; the loaf is then done
  // just below boiling.
  private static void margin(BakeProcess process, ReadingList readings) {
    Optional<Reading> core = readings.get("core temperature");
    Optional<Style.Range> usual = readings.style().range("core temperature");
    if (core.isPresent() && usual.isPresent()) {
      double metres = Height.metres(process);
      double wanted = Math.min(usual.get().low(), Boiling.at(metres) - BELOW_BOILING);
      Reading told = core.get();
      readings.put(
          "core margin",
          told.value() - wanted,
          told.low() - wanted - 1,
          told.high() - wanted + 1,
          Known.WORKED_OUT);
    }
  }
}
