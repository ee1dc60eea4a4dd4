package crumbtrail.advice;

import crumbtrail.findings.Reasoning;
import crumbtrail.knowledge.KnobKind;
import crumbtrail.knowledge.Remedy.Aim;
import crumbtrail.knowledge.Style;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.Care;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;
import org.jspecify.annotations.Nullable;

/** Finds how far a knob is to be turned, by the same models that judged the bake. */
final class Turner {
  private static final int EVALUATIONS = 40;

  /** Settings between the ends that are looked at where the ends do not tell. */
  private static final int LOOKS = 5;

  private static final List<String> WORDS = List.of("usual", "middle", "low", "high");

  /** A reading is at its aim within this share of it. Our choice. */
  private static final double NEAR = 0.02;

  /** A reading farther from its aim than this share of it has jumped over it. Our choice. */
  private static final double JUMP = 0.1;

  private final Reasoning reasoning;
  private final Trial trial;
  private final Aim aim;
  private final Knob knob;
  private @Nullable DoubleFunction<BakeSheet> turning;

  Turner(Reasoning reasoning, Trial trial, Aim aim, Knob knob) {
    this.reasoning = reasoning;
    this.trial = trial;
    this.aim = aim;
    this.knob = knob;
  }

  /** Where to set the knob; empty where turning it is of no use. */
  OptionalDouble value() {
    return value(aimed());
  }

  /**
   * The same where it is known already where the knob meets its aim.
   *
   * @param aimed where it meets its aim
   */
  OptionalDouble value(OptionalDouble aimed) {
    OptionalDouble now = now();
    if (aimed.isPresent() && (now.isEmpty() || rightWay(now.getAsDouble(), aimed.getAsDouble()))) {
      return aimed;
    }
    return stepped(now);
  }

  private OptionalDouble now() {
    return knob.value(trial.sheet(), trial.workup())
        .map(OptionalDouble::of)
        .orElseGet(OptionalDouble::empty);
  }

  /**
   * Where the knob meets its aim, whichever way that is; empty where there is no aim, or it is met
   * or out of reach.
   */
  OptionalDouble aimed() {
    OptionalDouble now = now();
    if (aim.to() == null) {
      return OptionalDouble.empty();
    }
    String reading = aim.until() == null ? own() : aim.until();
    OptionalDouble wanted = wanted(reading);
    if (wanted.isEmpty()) {
      return OptionalDouble.empty();
    }
    double value;
    if (aim.until() == null) {
      value = wanted.getAsDouble();
    } else {
      OptionalDouble solved = solved(reading, wanted.getAsDouble());
      if (solved.isEmpty()) {
        return solved;
      }
      value = solved.getAsDouble();
    }
    double settable = knob.settable(value);
    boolean same = now.isPresent() && Math.abs(settable - now.getAsDouble()) < knob.kind().step();
    return same ? OptionalDouble.empty() : OptionalDouble.of(settable);
  }

  // A knob that the sheet itself tells stands beside a reading of nearly its name.
  private String own() {
    return knob.kind().reading() == null
        ? knob.kind().key().replace('-', ' ')
        : knob.kind().reading();
  }

  private OptionalDouble wanted(String reading) {
    String to = aim.to();
    if (!WORDS.contains(to)) {
      return OptionalDouble.of(Double.parseDouble(to));
    }
    Style.Range usual = Knob.usual(trial.workup(), reading).orElse(null);
    if (usual == null) {
      return OptionalDouble.empty();
    }
    double quarter = (usual.high() - usual.low()) / 4;
    double now = Knob.reading(trial.workup(), reading).orElse(usual.middle());
    return OptionalDouble.of(
        switch (to) {
          case "low" -> usual.low() + quarter;
          case "high" -> usual.high() - quarter;
          // No further than it takes to be well within what is usual.
          case "usual" -> Math.max(usual.low() + quarter, Math.min(usual.high() - quarter, now));
          default -> usual.middle();
        });
  }

  private boolean rightWay(double now, double then) {
    return aim.step() == null || aim.step().down() == (then < now);
  }

  // Where the reading is as it should be and the signs say otherwise, the models miss something:
  // one step in the right direction, and look again.
  private OptionalDouble stepped(OptionalDouble now) {
    if (aim.step() == null || now.isEmpty()) {
      return OptionalDouble.empty();
    }
    double from = now.getAsDouble();
    double to = knob.settable(aim.step().from(from));
    return Math.abs(to - from) < knob.kind().step() / 2
        ? OptionalDouble.empty()
        : OptionalDouble.of(to);
  }

