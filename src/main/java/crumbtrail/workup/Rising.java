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
 * @param readyAfter minutes from its beginning to ready, even if that is after its end
 * @param end the dough at the end, before it is handled
 * @param handled the dough after it was handled
 */
record Rising(
    List<List<DoughState>> steps,
    double gas,
    OptionalDouble readyAfter,
    DoughState end,
    DoughState handled) {

  static Rising follow(
      Fermentation fermentation, DoughState begin, List<RisePlan.Step> plan, double gas) {
    List<List<DoughState>> steps = new ArrayList<>();
    List<DoughState> all = new ArrayList<>();
    DoughState state = begin;
    DoughState end = begin;
    // Folds cut a rise into stays, which are drawn as one.
    int points = Math.max(2, Fermentation.POINTS / plan.size());
    for (RisePlan.Step step : plan) {
      List<DoughState> states = fermentation.through(state, step.stay(), points);
      steps.add(states);
      all.addAll(states);
      end = states.get(states.size() - 1);
      state = end.handled(step.keeps());
    }
    OptionalDouble ready = Readiness.within(all, gas);
    if (ready.isEmpty()) {
      Fermentation.Stay last = plan.get(plan.size() - 1).stay();
      double missing = gas - (end.made() - begin.made());
      OptionalDouble later =
          Readiness.later(fermentation, end, last.celsius(), last.lag(), missing);
      if (later.isPresent()) {
        ready = OptionalDouble.of(end.minute() - begin.minute() + later.getAsDouble());
      }
    }
    return new Rising(List.copyOf(steps), gas, ready, end, state);
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
