package crumbtrail.oven;

/**
 * One part of a bake.
 *
 * @param minutes how long, not negative
 * @param celsius oven temperature
 * @param fan whether a fan moves the air
 * @param lid whether a lid keeps the vapour in
 */
public record OvenStage(double minutes, double celsius, boolean fan, boolean lid) {
  /** Still air, no lid. */
  public static OvenStage still(double minutes, double celsius) {
    return new OvenStage(minutes, celsius, false, false);
  }
}
