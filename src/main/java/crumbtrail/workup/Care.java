package crumbtrail.workup;

/**
 * How much care a workup takes of the oven, whose model is by far the dearest, and whether it draws
 * the courses of rise and bake.
 */
public enum Care {
  /** As the report shows it, courses and all. */
  FULL(1),
  /**
   * As one of some hundred draws: pieces that differ by a fiftieth of their weight, by two points
   * of water or by a degree are one bake. The draws themselves lie wider apart, as often above
   * their bake as below it, and the model is good to five degrees of the core (BakeGridTest).
   */
  DRAWN(4),
  /** Nothing is baked: enough for what happens to the dough before. */
  UNBAKED(0);

  private final double grid;

  Care(double grid) {
    this.grid = grid;
  }

  /** How much wider the grid of pieces is than that of the report; 0 where nothing is baked. */
  double grid() {
    return grid;
  }

  /** Whether the courses are drawn, at which nobody but the reader of the report looks. */
  boolean drawsCourses() {
    return this == FULL;
  }
}
