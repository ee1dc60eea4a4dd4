package crumbtrail.vessel;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Tins with published volumes, by the names that bakers use. Tins named by a weight of bread follow
 * no standard: makers differ by half either way, and the spread says so.
 *
 * <p>Sources: list of a baking site by way of cooking.stackexchange 64270 (American tins, rounded
 * to cups); wordloaf, Size matters (the measured 8.5 in tin and the small lidded one); vizaca.co.uk
 * and middlebread.com (British tins).
 */
public final class CommonTins {
  private static final double MATCH = 8; // mm: half of the step between the inch sizes

  private static final List<Named> ALL =
      List.of(
          new Named("1 lb loaf tin", 180, 100, 600, 700, 1000),
          new Named("8 x 4 in loaf tin", 203, 102, 948, 1100, 1250),
          new Named("8.5 x 4.5 in loaf tin", 216, 114, 1360, 1440, 1500),
          new Named("2 lb loaf tin", 240, 125, 1200, 1700, 2500),
          new Named("9 x 5 in loaf tin", 229, 127, 1800, 1900, 2050),
          new Named("9 x 4 x 4 in lidded tin", 229, 102, 2250, 2360, 2400),
          new Named("13 x 4 x 4 in lidded tin", 330, 102, 3250, 3408, 3450));

  private static final Pattern POUNDS =
      Pattern.compile("\\b(1|one|2|two)[ -]?(?:lb|pound)s?\\b", Pattern.CASE_INSENSITIVE);

  private CommonTins() {}

  /**
   * @param name as bakers call it
   * @param length at the rim, mm
   * @param width at the rim, mm
   * @param low smallest published volume of tins of this name, ml
   * @param volume likeliest, ml
   * @param high largest, ml
   */
  public record Named(
      String name, double length, double width, double low, double volume, double high) {}

  /** All of them, smallest first. */
  public static List<Named> all() {
    return ALL;
  }

  /** The tin that words such as "a 2 lb tin" or "one-pound loaf tin" name. */
  public static Optional<Named> named(String words) {
    var pounds = POUNDS.matcher(words);
    if (!pounds.find()) {
      return Optional.empty();
    }
    String number = pounds.group(1).toLowerCase(Locale.ROOT);
    boolean one = number.equals("1") || number.equals("one");
    return Optional.of(ALL.get(one ? 0 : 3));
  }

  /** The tin that two lengths without a height name: "9 x 5 in". Lengths in mm. */
  public static Optional<Named> named(double length, double width) {
    return ALL.stream()
        .filter(tin -> tin.name().contains(" in loaf"))
        .filter(
            tin -> Math.abs(tin.length() - length) < MATCH && Math.abs(tin.width() - width) < MATCH)
        .min(
            Comparator.comparingDouble(
                tin -> Math.hypot(tin.length() - length, tin.width() - width)));
  }

  /**
   * The tin that fits a dough best, by the ratio of the volumes; empty if even that one is off by
   * more than a third.
   *
   * @param grams dough
   * @param room cm³/g that the loaf is to have
   */
  public static Optional<Named> fitting(double grams, double room) {
    double wanted = grams * room;
    return ALL.stream()
        .min(Comparator.comparingDouble(tin -> Math.abs(Math.log(tin.volume() / wanted))))
        .filter(tin -> Math.abs(Math.log(tin.volume() / wanted)) < Math.log(4.0 / 3));
  }
}
