package crumbtrail.sheet;

/** Sizes of tins and pots as bakers write them. */
public final class Vessels {
  /** What would do, in a sentence. */
  public static final String WOULD_DO =
      "Write three lengths with their unit, such as 23 x 13 x 7 cm, or what it holds, such as"
          + " 1.8 l.";

  private Vessels() {}

  /** Whether a size can be read. */
  public static boolean readable(String written) {
    return VesselSizes.read(written).isPresent();
  }
}
