package crumbtrail.oven;

import crumbtrail.oven.BakeCourse.Balance;
import crumbtrail.oven.BakeCourse.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** One bake under way. Not shared between threads. */
final class BakeRun {
  /** Minutes between points of the course. */
  static final double TICK = 0.5;

  private final Loaf loaf;
  private final double metres;
  private final double boiling;
  private final Constants constants;
  private final HeatFlow flow;
  private final List<Point> points = new ArrayList<>();
  private final double warmth;
  private final double water;
  private final double[] state;
  private double minute;
  private double browned;
  private double swollen;
  private double setAt = -1;
  private double surface;

  BakeRun(Loaf loaf, double start, double metres, Constants constants) {
    this.loaf = loaf;
    this.metres = metres;
    this.constants = constants;
    boiling = Boiling.at(metres);
    flow =
        new HeatFlow(
            loaf, new Crumb(loaf.density(), boiling, constants.transport()), constants.skin());
    state = flow.start(start);
    warmth = flow.sum(state, 0);
    water = flow.sum(state, 1);
    surface = start;
    points.add(new Point(0, start, start, start, 0));
  }

  double minute() {
    return minute;
  }

  double core() {
    return flow.temperature(state, 0);
  }

  void stage(OvenStage stage) {
    flow.surround(Surroundings.oven(loaf, stage, constants));
    double end = minute + stage.minutes();
    while (minute < end - 1e-9) {
      // Ticks lie at whole half minutes of the bake, so that a stage cut in two keeps its steps.
      double tick = Math.min(end, (Math.floor(minute / TICK + 1e-9) + 1) * TICK);
      advance(tick - minute);
      minute = tick;
      points.add(new Point(minute, core(), surface, stage.celsius(), loss()));
    }
  }

  private void advance(double minutes) {
    double seconds = minutes * 60;
    int steps = (int) Math.ceil(seconds / flow.step(state));
    double step = seconds / steps;
    for (int i = 0; i < steps; i++) {
      flow.advance(state, step);
      flow.boil(state, boiling);
      surface = flow.surface();
      browned += step * Kinetics.browning(surface);
      swollen += step * Kinetics.starch(core());
      if (setAt < 0 && swollen >= Kinetics.SET) {
        setAt = minute + (i + 1) * step / 60;
      }
    }
  }

  private double loss() {
    double gone = (water - flow.sum(state, 1)) * 1000;
    return BakeCourse.lossPercent(loaf.grams(), loaf.grams() - gone);
  }

  BakeCourse course(boolean extrapolated) {
    return new BakeCourse(
        points,
        core(),
        loss(),
        setAt < 0 ? OptionalDouble.empty() : OptionalDouble.of(setAt),
        1 - Math.exp(-browned),
        surface,
        new Balance(
            flow.passed(state, 0) / 1000,
            (flow.sum(state, 0) - warmth) / 1000,
            flow.passed(state, 1) / 1000),
        extrapolated,
        new HotLoaf(loaf, metres, state));
  }
}
