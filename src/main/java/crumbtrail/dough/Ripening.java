package crumbtrail.dough;

import java.util.List;
import org.hipparchus.analysis.integration.SimpsonIntegrator;

/**
 * How far a dough ripens on its way through a schedule: the share of a full rise, 1 being just
 * ready. Gas rate at the dough's own temperature, summed over time; the dough follows the
 * temperature of its surroundings with a lag.
 */
public final class Ripening {
  private static final int MOST_EVALUATIONS = 200_000;

  // A dough that passes through its cold limit in a long stage turns a corner that few points can
  // miss.
  private static final int FEWEST_HALVINGS = 8;

  private Ripening() {}

  /**
   * One stretch at one temperature.
   *
   * @param minutes how long
   * @param celsius temperature of the place
   */
  public record Spell(double minutes, double celsius) {}

  /**
   * The state of a dough at the end of a schedule.
   *
   * @param ripeness share of a full bulk rise made during the schedule, 1 = just ready
   * @param celsius dough temperature at the end
   */
  public record End(double ripeness, double celsius) {}

  /**
   * Follows a dough through a schedule.
   *
   * @param leaven what raises it
   * @param start its temperature at the beginning, °C
   * @param grams mass of one piece, which sets how slowly it follows its surroundings
   * @param spells the schedule in order
   */
  public static End through(Leaven leaven, double start, double grams, List<Spell> spells) {
    double lag = DoughTemperature.timeConstant(grams);
    double celsius = start;
    double ripeness = 0;
    for (Spell spell : spells) {
      if (spell.minutes() > 0) {
        ripeness += leaven.ratePerMinute() * minutesAtReference(celsius, spell, lag);
        celsius = DoughTemperature.after(celsius, spell.celsius(), spell.minutes(), lag);
      }
    }
    return new End(ripeness, celsius);
  }

  private static double minutesAtReference(double start, Spell spell, double lag) {
    return new SimpsonIntegrator(
            1e-6, 1e-8, FEWEST_HALVINGS, SimpsonIntegrator.SIMPSON_MAX_ITERATIONS_COUNT)
        .integrate(
            MOST_EVALUATIONS,
            minute -> YeastActivity.at(DoughTemperature.after(start, spell.celsius(), minute, lag)),
            0,
            spell.minutes());
  }
}
