package crumbtrail.dough;

import crumbtrail.published.Check;
import crumbtrail.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;

/** Growth of yeasts and lactobacilli against temperature. */
public final class GrowthChecks implements PublishedChecks {
  private static final String ABSTRACT = "Gänzle, Ehmann, Hammes 1998 (abstract)";
  private static final String CITING = "encyclopaedia article citing Gänzle and others 1998";
  private static final String RYE = "Brandt, Hammes, Gänzle 2004 (abstract), in rye dough";
  private static final String SUMMARY = "the author's summary, rec.food.sourdough FAQ 39";
  private static final String MEMORY = "Gänzle 1998, table from memory, not read";
  private static final String WHOLE = "given in whole degrees";
  private static final String TWO = "two temperatures that the author himself gives a degree apart";

  static final Map<Integer, Double> YEAST_TABLE =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry(10, 0.033),
              Map.entry(14, 0.078),
              Map.entry(16, 0.114),
              Map.entry(18, 0.163),
              Map.entry(20, 0.225),
              Map.entry(22, 0.295),
              Map.entry(24, 0.365),
              Map.entry(26, 0.414),
              Map.entry(28, 0.417),
              Map.entry(30, 0.346),
              Map.entry(32, 0.202),
              Map.entry(34, 0.050)));

  static final Map<Integer, Double> BACTERIA_TABLE =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry(10, 0.063),
              Map.entry(14, 0.110),
              Map.entry(16, 0.144),
              Map.entry(18, 0.187),
              Map.entry(20, 0.239),
              Map.entry(22, 0.301),
              Map.entry(24, 0.374),
              Map.entry(26, 0.453),
              Map.entry(28, 0.535),
              Map.entry(30, 0.609),
              Map.entry(32, 0.658),
              Map.entry(34, 0.657),
              Map.entry(36, 0.569),
              Map.entry(38, 0.368),
              Map.entry(40, 0.122)));

  @Override
  public String title() {
    return "Growth of yeasts and lactobacilli";
  }

  @Override
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    sourdoughYeast(checks);
    lactobacilli(checks);
    bakersYeast(checks);
    return checks;
  }

  private static void sourdoughYeast(List<Check> checks) {
    DoubleUnaryOperator yeast = SourdoughGrowth::yeast;
    double best = best(yeast, 20, 34);
    checks.add(celsius("sourdough yeast, best growth", 27, best, 0.5, WHOLE, ABSTRACT));
    checks.add(celsius("sourdough yeast, best growth", 28, best, 1, TWO, SUMMARY));
    checks.add(celsius("sourdough yeast, best growth", 28, best, 1, TWO, RYE));
    checks.add(celsius("sourdough yeast, half rate below the best", 20, where(yeast, .5, 8, best)));
    checks.add(
        celsius("sourdough yeast, half rate above the best", 32, where(yeast, .5, best, 36)));
    checks.add(
        missed(
            "sourdough yeast, quarter rate below the best",
            14,
            where(yeast, .25, 8, best),
            "the summary's curve is flatter in the cold than the table"));
    checks.add(
        celsius("sourdough yeast, quarter rate above the best", 34, where(yeast, .25, best, 36)));
    checks.add(
        Check.of(
            "sourdough yeast at 35 °C against its best",
            0,
            yeast.applyAsDouble(35) / yeast.applyAsDouble(best),
            "share",
            0.05,
            "no growth means none that could be measured",
            SUMMARY + "; " + RYE));
    checks.add(celsius("sourdough yeast, no growth above", 36, 36, 0.5, WHOLE + "; set", CITING));
    double growth = yeast.applyAsDouble((75 - 32) / 1.8) / yeast.applyAsDouble((50 - 32) / 1.8);
    double doubling = (75 - 50) * Math.log(2) / Math.log(growth);
    checks.add(
        Check.of(
            "sourdough yeast doubles its rate in so many degrees, 50 to 75 °F",
            7,
            doubling,
            "°F",
            1,
            "said to be approximate; read, and drawn from the table that is here from memory",
            "rec.food.sourdough FAQ 37 (40 to 75 °F)"));
    checks.add(
        Check.of(
            "sourdough yeast, largest deviation from the table at 10 to 34 °C",
            0,
            100 * worst(yeast, YEAST_TABLE),
            "%",
            2,
            "calibration: the curve was fitted to it",
            MEMORY));
  }

  private static void lactobacilli(List<Check> checks) {
    DoubleUnaryOperator bacteria = SourdoughGrowth::bacteria;
    double best = best(bacteria, 20, 39);
    checks.add(celsius("lactobacilli, best growth", 33, best, 0.5, WHOLE, CITING));
    checks.add(celsius("lactobacilli, best growth, 32 to 33 °C", 32.5, best, 1, WHOLE, SUMMARY));
    checks.add(
        Check.missed(
            "lactobacilli, best growth",
            32,
            best,
            "°C",
            1,
            "the same author gives 32, 32 to 33 and 33 °C; missed by a tenth of a degree",
            RYE));
    checks.add(celsius("lactobacilli, no growth above", 41, 41, 0.5, WHOLE + "; set", CITING));
    String wide = "the author's table and his summary disagree; the curve follows the table";
    checks.add(
        missed("lactobacilli, half rate below the best", 20, where(bacteria, .5, 4, best), wide));
    checks.add(
        missed("lactobacilli, half rate above the best", 37, where(bacteria, .5, best, 41), wide));
    checks.add(missed("lactobacilli, quarter rate below", 15, where(bacteria, .25, 4, best), wide));
    checks.add(
        celsius("lactobacilli, quarter rate above the best", 39, where(bacteria, .25, best, 41)));
    checks.add(
        Check.of(
            "lactobacilli, largest deviation from the table at 10 to 40 °C",
            0,
            100 * worst(bacteria, BACTERIA_TABLE),
            "%",
            10,
            "calibration: fitted; the remembered table does not lie on one curve of this form",
            MEMORY));
    checks.add(
        Check.of(
            "lactobacilli with 4 % salt in the water",
            0, SourdoughGrowth.bacteriaInSalt(4), "share", 0.02, "set", ABSTRACT + "; " + RYE));
    checks.add(
        Check.of(
            "lactobacilli at pH 3.8",
            0,
            SourdoughGrowth.bacteriaAtAcidity(3.8),
            "share",
            0.02,
            "set",
            SUMMARY));
  }

  private static void bakersYeast(List<Check> checks) {
    String salvado = "Salvadó and others 2011";
    double best = best(CardinalGrowth::at, 20, 44);
    checks.add(celsius("baker's yeast, best growth", 32.3, best, 0.1, "set", salvado));
    checks.add(
        Check.of(
            "baker's yeast at 45.4 °C",
            0,
            CardinalGrowth.at(45.4),
            "share",
            0.001,
            "set",
            salvado));
    double[][] worked = {
      {5, 0.012},
      {10, 0.131},
      {15, 0.342},
      {20, 0.594},
      {24, 0.786},
      {26, 0.868},
      {28, 0.935},
      {30, 0.980},
      {35, 0.968},
      {38, 0.845},
      {40, 0.701},
      {43, 0.374},
      {45, 0.070}
    };
    for (double[] row : worked) {
      checks.add(
          Check.of(
              "baker's yeast at %.0f °C".formatted(row[0]),
              row[1],
              CardinalGrowth.at(row[0]),
              "share",
              0.001,
              "the same equation worked out by hand, to its third figure",
              "Rosso and others 1995 with the values of " + salvado));
    }
  }

  private static Check celsius(String what, double published, double ours) {
    return celsius(what, published, ours, 1, WHOLE + ", and so is its best", SUMMARY);
  }

  private static Check celsius(
      String what, double published, double ours, double tolerance, String why, String by) {
    return Check.of(what, published, ours, "°C", tolerance, why, by);
  }

  private static Check missed(String what, double published, double ours, String why) {
    return Check.missed(what, published, ours, "°C", 1, why, SUMMARY);
  }

  private static double worst(DoubleUnaryOperator curve, Map<Integer, Double> table) {
    return table.entrySet().stream()
        .mapToDouble(row -> Math.abs(curve.applyAsDouble(row.getKey()) / row.getValue() - 1))
        .max()
        .orElseThrow();
  }

  private static double best(DoubleUnaryOperator curve, double low, double high) {
    double step = 1e-3;
    return new BrentSolver(1e-9)
        .solve(
            200,
            celsius -> curve.applyAsDouble(celsius + step) - curve.applyAsDouble(celsius - step),
            low,
            high);
  }

  private static double where(DoubleUnaryOperator curve, double share, double low, double high) {
    double best = Math.max(curve.applyAsDouble(low), curve.applyAsDouble(high));
    return new BrentSolver(1e-9)
        .solve(200, celsius -> curve.applyAsDouble(celsius) - share * best, low, high);
  }
}
