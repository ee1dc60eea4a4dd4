package crumbtrail.keeping;

import crumbtrail.keeping.Spoilage.Damp;
import crumbtrail.published.Check;
import crumbtrail.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;

/** Staling, mould and rope. */
public final class KeepingChecks implements PublishedChecks {
  private static final double SEEN = 1 - Math.exp(-1);

  @Override
  public String title() {
    return "Keeping: staling, mould, rope";
  }

  @Override
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    staling(checks);
    mould(checks);
    rope(checks);
    return checks;
  }

  private static void staling(List<Check> checks) {
    double[][] constants = {{-1, 1.37}, {10, 2.48}, {21, 3.68}, {32, 5.59}};
    for (double[] row : constants) {
      double days = -1 / Math.log1p(-Staling.firmed(Staling.at(row[0])));
      checks.add(
          Check.of(
              "time constant of firming at %.0f °C".formatted(row[0]),
              row[1],
              days,
              "d",
              0.35,
              "calibration: one straight line through four logarithms",
              "Cornford and others 1964, constants from memory"));
    }
    checks.add(
        Check.missed(
            "refrigerator (4 °C) against room",
            6,
            Staling.at(4),
            "times",
            2,
            "three times what the 1964 constants say; both lie within the limits of the rate",
            "trade pages (grade C)"));
    checks.add(
        Check.of(
            "upper limit for the refrigerator",
            6,
            Staling.rate(4).high(),
            "times",
            0.01,
            "set",
            "trade pages (grade C)"));
    checks.add(
        Check.of(
            "freezer (-18 °C) against room",
            0,
            Staling.at(-18),
            "times",
            0.05,
            "none was detected; a twentieth would be",
            "Bárcenas and others 2003, part-baked bread"));
    UnivariateFunction slope = celsius -> Staling.at(celsius + 0.01) - Staling.at(celsius - 0.01);
    checks.add(
        Check.of(
            "temperature of fastest staling",
            -3,
            new BrentSolver(1e-6).solve(100, slope, -8, 5),
            "°C",
            2,
            "three degrees below freezing, of which scale is not told: -3 or -1.7 °C",
            "Katz, as reported in the Manawatu Herald 1920"));
    checks.add(
        Check.of(
            "firmed after 48 h at 60 °C",
            0,
            Staling.firmed(2 * Staling.at(60)),
            "share",
            0.12,
            "quite fresh: a tenth is hardly felt; outside the model's range",
            "Katz, as reported in the Manawatu Herald 1920"));
  }

  private static void mould(List<Check> checks) {
    checks.add(
        Check.between(
            "bread without preservative in a room, mould after",
            4,
            7,
            days(d -> Spoilage.mould(d, 21, Damp.ORDINARY, 5.4)),
            "d",
            "common practice; set"));
    checks.add(
        Check.between(
            "home-made bread in a closed bag in a room, mould after",
            3,
            5,
            days(d -> Spoilage.mould(d, 21, Damp.CLOSED, 5.4)),
            "d",
            "bakers' pages (grade C)"));
    double published = Math.pow(10, 6.42 - 0.0647 * 90) / Math.pow(10, 7.91 - 0.081 * 90);
    double ours =
        days(d -> Spoilage.mould(d, 27, Damp.ORDINARY, 5.4))
            / days(d -> Spoilage.mould(d, 21, Damp.ORDINARY, 5.4));
    checks.add(
        Check.of(
            "time to mould at 27 °C on that at 21 °C, at a humidity of 90 %",
            published,
            ours,
            "times",
            0.2,
            "two lines for cakes at the upper end of their range, each good to a tenth or so",
            "mould-free shelf life of cakes: Adams and Moss (27 °C), Cauvain and Seiler as quoted"
                + " (21 °C)"));
    checks.add(
        Check.of(
            "the same, days at 27 °C",
            Math.pow(10, 6.42 - 0.0647 * 90),
            days(d -> Spoilage.mould(d, 27, Damp.ORDINARY, 5.4)),
            "d",
            1,
            "crust of bread is not told in humidity; 90 % is the driest it may be taken for",
            "Adams and Moss, Food Microbiology, as copied"));
  }

  private static void rope(List<Check> checks) {
    checks.add(
        Check.of(
            "first signs of rope at 37 °C",
            40,
            24 * days(d -> Spoilage.rope(d, 37, 5.6)),
            "h",
            1,
            "calibration",
            "Rumeus and Turtoi 2013"));
    checks.add(
        Check.between(
            "rope smells at 30 °C after",
            36,
            72,
            24 * days(d -> Spoilage.rope(d, 30, 5.6)),
            "h",
            "Foods 11:3021, 2022 (temperature not stated with it)"));
    checks.add(
        Check.of(
            "weak signs of rope at 18 °C",
            5,
            days(d -> Spoilage.rope(d, 18, 5.6)),
            "d",
            2.5,
            "signs weak at 5 days are full ones later; breads differ by half",
            "study of wheat bread with Bacillus subtilis (abstract)"));
    checks.add(
        Check.of(
            "rope in bread of pH 4.3 after 3 days at 30 °C",
            0,
            Spoilage.rope(3, 30, 4.3),
            "share",
            0.01,
            "none",
            "Foods 11:3021, 2022: risk above pH 4.6"));
  }

  private static double days(UnivariateFunction hazard) {
    return new BrentSolver(1e-6).solve(200, d -> hazard.value(d) - SEEN, 0.01, 200);
  }
}
