package crumbtrail.workup;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How much a question wants of a workup: which readings, how finely the oven is followed, and
 * whether the courses of rise and bake are drawn. Dear steps of which nothing is wanted are left
 * out; cheap ones are always done. Immutable.
 */
public final class Care {
  /** As the report shows it, courses and all. */
  public static final Care FULL = new Care(1, null);

  private static final double DRAW = 4;

  private final double grid;
  private final @Nullable Set<String> readings;

  private Care(double grid, @Nullable Set<String> readings) {
    this.grid = grid;
    this.readings = readings;
  }

  /**
   * As one of some hundred draws: pieces that differ by a fiftieth of their weight, by two points
   * of water or by a degree are one bake. The draws themselves lie wider apart, as often above
   * their bake as below it, and the model is good to five degrees of the core (BakeGridTest).
   *
   * @param readings names of those that anyone looks at
   */
  public static Care ofDraw(Set<String> readings) {
    return new Care(DRAW, Set.copyOf(readings));
  }

  /**
   * As finely as the report, but for one reading alone.
   *
   * @param reading its name
   */
  public static Care ofOne(String reading) {
    return new Care(1, Set.of(reading));
  }

  /** How much wider the grid of pieces in the oven is than that of the report. */
  double grid() {
    return grid;
  }

  /** Whether the courses are drawn, at which nobody but the reader of the report looks. */
  boolean drawsCourses() {
    return readings == null;
  }

  /** Whether any of these readings is wanted. */
  boolean wants(String... names) {
    if (readings == null) {
      return true;
    }
    for (String name : names) {
      if (readings.contains(name)) {
        return true;
      }
    }
    return false;
  }
}
