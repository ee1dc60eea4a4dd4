package crumbtrail.workup;

import crumbtrail.dough.DoughMix;
import crumbtrail.dough.DoughState;
import crumbtrail.workup.Reading.Known;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The course of the rise for the eye. */
final class RiseDrawing {
  private RiseDrawing() {}

  static Optional<RiseCourse> of(
      DoughMix mix, RisePlan plan, Optional<Rising> bulk, Optional<Rising> proof, Known known) {
    if (bulk.isEmpty() && proof.isEmpty()) {
      return Optional.empty();
    }
    List<RiseCourse.Point> points = new ArrayList<>();
    List<RiseCourse.Span> spans = new ArrayList<>();
    List<RiseCourse.Mark> marks = new ArrayList<>();
    bulk.ifPresent(
        rising -> draw("ready to shape", rising, plan.bulk(), mix, points, spans, marks));
    proof.ifPresent(
        rising -> draw("ready to bake", rising, plan.proof(), mix, points, spans, marks));
    return Optional.of(new RiseCourse(points, spans, marks, known == Known.ASSUMED));
  }

  private static void draw(
      String ready,
      Rising rising,
      List<RisePlan.Step> steps,
      DoughMix mix,
      List<RiseCourse.Point> points,
      List<RiseCourse.Span> spans,
      List<RiseCourse.Mark> marks) {
    for (int i = 0; i < steps.size(); i++) {
      List<DoughState> states = rising.steps().get(i);
      states.forEach(
          state ->
              points.add(new RiseCourse.Point(state.minute(), state.rise(mix), state.celsius())));
      RisePlan.Step step = steps.get(i);
      double from = states.get(0).minute();
      double to = from + step.stay().minutes();
      RiseCourse.Span last = spans.isEmpty() ? null : spans.get(spans.size() - 1);
      // The parts between folds are one stage.
      if (last != null
          && last.name().equals(step.name())
          && last.place() == step.stay().celsius()) {
        spans.set(
            spans.size() - 1, new RiseCourse.Span(last.name(), last.from(), to, last.place()));
      } else {
        spans.add(new RiseCourse.Span(step.name(), from, to, step.stay().celsius()));
      }
    }
    double begin = rising.begin().minute();
    rising
        .readyAfter()
        .ifPresent(
            after ->
                marks.add(
                    new RiseCourse.Mark(
                        ready, begin + after, begin + after > rising.end().minute())));
  }
}
