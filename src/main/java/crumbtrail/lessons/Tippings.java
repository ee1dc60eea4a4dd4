package crumbtrail.lessons;

import crumbtrail.advice.Knob;
import crumbtrail.lessons.Variation.Tipping;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.solvers.BisectionSolver;
import org.hipparchus.exception.MathIllegalArgumentException;

/** Finds where something changes over between two settings, by bisection. */
final class Tippings {
  private static final int MOST_RUNS = 30;

  private final Bench bench;
  private final Knob knob;
  private final Turn turn;

  Tippings(Bench bench, Knob knob, Turn turn) {
    this.bench = bench;
    this.knob = knob;
    this.turn = turn;
  }

  /**
   * @param stands in order of the knob
   * @param watched keys of the causes whose risk is watched
   */
  List<Tipping> of(List<Stand> stands, List<String> watched) {
    List<Tipping> found = new ArrayList<>();
    for (int next = 1; next < stands.size(); next++) {
      Stand low = stands.get(next - 1);
      Stand high = stands.get(next);
      lead(low, high, found);
      watched.forEach(cause -> risk(cause, low, high, found));
    }
    found.sort(Comparator.comparingDouble(Tipping::at).thenComparing(Tipping::kind));
    List<Tipping> leads = found.stream().filter(one -> one.kind().equals("lead")).toList();
    return found.stream()
        .filter(one -> one.kind().equals("lead") || leads.stream().noneMatch(by -> told(one, by)))
        .toList();
  }

  // A cause that takes the lead as it becomes a risk, or loses it as it is none, is told once.
  private boolean told(Tipping risk, Tipping lead) {
    return Math.abs(risk.at() - lead.at()) <= turn.knob().step()
        && (risk.to().equals(lead.from()) || risk.to().equals(lead.to()));
  }

  private void lead(Stand low, Stand high, List<Tipping> found) {
    String from = low.lead();
    String to = high.lead();
    if (!Objects.equals(from, to)) {
      double at = between(low, high, stand -> Objects.equals(stand.lead(), from) ? -1 : 1);
      String words =
          to == null
              ? name(from) + " no longer leads, and nothing else does"
              : from == null
                  ? name(to) + " takes the lead"
                  : name(to) + " takes the lead from " + small(name(from));
      found.add(new Tipping(at, "lead", from, to, "At " + turn.told(at) + ": " + words + "."));
    }
  }

  private void risk(String cause, Stand low, Stand high, List<Tipping> found) {
    boolean was = low.probability(cause) >= Variation.RISK;
    boolean is = high.probability(cause) >= Variation.RISK;
    if (was != is) {
      double at =
          between(low, high, stand -> (stand.probability(cause) >= Variation.RISK) == was ? -1 : 1);
      String words =
          name(cause)
              + (is ? " becomes a risk" : " is a risk no longer")
              + " ("
              + Numbers.percent(Variation.RISK)
              + ")";
      found.add(new Tipping(at, "risk", null, cause, "At " + turn.told(at) + ": " + words + "."));
    }
  }

  // Rules speak from one number on, so that probabilities jump: only the side is asked for.
  private double between(Stand low, Stand high, ToDoubleFunction<Stand> side) {
    double accuracy = Math.max(1e-9, turn.knob().step() / 4);
    try {
      return new BisectionSolver(accuracy)
          .solve(MOST_RUNS, at -> side.applyAsDouble(bench.at(knob, at)), low.at(), high.at());
    } catch (MathIllegalArgumentException sameOnBothSides) {
      return (low.at() + high.at()) / 2;
    }
  }

  private String name(String cause) {
    String name = bench.pipeline().causeName(cause);
    return name.isEmpty() ? cause : Character.toUpperCase(name.charAt(0)) + name.substring(1);
  }

  private static String small(String name) {
    return name.isEmpty() ? name : Character.toLowerCase(name.charAt(0)) + name.substring(1);
  }
}
