package crumbtrail.dough;

/**
 * A place in which a dough stands for a while.
 *
 * @param minutes how long, not negative
 * @param celsius temperature of the place
 * @param transfer heat transfer to the outside of the vessel or dough, W/(m² K), convection and
 *     radiation together, for a dull surface
 */
public record Surroundings(double minutes, double celsius, double transfer) {
  /**
   * A kitchen without draught: free convection 3 to 4 and radiation near 5 W/(m² K) (engineering
   * handbooks, from memory).
   */
  public static final double STILL_AIR = 8;

  /** A household refrigerator, its air nearly still and its load close by (our choice). */
  public static final double FRIDGE = 7;

  /** A walk-in cooler or retarder with its fan (handbooks for slow forced air, from memory). */
  public static final double RETARDER = 12;

  /** A proofing cabinet with moving moist air (as for the retarder, from memory). */
  public static final double PROOFER = 12;

  public Surroundings {
    if (!(minutes >= 0 && transfer > 0 && Double.isFinite(celsius))) {
      throw new IllegalArgumentException(
          "a stay has a time, a temperature and a transfer above 0, not "
              + minutes
              + " min, "
              + celsius
              + " °C, "
              + transfer
              + " W/(m² K)");
    }
  }

  /** A stay in still air. */
  public static Surroundings still(double minutes, double celsius) {
    return new Surroundings(minutes, celsius, STILL_AIR);
  }

  /** The same place for another time. */
  public Surroundings lasting(double otherMinutes) {
    return new Surroundings(otherMinutes, celsius, transfer);
  }

  /** Whether the model was made for such a place: liquid dough, air rather than water around it. */
  public boolean covered() {
    return celsius >= -5 && celsius <= 60 && transfer >= 2 && transfer <= 50;
  }
}
