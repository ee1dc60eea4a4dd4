package crumbtrail.study;

import crumbtrail.bakelog.BakeLine;
import crumbtrail.bakelog.Digested;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.ReadingKind;
import crumbtrail.quantity.Amounts;
import crumbtrail.trends.ControlChart;
import crumbtrail.trends.ControlChart.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One reading through the bakes of a kitchen.
 *
 * @param reading its name
 * @param unit of all numbers
 * @param decimals digits that are worth showing
 * @param points bake by bake, the earliest first
 * @param centre their mean
 * @param lower below this a bake is out of the usual
 * @param upper above this a bake is out of the usual
 * @param signals bakes that stand out, the earliest first
 */
public record ReadingChart(
    String reading,
    String unit,
    int decimals,
    List<Point> points,
    double centre,
    double lower,
    double upper,
    List<Signal> signals) {

  public ReadingChart {
    points = List.copyOf(points);
    signals = List.copyOf(signals);
  }

  /**
   * One bake.
   *
   * @param bake its number
   * @param baked when, as 2026-03-01T14:30
   */
  public record Point(long bake, String baked, String label, double value) {}

  /**
   * A bake that stands out.
   *
   * @param bake its number
   * @param kind beyond a limit, or the last of many in a row on one side of the middle
   */
  public record Signal(long bake, String baked, double value, Kind kind) {}

  /**
   * The chart of a reading.
   *
   * @param bakes the earliest first
   * @return empty where fewer than two bakes have the reading
   */
  static Optional<ReadingChart> of(String reading, List<Digested> bakes, Catalogue catalogue) {
    Optional<ReadingKind> kind = catalogue.reading(reading);
    int decimals = kind.map(ReadingKind::decimals).orElse(1);
    List<Point> points = new ArrayList<>();
    for (Digested bake : bakes) {
      Double value = bake.digest().readings().get(reading);
      if (value != null && Double.isFinite(value)) {
        BakeLine line = bake.line();
        // What lies behind the last digit that is worth showing is no change.
        double shown = Amounts.rounded(value, decimals);
        points.add(new Point(line.id(), line.baked().toString(), line.label(), shown));
      }
    }
    if (points.size() < 2) {
      return Optional.empty();
    }
    ControlChart chart = ControlChart.of(points.stream().map(Point::value).toList());
    return Optional.of(
        new ReadingChart(
            reading,
            kind.map(ReadingKind::unit).orElse(""),
            decimals,
            points,
            chart.centre(),
            chart.lower(),
            chart.upper(),
            chart.signals().stream().map(signal -> told(signal, points)).toList()));
  }

  private static Signal told(ControlChart.Signal signal, List<Point> points) {
    Point point = points.get(signal.place());
    return new Signal(point.bake(), point.baked(), point.value(), signal.kind());
  }
}
