package crumbtrail.quantity;

/**
 * A quantity as a baker wrote it: the words, the unit they used, and the value with its spread.
 *
 * @param written the words as they stood on the sheet
 * @param unit the unit that was written
 * @param low the smallest plausible value, in the base unit of the dimension
 * @param value the best single value, in the base unit of the dimension
 * @param high the largest plausible value, in the base unit of the dimension
 */
public record Quantity(String written, Unit unit, double low, double value, double high) {

  public Quantity {
    if (!(low <= value && value <= high)) {
      throw new IllegalArgumentException(
          "low, value, high must rise: " + low + " " + value + " " + high);
    }
  }

  /** What this quantity measures. */
  public Dimension dimension() {
    return unit.dimension();
  }

  /** Half the distance between the largest and the smallest plausible value, in the base unit. */
  public double spread() {
    return (high - low) / 2;
  }
}
