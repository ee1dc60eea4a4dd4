package crumbtrail.dough;

/**
 * A stretch of time that a dough spends at one temperature of its own.
 *
 * @param minutes how long, 0 or more
 * @param celsius temperature of the dough
 */
public record Stretch(double minutes, double celsius) {
  /**
   * @throws IllegalArgumentException for negative or unknown time, or unknown temperature
   */
  public Stretch {
    if (!(minutes >= 0) || Double.isInfinite(minutes) || !Double.isFinite(celsius)) {
      throw new IllegalArgumentException("no stretch: " + minutes + " min at " + celsius + " °C");
    }
  }

  /** Length in hours. */
  public double hours() {
    return minutes / 60;
  }
}
