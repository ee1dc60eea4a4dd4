package crumbtrail.workup;

import crumbtrail.dough.Fermentation;
import crumbtrail.workup.Reading.Known;
import java.util.List;
import java.util.Optional;

/**
 * How uncertain a rise is, from how uncertain its times, temperatures and leavening are. The
 * model's own error is not in it.
 */
final class RiseSpread {
  /** A degree speeds a dough by about 9 % (our yeast curve; published: about 10 %). */
  private static final double PER_DEGREE = 0.094;

  // Degrees either way (our judgement): of a dough or a place that was measured or worked out, and
  // of one that was assumed.
  private static final double TOLD = 1;
  static final double GUESSED = 3;

  private final Dose dose;
  private final double start;

  RiseSpread(Dose dose, Optional<Reading> doughTemperature) {
    this.dose = dose;
    this.start =
        doughTemperature.filter(reading -> reading.known() != Known.ASSUMED).isPresent()
            ? TOLD
            : GUESSED;
  }

  /** Relative spread of the gas made in these steps. */
  double of(List<RisePlan.Step> steps) {
    double minutes = 0;
    double time = 0;
    double places = 0;
    double memory = 1;
    double remembered = 0;
    for (RisePlan.Step step : steps) {
      double length = step.stay().minutes();
      minutes += length;
      time += step.timeSpread();
      double fades = Math.exp(-length / step.stay().lag());
      remembered += memory * step.stay().lag() * (1 - fades);
      memory *= fades;
      places += length * (step.guessed() ? GUESSED : TOLD);
    }
    if (minutes <= 0) {
      return 0;
    }
    // A dough forgets the temperature at which it began as it nears that of its place.
    double begun = remembered / minutes;
    double degrees = Math.hypot(start * begun, places / minutes * (1 - begun));
    return Math.hypot(Math.hypot(PER_DEGREE * degrees, time / minutes), dose.spread());
  }

  /** How what follows from these steps is known. */
  Known known(List<RisePlan.Step> steps) {
    if (dose.assumed() || steps.stream().anyMatch(RisePlan.Step::guessed)) {
      return Known.ASSUMED;
    }
    boolean covered =
        Fermentation.covers(dose.mix())
            && steps.stream().allMatch(step -> Fermentation.covers(step.stay()));
    return covered ? Known.WORKED_OUT : Known.EXTRAPOLATED;
  }
}
