package crumbtrail.workup;

import java.util.List;

/**
 * What the dough did between the end of mixing and the oven. Minute 0 is the end of mixing.
 *
 * @param points in order of time, all numbers finite; may be empty
 * @param spans the stages, in order of time, without overlap; gaps are allowed
 * @param marks when something was ready
 * @param assumed whether what decides the course (leavening, temperatures or times) was assumed
 */
public record RiseCourse(List<Point> points, List<Span> spans, List<Mark> marks, boolean assumed) {
  public RiseCourse {
    points = List.copyOf(points);
    spans = List.copyOf(spans);
    marks = List.copyOf(marks);
  }

  /**
   * The dough at one moment.
   *
   * @param minute after the end of mixing
   * @param rise volume over the volume after mixing: 1 is not risen at all
   * @param celsius temperature of the dough, °C
   */
  public record Point(double minute, double rise, double celsius) {}

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
   * @param minute when
   * @param beyond whether it would only have been ready after its stage had ended
   */
  public record Mark(String name, double minute, boolean beyond) {}
}
