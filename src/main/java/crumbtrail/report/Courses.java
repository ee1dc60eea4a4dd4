package crumbtrail.report;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What went on in the dough and in the oven, minute by minute, as far as it can be worked out.
 * Written to JSON as it stands. All numbers are finite; minutes and °C throughout.
 *
 * @param rise from the end of mixing to the oven; null where nothing is known
 * @param bake from the oven door to the end of the bake; null where nothing is known
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Courses(@Nullable Rise rise, @Nullable Bake bake) {

  /**
   * The rise. Minute 0 is the end of mixing.
   *
   * @param points in order of time
   * @param spans the stages in order of time
   * @param marks when something was ready
   * @param assumed whether what decides the course was assumed
   */
  public record Rise(List<RisePoint> points, List<Span> spans, List<Mark> marks, boolean assumed) {}

  /**
   * The dough at one moment.
   *
   * @param rise volume over the volume after mixing
   * @param celsius temperature of the dough
   */
  public record RisePoint(double minute, double rise, double celsius) {}

  /**
   * A stage.
   *
   * @param name "bulk", "bench", "proof", "fridge"
   * @param from minute of its start
   * @param to minute of its end
   * @param place temperature of the place, °C
   */
  public record Span(String name, double from, double to, double place) {}

  /**
   * A moment at which something was ready.
   *
   * @param name "ready to shape", "ready to bake"
   * @param beyond whether it would only have been ready after its stage had ended
   */
  public record Mark(String name, double minute, boolean beyond) {}

  /**
   * The bake. Minute 0 is when the bread goes into the oven.
   *
   * @param points in order of time
   * @param wantedCore core temperature at which this bread is done
   * @param boiling boiling point of water at the altitude
   * @param setAt minute at which the crumb had set to the core; null if it did not, or is not known
   * @param measuredCore core temperature measured at the end; null if nobody measured
   * @param assumed whether what decides the curve was assumed
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Bake(
      List<BakePoint> points,
      double wantedCore,
      double boiling,
      @Nullable Double setAt,
      @Nullable Double measuredCore,
      boolean assumed) {}

  /**
   * The bread at one moment.
   *
   * @param core temperature of the slowest spot
   * @param crust temperature of the surface
   * @param oven temperature of the oven
   */
  public record BakePoint(double minute, double core, double crust, double oven) {}
}
