package crumbtrail.dough;

import crumbtrail.published.Check;
import crumbtrail.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;

/** When starters, sourdoughs, poolishes and sponges are ripe. */
public final class PrefermentChecks implements PublishedChecks {
  private static final String BOOK = "The Sourdough Framework (book, CC BY-SA)";
  private static final String CHART = "a starter seller's feeding chart for 20 °C (grade C)";
  private static final String PRACTICE = "common practice";
  private static final String SET = "calibration";
  private static final double RANGE = 1.0 / 3;
  private static final String THIRD = "the third that cultures, flours and kitchens differ by";

  @Override
  public String title() {
    return "Ripeness of starters and preferments";
  }

  @Override
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    doughs(checks);
    starters(checks);
    yeasted(checks);
    growth(checks);
    return checks;
  }

  private static void doughs(List<Check> checks) {
    checks.add(hours("dough, 20 % starter, 25 °C, ready after", 5, 0.1, SET, dough(20, 25)));
    checks.add(hours("dough, 10 % starter, 25 °C, ready after", 8, 0.1, SET, dough(10, 25)));
    checks.add(hours("dough, 5 % starter, 25 °C, ready after", 12, 1, "around 12 h", dough(5, 25)));
    String hot = "on a very hot day, taken as 30 °C; five hours are its point of no return";
    checks.add(hours("dough, 10 % starter, 30 °C, ready after", 5, 1.5, hot, dough(10, 30)));
    checks.add(between("dough, 5 % starter, 30 °C, ready after", 8, 12, dough(5, 30), BOOK));
    checks.add(between("dough, 15 % starter, 20 °C, ready after", 8, 12, dough(15, 20), BOOK));
  }

  private static void starters(List<Check> checks) {
    checks.add(Check.of("starter fed 1:5:5, 25 °C", 8, starter(5, 25), "h", 0.1, SET, PRACTICE));
    checks.add(between("starter fed 1:1:1, 20 °C", 4, 6, starter(1, 20), CHART));
    checks.add(between("starter fed 1:2:2, 20 °C", 5, 8, starter(2, 20), CHART));
    checks.add(between("starter fed 1:3:3, 20 °C", 6, 10, starter(3, 20), CHART));
    checks.add(between("starter fed 1:4:4, 20 °C", 8, 12, starter(4, 20), CHART));
    checks.add(between("starter fed 1:5:5, 20 °C", 10, 14, starter(5, 20), CHART));
    checks.add(
        Check.missed(
            "starter fed 1:10:10, 20 °C, published 12 to 16",
            14,
            starter(10, 20),
            "h",
            2,
            "small seeds grow slower here than in the chart, in which twice the feed takes only"
                + " two hours more",
            CHART));
    checks.add(
        Check.of(
            "starter fed 1:5:2.5, at 25 °C (not stated)",
            6,
            solve(h -> PrefermentRipeness.starter(0.667 / 5.667, at(h, 25))),
            "h",
            2,
            THIRD,
            BOOK));
    checks.add(
        Check.of(
            "starter fed 1:5:5, in a room of 21 °C (not stated), published 12 to 14",
            13,
            starter(5, 21),
            "h",
            4,
            THIRD,
            "a baker's page on feeding (grade C)"));
  }

  private static void yeasted(List<Check> checks) {
    checks.add(
        times(
            "poolish, 0.08 % instant, 14 h at 20 °C",
            PrefermentRipeness.yeasted(0.08, 100, 0, at(14, 20)),
            0.1,
            SET + ": 0.06 to 0.1 %, 12 to 16 h",
            PRACTICE));
    checks.add(
        times(
            "poolish, 0.07 % instant, 12 h in a room of 21 °C (not stated)",
            PrefermentRipeness.yeasted(0.07, 100, 0, at(12, 21)),
            RANGE,
            THIRD,
            "a baker's post of 2008 (grade C)"));
    checks.add(
        times(
            "poolish, 0.27 % instant, 107 % water, 3.5 h in a room of 21.5 °C (not stated)",
            PrefermentRipeness.yeasted(0.27, 107, 0, at(3.5, 21.5)),
            RANGE,
            "published as bubbly and foamy, fit for use: " + THIRD,
            "Reinhart, The Bread Baker's Apprentice, as copied"));
    checks.add(
        times(
            "sponge, 2.86 % fresh on its flour, 60 % water, 3 h at 29 °C",
            PrefermentRipeness.yeasted(2 / 0.7 / 3, 60, 0, at(3, 29)),
            RANGE,
            SET + " of the power of stiffness, together with the army's; " + THIRD,
            "National Honey Board formula, bakemag"));
    checks.add(
        times(
            "army sponge, 1.25 % fresh on its flour, 67 % water, 5 h at 26 °C (not stated)",
            PrefermentRipeness.yeasted(1.25 / 3, 66.8, 0, at(5, 26)),
            RANGE,
            SET + " as above; " + THIRD,
            "US War Department, Manual for Army Bakers, 1916"));
    double poolish = solve(h -> PrefermentRipeness.yeasted(0.2, 100, 0, at(h, 20)));
    double dose =
        new BrentSolver(1e-9)
            .solve(200, y -> PrefermentRipeness.yeasted(y, 55, 0, at(poolish, 20)) - 1, 0.01, 20);
    checks.add(
        Check.missed(
            "yeast of a biga (55 % water) on that of a poolish for the same time",
            2,
            dose / 0.2,
            "times",
            0.67,
            "the sponges ask for more stiffness than this rule of thumb",
            "Gisslen, Professional Baking, 2008"));
  }

  private static void growth(List<Check> checks) {
    String by = "a baking text (foodelphi), fresh yeast at 27 °C";
    checks.add(grown("0.5 % yeast in six hours", 0.5, 88, 10, SET, by));
    checks.add(grown("2 % yeast in six hours", 2, 29, 10, SET, by));
    checks.add(grown("1.67 % yeast in six hours", 1.67, 37, 10, "two counts, added up by us", by));
  }

  private static Check grown(
      String what, double fresh, double published, double tolerance, String why, String by) {
    double instant = fresh / 3;
    Culture culture =
        Culture.sown(instant, instant, 0.25).after(6, 0.17 * CardinalGrowth.at(27), 1);
    double ours = 100 * (culture.size() / instant - 1);
    return Check.of("growth of " + what, published, ours, "%", tolerance, why, by);
  }

  private static Check hours(
      String what, double published, double tolerance, String why, double ours) {
    return Check.of(what, published, ours, "h", tolerance, why, BOOK);
  }

  private static Check between(String what, double low, double high, double ours, String by) {
    return Check.between(what, low, high, ours, "h", by);
  }

  private static Check times(String what, double ours, double tolerance, String why, String by) {
    return Check.of(what, 1, ours, "times ripe", tolerance, why, by);
  }

  private static double dough(double dose, double celsius) {
    return solve(h -> PrefermentRipeness.dough(dose, at(h, celsius)));
  }

  private static double starter(double parts, double celsius) {
    return solve(h -> PrefermentRipeness.starter(0.5 / (parts + 0.5), at(h, celsius)));
  }

  private static double solve(DoubleUnaryOperator ripeness) {
    return new BrentSolver(1e-6).solve(200, h -> ripeness.applyAsDouble(h) - 1, 0.01, 200);
  }

  private static List<Stretch> at(double hours, double celsius) {
    return List.of(new Stretch(hours * 60, celsius));
  }
}
