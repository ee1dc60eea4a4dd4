package crumbtrail.workup;

import crumbtrail.dough.Acidity;
import crumbtrail.dough.DoughState;
import crumbtrail.dough.Stretch;
import crumbtrail.workup.Reading.Known;
import java.util.ArrayList;
import java.util.List;

/** How sour a sourdough went into the oven. */
final class SourWorkup {
  /** A ripe starter (Sourdough Framework: ready at 4.2). */
  private static final double RIPE_STARTER = 4.2;

  // Share of prefermented flour that starter of so many percent of flour brings, half of it flour.
  private static final double FLOUR_OF_STARTER = 0.5;

  // pH either way: the model's own 0.2 where the starter is lively, and what is assumed of it.
  private static final double SPREAD = 0.3;

  private SourWorkup() {}

  /** Whether it is asked how sour the dough was, or how the bread keeps, which rests on it. */
  static boolean wanted(Care care) {
    return care.wants("acidity", "mould hazard", "rope hazard");
  }

  /**
   * Puts the reading.
   *
   * @param steps states of the dough through every step from mixing to the oven
   * @param known how the rise is known
   */
  static void work(ReadingList readings, Dose dose, List<List<DoughState>> steps, Known known) {
    double prefermented =
        readings
            .get("prefermented flour")
            .map(Reading::value)
            .filter(share -> share > 0)
            .orElse(dose.mix().leaven().starter() * FLOUR_OF_STARTER);
    if (prefermented <= 0) {
      return;
    }
    Acidity.Flour flour =
        new Acidity.Flour(dose.mix().wholeGrain(), dose.mix().rye(), dose.mix().salt());
    List<Stretch> schedule = new ArrayList<>();
    steps.forEach(states -> schedule.add(stretch(states)));
    Acidity.Sourness mixed = Acidity.mixed(prefermented, RIPE_STARTER, flour);
    double pH = Acidity.pH(Acidity.after(mixed, flour, schedule).acid(), flour);
    readings.put("acidity", pH, pH - SPREAD, pH + SPREAD, known);
  }

  // One step at the mean of the dough's own temperature.
  private static Stretch stretch(List<DoughState> states) {
    double degrees = 0;
    for (int i = 1; i < states.size(); i++) {
      double minutes = states.get(i).minute() - states.get(i - 1).minute();
      degrees += minutes * (states.get(i).celsius() + states.get(i - 1).celsius()) / 2;
    }
    double minutes = states.get(states.size() - 1).minute() - states.get(0).minute();
    return new Stretch(minutes, minutes > 0 ? degrees / minutes : states.get(0).celsius());
  }
}
