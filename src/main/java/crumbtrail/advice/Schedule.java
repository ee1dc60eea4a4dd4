package crumbtrail.advice;

import crumbtrail.findings.Reasoning;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Remedy;
import crumbtrail.pantry.Pantry;
import crumbtrail.quantity.Amounts;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Stage;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Fits a dough to the times that a baker has: the times are set, and yeast or starter is solved for
 * so that the dough is just ripe at the end of each rise.
 */
final class Schedule {
  /** Time in the warm before an overnight stay, and the refrigerator (common practice). */
  private static final double FIRST = 30;

  private static final double FRIDGE = 4;

  /** A dough this far from ripe, in times ready, is not as it should be. */
  private static final double OFF = 0.2;

  private final Reasoning reasoning;
  private final Knobs knobs;
  private final List<String> notes = new ArrayList<>();

  Schedule(Reasoning reasoning, Catalogue catalogue, Pantry pantry) {
    this.reasoning = reasoning;
    this.knobs = new Knobs(catalogue, pantry);
  }

  /** What was fitted and what could not be, in sentences. */
  List<String> notes() {
    return List.copyOf(notes);
  }

  /** The sheet with the wished times and the leavening for them. */
  BakeSheet fitted(BakeSheet sheet, Wish wish) {
    BakeSheet set = sheet;
    if (wish.bulk().isPresent()) {
      set = turned(set, "bulk-time", wish.bulk().getAsDouble());
    }
    if (wish.overnight().isPresent()) {
      set = overnight(set, wish.overnight().getAsDouble());
    }
    if (wish.proof().isPresent()) {
      set = turned(set, "proof-time", wish.proof().getAsDouble());
    }
    if (wish.bulk().isPresent() || wish.overnight().isPresent()) {
      set = leavened(set, "bulk ripeness");
      if (wish.proof().isEmpty()) {
        set = solved(set, "proof-time", "proof ripeness");
      }
    } else if (wish.proof().isPresent()) {
      set = leavened(set, "proof ripeness");
    }
    return set;
  }

  private BakeSheet turned(BakeSheet sheet, String key, double value) {
    Knob knob = knobs.named(key).orElseThrow();
    Workup workup = reasoning.work(sheet);
    if (!knob.turns(sheet, workup)) {
      notes.add("The " + knob.kind().name() + " cannot be set: the sheet does not tell enough.");
      return sheet;
    }
    return knob.turned(sheet, workup, value);
  }

  private BakeSheet overnight(BakeSheet sheet, double hours) {
    BakeProcess process = sheet.process();
    List<Stage> bulk = new ArrayList<>();
    Stage first =
        process.bulk().isEmpty()
            ? new Stage(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty())
            : process.bulk().get(0);
    bulk.add(
        new Stage(
            Heat.minutes(FIRST),
            first.temperature(),
            first.folds(),
            first.covered(),
            first.humidity()));
    bulk.add(
        new Stage(
            Heat.minutes(hours * 60),
            Optional.of(Heat.celsius(FRIDGE)),
            Optional.empty(),
            Optional.of(true),
            Optional.empty()));
    return sheet.with(process.withBulk(bulk));
  }

  private BakeSheet leavened(BakeSheet sheet, String reading) {
    boolean sour =
        Knob.reading(reasoning.work(sheet), "yeast").orElse(0.0) <= 0
            && knobs.named("starter").orElseThrow().grams(sheet).isPresent();
    return solved(sheet, sour ? "starter" : "yeast", reading);
  }

  private BakeSheet solved(BakeSheet sheet, String key, String reading) {
    Knob knob = knobs.named(key).orElseThrow();
    Remedy.Aim aim = new Remedy.Aim(reading, "1", null);
    Trial trial = Trial.of(reasoning, sheet);
    OptionalDouble value = new Turner(reasoning, trial, aim, knob).value();
    if (value.isEmpty()) {
      Knob.reading(trial.workup(), reading)
          .filter(found -> Math.abs(found - 1) > OFF)
          .ifPresent(
              found ->
                  notes.add(
                      "No setting of the "
                          + knob.kind().name()
                          + " makes the dough just ripe in these hours; it comes to "
                          + Amounts.number(found)
                          + " times ready."));
      return sheet;
    }
    BakeSheet turned = knob.turned(sheet, trial.workup(), value.getAsDouble());
    KnobWords words = new KnobWords(knob, trial, turned, reasoning.work(turned));
    notes.add(
        "For these times the "
            + knob.kind().name()
            + " becomes "
            + words.to(value.getAsDouble())
            + ".");
    return turned;
  }
}
