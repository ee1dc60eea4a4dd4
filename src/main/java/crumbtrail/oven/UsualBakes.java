package crumbtrail.oven;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Minutes that the model gives the usual bakes of the styles. A style has one usual piece and oven,
 * and every sheet of that style asks for the same bake; it is kept, as the answer cannot change.
 */
final class UsualBakes {
  // Far more than there are styles. What comes after is worked out each time.
  private static final int MOST = 512;

  private static final Map<Usual, Double> KNOWN = new ConcurrentHashMap<>();

  private UsualBakes() {}

  private record Usual(double celsius, double grams) {}

  /** Minutes for a free-standing loaf of a weight in an oven of a temperature at the sea. */
  static double minutes(double celsius, double grams) {
    Usual usual = new Usual(celsius, grams);
    Double known = KNOWN.get(usual);
    if (known != null) {
      return known;
    }
    double minutes = BakeTime.minutes(Loaf.hearth(grams), OvenStage.still(0, celsius), 0);
    if (KNOWN.size() < MOST) {
      KNOWN.put(usual, minutes);
    }
    return minutes;
  }
}
