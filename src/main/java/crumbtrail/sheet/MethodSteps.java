package crumbtrail.sheet;

import crumbtrail.quantity.Dimension;
import crumbtrail.quantity.Quantities;
import crumbtrail.quantity.Quantity;
import crumbtrail.quantity.Unit;
import crumbtrail.sheet.BakeProcess.OvenStage;
import crumbtrail.sheet.StepClause.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What was done, as far as the steps of a pasted recipe tell it: "Knead 8 minutes. Let rise 1 hour,
 * shape, and proof for 45 minutes. Bake at 375 F for 35 minutes." Steps are taken in their order:
 * what rises before the loaf is shaped is the first rise, what rises after it the proof, unless
 * they are called so.
 *
 * <p>Only what a step says outright is taken; a time that no word gives a meaning to is left where
 * it stands. A refrigerator of which no temperature is told has 4 °C (common practice).
 */
final class MethodSteps {
  private static final Quantity FRIDGE =
      Quantities.read("about 4 C", Dimension.TEMPERATURE).orElseThrow();

  /** A longer rest is a rise by another name, minutes (our choice). */
  private static final double LONGEST_REST = 60;

  private final List<StepClause> clauses;
  private final List<Stage> bulk = new ArrayList<>();
  private final List<Stage> proof = new ArrayList<>();
  private final List<OvenStage> oven = new ArrayList<>();
  private Optional<Quantity> heat = Optional.empty();
  private Optional<Quantity> rest = Optional.empty();
  private Optional<Quantity> bench = Optional.empty();
  private Optional<Quantity> cooling = Optional.empty();
  private Optional<Quantity> kneading = Optional.empty();
  private Optional<StepVessel.Named> tin = Optional.empty();
  private Optional<Integer> pieces = Optional.empty();
  private boolean divided;
  private boolean shaped;

  private MethodSteps(List<StepClause> clauses) {
    this.clauses = clauses;
    for (int place = 0; place < clauses.size(); place++) {
      take(place);
    }
  }

  /** The steps of a recipe, in order, with the headings among them. */
  static MethodSteps of(List<String> lines) {
    return new MethodSteps(lines.stream().flatMap(line -> StepClause.of(line).stream()).toList());
  }

  /** The process with what it leaves out taken from the steps; what it tells stays. */
  BakeProcess into(BakeProcess told) {
    return new StepFill(told)
        .kneading(kneading)
        .rest(rest)
        .bulk(bulk)
        .bench(bench)
        .pieces(pieces.or(() -> tin.flatMap(StepVessel.Named::pieces)))
        .tin(tin)
        .proof(proof)
        .oven(oven.isEmpty() ? heat.map(MethodSteps::only).stream().toList() : oven)
        .cooling(cooling)
        .filled();
  }

  private static OvenStage only(Quantity heat) {
    return new OvenStage(Optional.empty(), Optional.of(heat));
  }

  private void take(int place) {
    StepClause clause = clauses.get(place);
    shaped = shaped || clause.shapes();
    tin = tin.or(clause::tin);
    pieces = pieces.or(() -> StepVessel.pieces(clause.words()));
    switch (kind(place)) {
      case PREHEAT -> heat = clause.oven().or(() -> heat);
      case BAKE -> bake(clause);
      case BAKE_ON -> {
        if (!oven.isEmpty()) {
          bake(clause);
        }
      }
      case COOL -> cool(clause);
      case KNEAD -> knead(clause);
      case REST -> rest(place);
      case RISE -> rise(clause, shaped ? proof : bulk);
      case BULK -> rise(clause, bulk);
      case SECOND -> rise(clause, shaped || !shapesAfter(place) ? proof : bulk);
      case FINAL -> rise(clause, proof);
      case DIVIDE -> divided = true;
      case OTHER -> {}
    }
  }

  // A time under a heading belongs to what the heading names.
  private Kind kind(int place) {
    Kind kind = clauses.get(place).kind();
    boolean headed = place > 0 && clauses.get(place - 1).isHeading();
    boolean bare = kind == Kind.OTHER && clauses.get(place).time().isPresent();
    boolean goesOn = place > 0 && clauses.get(place).isSpeed() && kind(place - 1) == Kind.KNEAD;
    return bare && (headed || goesOn) ? kind(place - 1) : kind;
  }

  private boolean shapesAfter(int place) {
    return clauses.stream().skip(place + 1L).anyMatch(StepClause::shapes);
  }

  private void knead(StepClause clause) {
    if (!divided && !shaped && bulk.isEmpty() && clause.time().isPresent()) {
      kneading =
          Optional.of(
              kneading.map(one -> sum(one, clause.time().get())).orElse(clause.time().get()));
    }
  }

  // Slow and fast, before the butter and after it.
  private static Quantity sum(Quantity one, Quantity other) {
    Quantity both =
        new Quantity(
            "",
            Unit.MINUTE,
            one.low() + other.low(),
            one.value() + other.value(),
            one.high() + other.high());
    return new Quantity(Quantities.write(both), both.unit(), both.low(), both.value(), both.high());
  }

  // A rest is one before kneading, one between rounding and shaping, or a rise.
  private void rest(int place) {
    StepClause clause = clauses.get(place);
    boolean woken = place > 0 && clauses.get(place - 1).wakes();
    if (clause.time().isEmpty() || woken || clause.wakes()) {
      return;
    }
    boolean isShort = clause.time().get().value() <= LONGEST_REST;
    if (isShort && (divided || shaped) && shapesAfter(place)) {
      bench = clause.time();
    } else if (isShort && kneading.isEmpty() && bulk.isEmpty() && !shaped) {
      rest = rest.or(clause::time);
    } else {
      rise(clause, shaped || divided ? proof : bulk);
    }
  }

  private void rise(StepClause clause, List<Stage> to) {
    if (!oven.isEmpty() || clause.time().isEmpty()) {
      return;
    }
    Optional<Quantity> warmth =
        clause.place().or(() -> Optional.of(FRIDGE).filter(fridge -> clause.inFridge()));
    to.add(new Stage(clause.time(), warmth, Optional.empty(), Optional.empty(), Optional.empty()));
  }

  private void bake(StepClause clause) {
    heat = clause.oven().or(() -> heat);
    if (clause.time().isPresent()) {
      oven.add(new OvenStage(clause.time(), heat));
    }
  }

  // Of a while in its tin and a while on the rack the longer counts; before the bake it is no loaf.
  private void cool(StepClause clause) {
    if (!oven.isEmpty()) {
      cooling =
          Stream.concat(cooling.stream(), clause.time().stream())
              .max(Comparator.comparingDouble(Quantity::value));
    }
  }
}
