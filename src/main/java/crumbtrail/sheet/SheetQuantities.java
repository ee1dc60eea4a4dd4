package crumbtrail.sheet;

import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeProcess.Baking;
import crumbtrail.sheet.BakeProcess.Cooling;
import crumbtrail.sheet.BakeProcess.Mixing;
import crumbtrail.sheet.BakeProcess.OvenStage;
import crumbtrail.sheet.BakeProcess.Shaping;
import crumbtrail.sheet.BakeProcess.Storage;
import crumbtrail.sheet.BakeProcess.Temperatures;
import crumbtrail.sheet.BakeSheet.Preferment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Goes through every quantity of a sheet, those of its ingredients apart. Places are written as
 * problems write them: {@code process.bulk[0].time}.
 */
public final class SheetQuantities {
  /** What becomes of a quantity. */
  @FunctionalInterface
  public interface Change {
    /** The quantity that is to stand in this place; the same one to leave it. */
    Quantity of(String where, Quantity quantity);
  }

  private final Change change;

  private SheetQuantities(Change change) {
    this.change = change;
  }

  /** The sheet with each of its quantities changed. */
  public static BakeSheet changed(BakeSheet sheet, Change change) {
    SheetQuantities each = new SheetQuantities(change);
    return new BakeSheet(
        sheet.title(),
        sheet.style(),
        sheet.formula(),
        each.preferments(sheet.preferments()),
        each.process(sheet.process()),
        sheet.seen(),
        sheet.notSeen(),
        sheet.knownCauses());
  }

  /** The sheet with each line of its formulas changed, those of preferments included. */
  public static BakeSheet withLines(BakeSheet sheet, UnaryOperator<FormulaLine> change) {
    return new BakeSheet(
        sheet.title(),
        sheet.style(),
        sheet.formula().stream().map(change).toList(),
        sheet.preferments().stream()
            .map(
                one ->
                    new Preferment(
                        one.name(), one.formula().stream().map(change).toList(), one.stages()))
            .toList(),
        sheet.process(),
        sheet.seen(),
        sheet.notSeen(),
        sheet.knownCauses());
  }

  private List<Preferment> preferments(List<Preferment> preferments) {
    return indexed(
        preferments,
        "preferments",
        (where, one) ->
            new Preferment(one.name(), one.formula(), stages(where + ".stages", one.stages())));
  }

  private BakeProcess process(BakeProcess process) {
    String at = "process.";
    Temperatures warm = process.temperatures();
    Mixing mixing = process.mixing();
    Shaping shaping = process.shaping();
    Baking baking = process.baking();
    return new BakeProcess(
        one(at + "room", process.room()),
        new Temperatures(
            one(at + "temperatures.flour", warm.flour()),
            one(at + "temperatures.liquid", warm.liquid()),
            one(at + "temperatures.preferment", warm.preferment())),
        new Mixing(
            mixing.method(),
            one(at + "mixing.time", mixing.time()),
            mixing.speed(),
            one(at + "mixing.rest", mixing.rest()),
            mixing.fat(),
            one(at + "mixing.doughTemperature", mixing.doughTemperature())),
        stages(at + "bulk", process.bulk()),
        new Shaping(
            shaping.pieces(),
            one(at + "shaping.pieceWeight", shaping.pieceWeight()),
            one(at + "shaping.benchRest", shaping.benchRest()),
            shaping.tension(),
            shaping.dustingFlour()),
        process.vessel(),
        stages(at + "proof", process.proof()),
        new Baking(
            indexed(
                baking.stages(),
                at + "baking.stages",
                (where, stage) ->
                    new OvenStage(
                        one(where + ".time", stage.time()), one(where + ".oven", stage.oven()))),
            baking.preheated(),
            baking.steam(),
            baking.fan(),
            baking.scored(),
            one(at + "baking.coreTemperature", baking.coreTemperature())),
        new Cooling(
            one(at + "cooling.time", process.cooling().time()), process.cooling().wrapped()),
        new Storage(process.storage().place(), one(at + "storage.time", process.storage().time())),
        one(at + "altitude", process.altitude()),
        process.remarks(),
        process.steps(),
        process.fromSteps());
  }

  private List<Stage> stages(String where, List<Stage> stages) {
    return indexed(
        stages,
        where,
        (place, stage) ->
            new Stage(
                one(place + ".time", stage.time()),
                one(place + ".temperature", stage.temperature()),
                stage.folds(),
                stage.covered(),
                one(place + ".humidity", stage.humidity())));
  }

  private Optional<Quantity> one(String where, Optional<Quantity> quantity) {
    return quantity.map(told -> change.of(where, told));
  }

  @FunctionalInterface
  private interface Each<T> {
    T of(String where, T part);
  }

  private static <T> List<T> indexed(List<T> parts, String where, Each<T> each) {
    List<T> changed = new ArrayList<>();
    for (int place = 0; place < parts.size(); place++) {
      changed.add(each.of(where + "[" + place + "]", parts.get(place)));
    }
    return changed;
  }
}
