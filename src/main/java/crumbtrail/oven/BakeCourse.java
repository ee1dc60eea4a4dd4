package crumbtrail.oven;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A bake as worked out.
 *
 * @param points the course, one each half minute and at the end of each stage
 * @param core temperature of the middle at the end, °C
 * @param lossPercent weight lost, percent of the dough
 * @param setAtMinute when the middle had set; empty if it did not
 * @param crustColour 0 (dough) to 1 (browned to the end: a CIE colour difference of 52)
 * @param crustTemperature of the crust's outside at the end, °C
 * @param balance heat of the bake, kJ
 * @param extrapolated whether loaf, oven or height lie outside what the model was made for
 * @param end the loaf as it leaves the oven, for {@link Cooling}
 */
public record BakeCourse(
    List<Point> points,
    double core,
    double lossPercent,
    OptionalDouble setAtMinute,
    double crustColour,
    double crustTemperature,
    Balance balance,
    boolean extrapolated,
    HotLoaf end) {

  public BakeCourse {
    points = List.copyOf(points);
  }

  /** One moment: minutes from the start; core, surface and oven in °C; loss in percent of dough. */
  public record Point(
      double minute, double core, double surface, double oven, double lossPercent) {}

  /** Heat taken up through the surface, stored in the loaf, and gone with vapour, kJ. */
  public record Balance(double taken, double stored, double vapour) {}

  /** Loss of a dough that became a loaf, percent of the dough. */
  public static double lossPercent(double doughGrams, double loafGrams) {
    return 100 * (doughGrams - loafGrams) / doughGrams;
  }

  /** Core temperature at a minute of the bake, straight lines between points, °C. */
  public double coreAt(double minute) {
    return between(minute, false);
  }

  /** Loss at a minute of the bake, percent of the dough. */
  public double lossAt(double minute) {
    return between(minute, true);
  }

  private double between(double minute, boolean loss) {
    Point before = points.get(0);
    for (Point point : points) {
      if (point.minute() >= minute) {
        double span = point.minute() - before.minute();
        double part = span > 0 ? Math.max(0, (minute - before.minute()) / span) : 1;
        double from = loss ? before.lossPercent() : before.core();
        double to = loss ? point.lossPercent() : point.core();
        return from + part * (to - from);
      }
      before = point;
    }
    return loss ? before.lossPercent() : before.core();
  }

  /** First minute at which the core was that warm; empty if it never was. */
  public OptionalDouble coreReaches(double celsius) {
    Point before = points.get(0);
    for (Point point : points) {
      if (point.core() >= celsius) {
        double rise = point.core() - before.core();
        double part = rise > 0 ? (celsius - before.core()) / rise : 1;
        return OptionalDouble.of(
            before.minute() + Math.max(0, part) * (point.minute() - before.minute()));
      }
      before = point;
    }
    return OptionalDouble.empty();
  }
}
