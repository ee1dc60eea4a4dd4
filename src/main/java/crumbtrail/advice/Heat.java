package crumbtrail.advice;

import crumbtrail.quantity.Quantity;
import crumbtrail.quantity.Unit;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.BakeProcess.Baking;
import crumbtrail.sheet.BakeProcess.OvenStage;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The bake with other heat or other time, its stages in proportion. */
final class Heat {
  private Heat() {}

  /** The oven hotter by so many degrees at every stage. */
  static BakeProcess shifted(BakeProcess process, double degrees) {
    return each(
        process,
        stage ->
            new OvenStage(stage.time(), stage.oven().map(oven -> celsius(oven.value() + degrees))));
  }

  /** The bake lasting so many minutes in all. */
  static BakeProcess lasting(BakeProcess process, double minutes) {
    List<OvenStage> stages = process.baking().stages();
    double now =
        stages.stream().mapToDouble(stage -> stage.time().map(Quantity::value).orElse(0.0)).sum();
    if (now <= 0) {
      return stages.isEmpty()
          ? process
          : each(process, stage -> new OvenStage(minutes(minutes / stages.size()), stage.oven()));
    }
    return each(
        process,
        stage ->
            new OvenStage(
                stage.time().flatMap(time -> minutes(time.value() * minutes / now)), stage.oven()));
  }

  private static BakeProcess each(BakeProcess process, UnaryOperator<OvenStage> change) {
    Baking old = process.baking();
    return process.withBaking(
        new Baking(
            old.stages().stream().map(change).toList(),
            old.preheated(),
            old.steam(),
            old.fan(),
            old.scored(),
            old.coreTemperature()));
  }

  /** A temperature, to whole degrees. */
  static Quantity celsius(double celsius) {
    double rounded = Math.round(celsius);
    return new Quantity(Text.of(rounded, 0) + " C", Unit.CELSIUS, rounded, rounded, rounded);
  }

  /** A time, to whole minutes. */
  static Optional<Quantity> minutes(double minutes) {
    double rounded = Math.max(0, Math.round(minutes));
    return Optional.of(
        new Quantity(Text.of(rounded, 0) + " min", Unit.MINUTE, rounded, rounded, rounded));
  }
}
