package crumbtrail.workup;

import crumbtrail.sheet.BakeSheet;

/**
 * One quantity behind a bake that is not known to a point.
 *
 * @param what the quantity as the baker wrote it, or what had to be assumed
 * @param remedy what would settle it: "Weigh the bread flour"
 * @param culprit what leaves it open, as the subject of a sentence: "your cup"
 * @param unit of the three numbers
 * @param low smallest plausible value
 * @param value the value that is reckoned with
 * @param high largest plausible value
 * @param settled the sheet with the quantity settled
 */
public record Uncertain(
    String what,
    String remedy,
    String culprit,
    String unit,
    double low,
    double value,
    double high,
    Settled settled) {

  /** Puts one value into a sheet. */
  @FunctionalInterface
  public interface Settled {
    /** The sheet in which the quantity is this, without spread. */
    BakeSheet at(BakeSheet sheet, double value);
  }

  /** The sheet in which this quantity has one value. */
  public BakeSheet settle(BakeSheet sheet, double value) {
    return settled.at(sheet, value);
  }
}
