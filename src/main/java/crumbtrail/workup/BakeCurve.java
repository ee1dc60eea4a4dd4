package crumbtrail.workup;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Temperatures through the bake. Minute 0 is when the bread goes into the oven.
 *
 * @param points in order of time, all numbers finite; may be empty
 * @param wantedCore core temperature at which this bread is done, °C
 * @param boiling boiling point of water at the altitude, °C
 * @param setAt minute at which the crumb has set to the core
 * @param measuredCore core temperature that the baker measured at the end, °C
 * @param assumed whether what decides the curve (oven, time, size or shape) was assumed
 */
public record BakeCurve(
    List<Point> points,
    double wantedCore,
    double boiling,
    OptionalDouble setAt,
    Optional<Double> measuredCore,
    boolean assumed) {
  public BakeCurve {
    points = List.copyOf(points);
  }

  /**
   * The bread at one moment.
   *
   * @param minute after it went in
   * @param core temperature of the slowest spot, °C
   * @param crust temperature of the surface, °C
   * @param oven temperature of the oven, °C
   */
  public record Point(double minute, double core, double crust, double oven) {}
}
