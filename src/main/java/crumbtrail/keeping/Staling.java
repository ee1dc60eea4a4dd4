package crumbtrail.keeping;

/**
 * How fast bread stales at the temperature at which it is kept, against a room of 21 °C.
 *
 * <p>Crumb firms as starch crystallises, {@code 1 - exp(-k t)}, and k falls steadily from 30 to 90
 * °F while the end is the same (Cornford, Axford and Elton, Cereal Chem 41:216, 1964, abstract; the
 * four time constants of that paper are from memory). Firming is fastest a few degrees below
 * freezing and fades at lower temperatures (Katz, as reported in 1920); in the freezer nothing of
 * it was found (Bárcenas and others 2003). Sources differ by a factor of three on how much faster a
 * refrigerator is: use the rank with trust, the factor with its limits. Fat lowers the firmness in
 * the end but not the rate; drying of unwrapped bread comes on top and is not in here.
 */
public final class Staling {
  /** The room against which rates are given, °C. */
  public static final double ROOM = 21;

  // From memory of the paper's time constants: 1.37 d at -1 °C, 2.48 at 10, 3.68 at 21, 5.59 at 32.
  private static final double FALL = 0.0425;
  private static final double ROOM_DAYS = 3.68;

  // Where freezing stops it: our choice between Katz's greatest rate and a freezer of -18 °C.
  private static final double FREEZE_HALF = -8;
  private static final double FREEZE_WIDTH = 1.5;

  // A refrigerator is said to be six times as fast as a room (trade pages); the paper's constants
  // say twice, and the least that still agrees with "faster" is one and a half.
  private static final double FRIDGE = 4;
  private static final double FRIDGE_LOW = 1.5;
  private static final double FRIDGE_HIGH = 6;

  private Staling() {}

  /**
   * A rate with its limits.
   *
   * @param value best single value
   * @param low smallest plausible value
   * @param high largest plausible value
   */
  public record Rate(double value, double low, double high) {}

  /**
   * Rate of firming at a temperature.
   *
   * @param celsius where the bread is kept
   * @return days at 21 °C that one day there is worth; 1 at 21 °C
   */
  public static double at(double celsius) {
    return raw(celsius) / raw(ROOM);
  }

  /** Rate of firming with the limits between which sources differ. */
  public static Rate rate(double celsius) {
    double value = at(celsius);
    double fridge = Math.log(at(FRIDGE));
    double slow = Math.log(FRIDGE_LOW) / fridge;
    double fast = Math.log(FRIDGE_HIGH) / fridge;
    // Below freezing the limits follow the value down; above it they part with the distance from
    // the room.
    double thawed = value / frozen(celsius);
    double one = Math.pow(thawed, slow) * frozen(celsius);
    double other = Math.pow(thawed, fast) * frozen(celsius);
    return new Rate(value, Math.min(one, other), Math.max(one, other));
  }

  /**
   * How far the crumb has gone towards its final firmness.
   *
   * @param roomDays days at 21 °C or their equal
   * @return 0 to 1
   */
  public static double firmed(double roomDays) {
    return -Math.expm1(-Math.max(0, roomDays) / ROOM_DAYS);
  }

  /** Whether the published range, 30 to 90 °F, or a freezer holds the temperature. */
  public static boolean covers(double celsius) {
    return celsius >= -30 && celsius <= 32.5;
  }

  private static double raw(double celsius) {
    return Math.exp(-FALL * celsius) * frozen(celsius);
  }

  private static double frozen(double celsius) {
    return 1 / (1 + Math.exp((FREEZE_HALF - celsius) / FREEZE_WIDTH));
  }
}
