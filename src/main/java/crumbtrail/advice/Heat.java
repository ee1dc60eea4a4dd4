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

  /** The oven hotter by so many degrees at every stage that tells its heat. */
  static BakeProcess shifted(BakeProcess process, double degrees) {
    return each(
        process,
        stage ->
            new OvenStage(stage.time(), stage.oven().map(oven -> celsius(oven.value() + degrees))));
  }

  /** The oven at one heat at every stage, and at one stage where none is told. */
  static BakeProcess at(BakeProcess process, double celsius) {
    return each(some(process), stage -> new OvenStage(stage.time(), Optional.of(celsius(celsius))));
  }

  /** Whether any stage of the bake tells its heat. */
  static boolean told(BakeProcess process) {
    return process.baking().stages().stream().anyMatch(stage -> stage.oven().isPresent());
  }

  /** The bake lasting so many minutes in all. */
  static BakeProcess lasting(BakeProcess process, double minutes) {
    BakeProcess baked = some(process);
    List<OvenStage> stages = baked.baking().stages();
    double now =
        stages.stream().mapToDouble(stage -> stage.time().map(Quantity::value).orElse(0.0)).sum();
    return each(
        baked,
        stage ->
            new OvenStage(
                now > 0
                    ? stage.time().flatMap(time -> minutes(time.value() * minutes / now))
                    : minutes(minutes / stages.size()),
                stage.oven()));
  }

  private static BakeProcess some(BakeProcess process) {
    OvenStage untold = new OvenStage(Optional.empty(), Optional.empty());
    return process.baking().stages().isEmpty() ? with(process, List.of(untold)) : process;
  }

  private static BakeProcess each(BakeProcess process, UnaryOperator<OvenStage> change) {
    return with(process, process.baking().stages().stream().map(change).toList());
  }

  // What was measured in the middle of the last loaf says nothing of one that bakes otherwise.
  private static BakeProcess with(BakeProcess process, List<OvenStage> stages) {
    Baking old = process.baking();
    return process.withBaking(
        new Baking(
            stages, old.preheated(), old.steam(), old.fan(), old.scored(), Optional.empty()));
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
