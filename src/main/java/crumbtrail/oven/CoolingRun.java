package crumbtrail.oven;

/** One cooling under way. Not shared between threads. */
final class CoolingRun {
  /** Longest stretch of minutes between looks at the step. */
  static final double TICK = 1;

  private final HeatFlow flow;
  private final double boiling;
  private final double grams;
  private final double water;
  private final double[] state;
  private double minute;

  CoolingRun(HotLoaf hot, Surroundings room) {
    Loaf loaf = hot.loaf();
    boiling = Boiling.at(hot.metres());
    Crumb crumb = new Crumb(loaf.density(), boiling, Constants.USUAL.transport());
    flow = new HeatFlow(loaf, crumb, Constants.USUAL.skin());
    flow.surround(room);
    grams = loaf.grams();
    state = hot.state();
    water = flow.sum(state, 1);
  }

  void advance(double minutes) {
    double seconds = minutes * 60;
    int steps = (int) Math.ceil(seconds / flow.step(state));
    for (int i = 0; i < steps; i++) {
      flow.advance(state, seconds / steps);
      flow.boil(state, boiling);
    }
    minute += minutes;
  }

  double minute() {
    return minute;
  }

  double core() {
    return flow.temperature(state, 0);
  }

  double loss() {
    return (water - flow.sum(state, 1)) * 1e5 / grams;
  }
}