  // The solver comes back to where the search has been.
  private DoubleUnaryOperator miss(String reading, double wanted) {
    Map<Double, Double> known = new HashMap<>();
    return value -> known.computeIfAbsent(value, first -> tried(first, reading) - wanted);
  }

  private double tried(double value, String reading) {
    if (turning == null) {
      turning = knob.turning(trial.sheet(), trial.workup());
    }
    return Knob.reading(reasoning.work(turning.apply(value), Care.ofOne(reading)), reading)
        .orElse(Double.NaN);
  }

  private OptionalDouble solved(String reading, double wanted) {
    DoubleUnaryOperator miss = miss(reading, wanted);
    double high = knob.kind().high();
    // A dough of which no yeast is told is taken for one with the usual yeast; so not from nought.
    boolean amount = knob.kind().turns() == KnobKind.Turns.INGREDIENT;
    double low = knob.kind().low() + (amount ? (high - knob.kind().low()) / 200 : 0);
    double atLow = miss.applyAsDouble(low);
    double atHigh = miss.applyAsDouble(high);
    if (Double.isNaN(atHigh)) {
      return OptionalDouble.empty();
    }
    // Some readings are not there at the very bottom: no rise without yeast.
    if (Double.isNaN(atLow)) {
      low = low + (high - low) / 100;
      atLow = miss.applyAsDouble(low);
    }
    if (Double.isNaN(atLow)) {
      return OptionalDouble.empty();
    }
    boolean across = atLow * atHigh <= 0;
    OptionalDouble met = across ? met(miss, wanted, low, high) : OptionalDouble.empty();
    if (met.isPresent()) {
      return met;
    }
    OptionalDouble between = between(miss, wanted, Math.max(low, knob.kind().step()), high);
    return across || between.isPresent()
        ? between
        : nearest(reading, wanted, low, atLow, high, atHigh);
  }

  private OptionalDouble met(DoubleUnaryOperator miss, double wanted, double low, double high) {
    BracketingNthOrderBrentSolver solver =
        new BracketingNthOrderBrentSolver(
            1e-4, knob.kind().step() / 4, NEAR * Math.max(0.05, Math.abs(wanted)), 4);
    try {
      double found = solver.solve(EVALUATIONS, miss::applyAsDouble, low, high);
      // Across a jump the sign changes, and no value meets the aim.
      boolean near = Math.abs(miss.applyAsDouble(found)) <= JUMP * Math.max(0.05, Math.abs(wanted));
      return near ? OptionalDouble.of(found) : OptionalDouble.empty();
    } catch (MathRuntimeException notFound) {
      // A reading with a gap in it has no value that meets the aim.
      return OptionalDouble.empty();
    }
  }

  // Both ends miss the same way, or there is a jump, and yet the aim may lie between them: with too
  // much yeast a dough has eaten its sugar before the proof, and with a pinch of starter it counts
  // as one of which no starter is told. What is nearest to where the knob stands is taken.
  private OptionalDouble between(
      DoubleUnaryOperator miss, double wanted, double from, double high) {
    double now = now().orElse(Math.sqrt(from * high));
    List<double[]> turns = new ArrayList<>();
    double before = from;
    double atBefore = miss.applyAsDouble(from);
    for (int one = 1; one <= LOOKS; one++) {
      double value = from * Math.pow(high / from, one / (double) LOOKS);
      double at = miss.applyAsDouble(value);
      if (atBefore * at <= 0) {
        turns.add(new double[] {before, value});
      }
      before = value;
      atBefore = at;
    }
    turns.sort(Comparator.comparingDouble(turn -> Math.abs((turn[0] + turn[1]) / 2 - now)));
    return turns.stream()
        .map(turn -> met(miss, wanted, turn[0], turn[1]))
        .filter(OptionalDouble::isPresent)
        .findFirst()
        .orElseGet(OptionalDouble::empty);
  }

  // The aim is out of reach; as near as the knob goes, if that is much nearer than now.
  private OptionalDouble nearest(
      String reading, double wanted, double low, double atLow, double high, double atHigh) {
    double now =
        Knob.reading(trial.workup(), reading).map(found -> Math.abs(found - wanted)).orElse(0.0);
    boolean lowNearer = Math.abs(atLow) < Math.abs(atHigh);
    double best = Math.min(Math.abs(atLow), Math.abs(atHigh));
    return best < now / 2 ? OptionalDouble.of(lowNearer ? low : high) : OptionalDouble.empty();
  }
}
