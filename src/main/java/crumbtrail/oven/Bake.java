package crumbtrail.oven;

import crumbtrail.memory.Recent;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A loaf in the oven: conduction through layers of one radius, water boiling off at a front that
 * moves inward, air and radiation at the surface.
 *
 * <p>Equations, constants, what was measured against what, and weak spots: docs/science/oven.md.
 * Steps are explicit (Euler's, one at a time, since after each the water heated past boiling is
 * taken off) and as long as stability allows.
 */
public final class Bake {
  // Most what-ifs of a sheet change nothing of the piece or of the oven, and a bake is the dearest
  // thing to work out. A course takes some kilobytes.
  private static final Recent<Asked, BakeCourse> LATELY = new Recent<>(256);

  /** All that a bake hangs on. */
  private record Asked(Loaf loaf, double start, List<OvenStage> stages, double metres) {
    Asked {
      stages = List.copyOf(stages);
    }
  }

  private Bake() {}

  /**
   * Bakes a loaf.
   *
   * @param loaf the piece
   * @param start temperature of the dough, 0 to 60 °C
   * @param stages oven by oven temperature, in order
   * @param metres height above the sea
   * @throws IllegalArgumentException if a number is not finite, a time negative, or a temperature
   *     or height out of all reason
   */
  public static BakeCourse of(Loaf loaf, double start, List<OvenStage> stages, double metres) {
    return LATELY.of(
        new Asked(loaf, start, stages, metres),
        asked -> of(asked.loaf(), asked.start(), asked.stages(), asked.metres(), Constants.USUAL));
  }

  static BakeCourse of(
      Loaf loaf, double start, List<OvenStage> stages, double metres, Constants constants) {
    check(start >= -5 && start <= 60, "dough temperature", start);
    check(metres >= -500 && metres <= 9000, "height", metres);
    boolean extrapolated = !covers(loaf, start, stages, metres);
    BakeRun run = new BakeRun(loaf, start, metres, constants);
    for (OvenStage stage : stages) {
      check(stage.minutes() >= 0 && stage.minutes() <= 1000, "minutes", stage.minutes());
      check(stage.celsius() >= -30 && stage.celsius() <= 600, "oven", stage.celsius());
      run.stage(stage);
    }
    return run.course(extrapolated);
  }

  /**
   * Minutes until the middle is that warm in an oven of one temperature.
   *
   * @param longest give up after so many minutes
   * @return empty if it is not by then
   */
  public static OptionalDouble minutesUntil(
      double core, Loaf loaf, double start, OvenStage oven, double metres, double longest) {
    BakeRun run = new BakeRun(loaf, start, metres, Constants.USUAL);
    OvenStage piece = new OvenStage(2, oven.celsius(), oven.fan(), oven.lid());
    while (run.minute() < longest && run.core() < core) {
      run.stage(piece);
    }
    return run.course(false).coreReaches(core);
  }

  /**
   * Whether the model was made for this: dough from 0 to 40 °C, ovens from 120 to 300 °C, up to
   * 3500 m, a bake of at most two hours, and a loaf that {@link Loaf#covers} admits.
   */
  public static boolean covers(Loaf loaf, double start, List<OvenStage> stages, double metres) {
    return Loaf.covers(loaf)
        && start >= 0
        && start <= 40
        && metres <= 3500
        && stages.stream().mapToDouble(OvenStage::minutes).sum() <= 120
        && stages.stream().allMatch(stage -> stage.celsius() >= 120 && stage.celsius() <= 300);
  }

  private static void check(boolean fits, String what, double value) {
    if (!fits) {
      throw new IllegalArgumentException(what + " is out of reach of the oven model: " + value);
    }
  }
}
