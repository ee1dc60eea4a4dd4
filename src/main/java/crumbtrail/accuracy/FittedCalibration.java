package crumbtrail.accuracy;

import crumbtrail.accuracy.Calibrator.Trial;
import crumbtrail.knowledge.Calibration;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * A calibration fitted to the labelled bakes and the tables, with the trials that led to it.
 *
 * @param calibration the numbers
 * @param log a line for every point of the grid that was tried
 * @param file the content of rules/calibration.yaml
 */
public record FittedCalibration(Calibration calibration, List<String> log, String file) {

  static FittedCalibration of(Calibrator calibrator, List<Bake> bakes) {
    List<Trial> trials = calibrator.trials();
    Trial best = trials.stream().max(Comparator.comparingDouble(Trial::worth)).orElseThrow();
    Calibration fitted = rounded(calibrator.linked(best.calibration()));
    return new FittedCalibration(
        fitted, trials.stream().map(FittedCalibration::line).toList(), file(fitted, bakes));
  }

  private static Calibration rounded(Calibration exact) {
    Calibration ahead = exact.beforehand();
    return linkRounded(exact).withAhead(linkRounded(ahead));
  }

  private static Calibration linkRounded(Calibration exact) {
    return exact.withLink(
        exact.unnamed(),
        hundredths(exact.base()),
        hundredths(exact.sum()),
        hundredths(exact.lead()),
        hundredths(exact.first()));
  }

  private static double hundredths(double value) {
    return Math.round(value * 100) / 100.0;
  }

  private static String line(Trial trial) {
    Calibration tried = trial.calibration();
    return String.format(
        Locale.ROOT,
        "prior share %.2f, tables share %.1f, smoothing %.0f: unseen tables %.3f bits, tables %.3f,"
            + " real failures %.3f, own cases %.3f, together %.3f",
        tried.priorShare(),
        tried.tablesShare(),
        tried.smoothing(),
        trial.unseen(),
        trial.seen(),
        trial.real(),
        trial.own(),
        trial.worth());
  }

  private static String file(Calibration fitted, List<Bake> bakes) {
    long real = bakes.stream().filter(Bake::real).count();
    long healthy = bakes.stream().filter(Bake::healthy).count();
    return String.format(
        Locale.ROOT,
        """
        # How words become weights and sums become probabilities; docs/how-it-reasons.md says what each number means.
        # Written by: crumbtrail rules calibrate. Fitted to %d real failures, %d own cases (%d of them healthy) and the
        # published tables, each lineage judged by weights that never saw it.
        prior share: %s
        tables share: %s
        smoothing: %s
        unnamed: %s
        base: %s
        sum: %s
        lead: %s
        first: %s
        # For a bake that is still to come: the same sheets without their signs, as many sound bakes as failures.
        before the bake:
          unnamed: %s
          base: %s
          sum: %s
          lead: %s
          first: %s
        """,
        real,
        bakes.size() - real,
        healthy,
        fitted.priorShare(),
        fitted.tablesShare(),
        fitted.smoothing(),
        fitted.unnamed(),
        fitted.base(),
        fitted.sum(),
        fitted.lead(),
        fitted.first(),
        fitted.ahead().unnamed(),
        fitted.ahead().base(),
        fitted.ahead().sum(),
        fitted.ahead().lead(),
        fitted.ahead().first());
  }
}
