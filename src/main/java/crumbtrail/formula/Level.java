package crumbtrail.formula;

/**
 * A number with its spread.
 *
 * @param value the best single value
 * @param low smallest plausible value
 * @param high largest plausible value
 * @param vague whether the measures it rests on leave it open by more than about three percent
 */
public record Level(double value, double low, double high, boolean vague) {
  /** Kitchen scales read to a gram or two, so weighed formulas stay within this share. */
  private static final double FIRM = 0.03;

  public static final Level ZERO = exact(0);

  public Level {
    if (!(low <= value && value <= high)) {
      throw new IllegalArgumentException(
          "low, value, high must rise: " + low + " " + value + " " + high);
    }
  }

  /** A level without spread. */
  public static Level exact(double value) {
    return new Level(value, value, value, false);
  }

  /** A level with this spread; vague if the spread is more than about three percent. */
  public static Level of(double low, double value, double high) {
    return new Level(value, low, high, (high - low) / 2 > FIRM * Math.abs(value) + 1e-12);
  }

  /** Spreads add: the same hand that scoops one cup full scoops the next one full. */
  public Level plus(Level other) {
    return of(low + other.low, value + other.value, high + other.high);
  }

  /** This level times a number that is not negative. */
  public Level times(double factor) {
    return of(low * factor, value * factor, high * factor);
  }

  /** This level widened to both sides. */
  public Level widened(double down, double up) {
    return of(low - down, value, high + up);
  }

  /**
   * This level as a percentage of another. The two spreads are independent, so on a scale of ratios
   * they add as squares.
   */
  public Level percentOf(Level whole) {
    double percent = value / whole.value * 100;
    double up = high / whole.value * 100;
    double down = low / whole.value * 100;
    if (value <= 0) {
      return of(0, percent, Math.max(percent, up));
    }
    double below = low <= 0 ? Double.POSITIVE_INFINITY : Math.log(percent / down);
    double above = Math.log(up / percent);
    double wholeUp = Math.log(whole.high / whole.value);
    double wholeDown =
        whole.low <= 0 ? Double.POSITIVE_INFINITY : Math.log(whole.value / whole.low);
    double top = length(above, Math.min(wholeDown, 5));
    return of(percent * Math.exp(-length(below, wholeUp)), percent, percent * Math.exp(top));
  }

  // No number here is large or small enough to want the care of hypot.
  private static double length(double one, double other) {
    return Math.sqrt(one * one + other * other);
  }

  /** As {@link #percentOf}, for a part of the whole itself: never above 100. */
  public Level shareOf(Level whole) {
    Level percent = percentOf(whole);
    double top = Math.max(percent.value, Math.min(100, percent.high));
    return of(percent.low, percent.value, top);
  }
}
