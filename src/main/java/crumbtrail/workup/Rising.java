package crumbtrail.workup;

import crumbtrail.dough.DoughState;
import crumbtrail.dough.Fermentation;
import crumbtrail.dough.Readiness;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One rise followed from end to end.
 *
 * @param steps the states of each step, first and last included
 * @param gas gas that it had to make until ready, cm³ for 100 g of flour
 * @param readyAfter minutes from its beginning to ready, even if that is after its end; empty if it
 *     never is, or if that was not asked
 * @param end the dough at the end, before it is handled
 * @param handled the dough after it was handled
 */
record Rising(
    List<List<DoughState>> steps,
    double gas,
    OptionalDouble readyAfter,
    DoughState end,
    DoughState handled) {

  /**
   * Follows a rise.
   *
   * @param ready whether it is asked when it was ready, or would have been
   */
  static Rising follow(
      Fermentation fermentation,
      DoughState begin,
      List<RisePlan.Step> plan,
      double gas,
      boolean ready) {
    List<List<DoughState>> steps = new ArrayList<>();
    List<DoughState> all = new ArrayList<>();
    DoughState state = begin;
    DoughState end = begin;
    // Folds cut a rise into stays, which are drawn as one. What is made of the dough in the end
    // does not want more steps than it takes to be right.
    int points = ready ? Math.max(2, Fermentation.POINTS / plan.size()) : 1;
    for (RisePlan.Step step : plan) {
      List<DoughState> states = fermentation.through(state, step.stay(), points);
      steps.add(states);
      all.addAll(states);
      end = states.get(states.size() - 1);
      state = end.handled(step.keeps());
    }
    OptionalDouble readyAfter =
        ready ? readyAfter(fermentation, all, plan, gas) : OptionalDouble.empty();
    return new Rising(List.copyOf(steps), gas, readyAfter, end, state);
  }

  private static OptionalDouble readyAfter(
      Fermentation fermentation, List<DoughState> all, List<RisePlan.Step> plan, double gas) {
    OptionalDouble within = Readiness.within(all, gas);
    if (within.isPresent()) {
      return within;
    }
    DoughState begin = all.get(0);
    DoughState end = all.get(all.size() - 1);
    Fermentation.Stay last = plan.get(plan.size() - 1).stay();
    double missing = gas - (end.made() - begin.made());
    OptionalDouble later = Readiness.later(fermentation, end, last.celsius(), last.lag(), missing);
    return later.isPresent()
        ? OptionalDouble.of(end.minute() - begin.minute() + later.getAsDouble())
        : later;
  }

  /** Gas made over the gas it had to make: 1 is just ready. */
  double ripeness() {
    return made() / gas;
  }

  /** Gas made in this rise, cm³ for 100 g of flour. */
  double made() {
    return end.made() - begin().made();
  }

  DoughState begin() {
    return steps.get(0).get(0);
  }
}
