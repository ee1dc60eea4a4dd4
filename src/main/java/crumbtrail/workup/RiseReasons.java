package crumbtrail.workup;

import crumbtrail.dough.DoughState;
import crumbtrail.dough.Fermentation;
import crumbtrail.dough.Surroundings;
import crumbtrail.knowledge.Style;
import crumbtrail.sheet.Stage;
import crumbtrail.workup.Reading.Known;
import java.util.List;

/**
 * Why a dough rose as far as it did. The same stays are run again with the leavening, salt and
 * sugar that are usual for the bread, and once more at the usual temperatures too; what each change
 * makes of the gas is the share of the clock, of the warmth and of the leavening in the rise.
 */
final class RiseReasons {
  private static final double USUAL_START = 25;
  private static final double USUAL_FRIDGE = 4;

  private final ReadingList readings;
  private final Style style;
  private final RisePlan plan;
  private final Fermentation usual;
  private final RiseSpread spread;

  RiseReasons(ReadingList readings, Dose dose, RisePlan plan, double thinAir, RiseSpread spread) {
    this.readings = readings;
    this.style = readings.style();
    this.plan = plan;
    this.usual = new Fermentation(dose.usual(), thinAir);
    this.spread = spread;
  }

  /** Whether anything is asked of why the dough rose as far as it did. */
  static boolean wanted(Care care) {
    return care.wants(
        "bulk schedule",
        "proof schedule",
        "rise by the clock",
        "rise by warmth",
        "rise by leavening");
  }

  /** Gas made in the two rises, cm³ for 100 g of flour. */
  private record Gas(double bulk, double proof) {
    double both() {
      return bulk + proof;
    }
  }

  /**
   * Puts the readings.
   *
   * @param start the dough after mixing, °C
   * @param bulkGas gas that the first rise wanted
   * @param proofGas gas that the proof wanted
   * @param made gas that was made in both
   */
  void put(double start, double bulkGas, double proofGas, double made) {
    if (plan.all().isEmpty()) {
      return;
    }
    Gas clock = through(start, false);
    if (!plan.bulk().isEmpty()) {
      put("bulk schedule", clock.bulk() / bulkGas, plan.bulk());
    }
    if (!plan.proof().isEmpty()) {
      put("proof schedule", clock.proof() / proofGas, plan.proof());
    }
    double usualStart =
        style.range("dough temperature").map(Style.Range::middle).orElse(USUAL_START);
    Gas hours = through(usualStart, true);
    double wanted = (plan.bulk().isEmpty() ? 0 : bulkGas) + (plan.proof().isEmpty() ? 0 : proofGas);
    if (hours.both() > 0 && clock.both() > 0) {
      readings.put("rise by the clock", hours.both() / wanted, 0.1, Known.WORKED_OUT);
      put("rise by warmth", clock.both() / hours.both(), plan.all());
      put("rise by leavening", made / clock.both(), plan.all());
    }
  }

  private void put(String name, double value, List<RisePlan.Step> steps) {
    readings.put(name, value, spread.of(steps), spread.known(steps));
  }

  private Gas through(double start, boolean usualPlaces) {
    DoughState state = usual.start(start);
    for (RisePlan.Step step : plan.bulk()) {
      Surroundings place = usualPlaces ? usual(step, style.habits().bulk()) : step.place();
      state = usual.after(state, step.stay(place)).handled(step.keeps());
    }
    double bulk = state.made();
    for (RisePlan.Step step : plan.proof()) {
      Surroundings place = usualPlaces ? usual(step, style.habits().proof()) : step.place();
      state = usual.after(state, step.stay(place));
    }
    return new Gas(bulk, state.made() - bulk);
  }

  private static Surroundings usual(RisePlan.Step step, Style.Spell habit) {
    Surroundings place = step.place();
    double celsius = habit == null ? RisePlan.ROOM_RISE : habit.celsius();
    if (place.celsius() < Stage.COLD) {
      celsius = USUAL_FRIDGE;
    }
    return new Surroundings(place.minutes(), celsius, place.transfer());
  }
}
