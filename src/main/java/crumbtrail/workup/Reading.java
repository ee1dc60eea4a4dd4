package crumbtrail.workup;

import crumbtrail.knowledge.Style;
import java.util.Optional;

/**
 * A number about a bake, and what is usual for the bread.
 *
 * @param name the name that rule sentences use
 * @param value in the unit of its kind
 * @param low smallest plausible value
 * @param high largest plausible value
 * @param known how it is known
 * @param usual the usual range for this style, if the style has one
 * @param trust from 0 to 1, how far evidence from this reading can be trusted
 * @param scale what its nought means
 */
public record Reading(
    String name,
    double value,
    double low,
    double high,
    Known known,
    Optional<Style.Range> usual,
    double trust,
    Scale scale) {

  /**
   * Differences near zero have no size of their own; their spread is held against this many units.
   */
  private static final double DIFFERENCE_SCALE = 10;

  /** Twice as far as far; our choice. */
  private static final double ALL_CUSTOM = 2;

  /** This reading, as well known as another is. */
  public Reading knownAs(Reading other) {
    return known == other.known && trust == other.trust
        ? this
        : new Reading(name, value, low, high, other.known, usual, other.trust, scale);
  }

  /**
   * A reading whose trust follows from its spread: a wide spread or an assumed value is a poor
   * witness. The slope is our choice: a spread of a third of the value halves the weight.
   *
   * @param scale what its nought means; a difference has no size of its own to hold a spread
   *     against
   */
  public static Reading of(
      String name,
      double value,
      double low,
      double high,
      Known known,
      Optional<Style.Range> usual,
      Scale scale) {
    double size = scale == Scale.DIFFERENCE ? DIFFERENCE_SCALE : Math.max(Math.abs(value), 1e-9);
    double spread = Math.min(1, (high - low) / 2 / size);
    boolean shaky = known == Known.ASSUMED || known == Known.EXTRAPOLATED;
    double sure = shaky ? 0.5 : 1;
    // However vague the measure, a value that lies outside the usual range from end to end is
    // surely outside.
    boolean surelyOutside =
        usual.isPresent() && (high < usual.get().low() || low > usual.get().high());
    double trust = sure * (surelyOutside ? 1 : Math.max(0.25, 1 - 1.5 * spread));
    return new Reading(name, value, low, high, known, usual, trust, scale);
  }

  /** Of name and value alone, which tell nearly all readings apart; asked for very often. */
  @Override
  public int hashCode() {
    return 31 * name.hashCode() + Double.hashCode(value);
  }

  /** What the nought of a scale means, and so how much lies far beyond an edge. */
  public enum Scale {
    /** Nought is nothing: a quarter of an edge beyond it is far. Our choice. */
    AMOUNT(0.25),
    /**
     * The nought of a thermometer is only a mark: some 3 degrees of a dough are far, some 20 of an
     * oven. Our choice.
     */
    DEGREES(0.1),
    /** Nought is no difference. */
    DIFFERENCE(0.25);

    private final double far;

    Scale(double far) {
      this.far = far;
    }
  }

  /** How a reading is known. */
  public enum Known {
    MEASURED("measured"),
    WORKED_OUT("worked out"),
    ASSUMED("assumed"),
    EXTRAPOLATED("beyond the model's range");

    private final String words;

    Known(String words) {
      this.words = words;
    }

    /** In plain words. */
    public String words() {
      return words;
    }
  }

  /** Where a reading lies against the usual range. */
  public enum Place {
    FAR_TOO_LOW,
    LOW,
    USUAL,
    HIGH,
    FAR_TOO_HIGH,
    UNKNOWN
  }

  /**
   * Where the value lies against the usual range: outside it by more than the half width of the
   * range, or by more than a quarter of its nearer edge, is far.
   */
  public Place place() {
    if (usual.isEmpty()) {
      return Place.UNKNOWN;
    }
    Style.Range range = usual.get();
    double tie = 1e-9 * Math.max(1, Math.abs(range.high()));
    if (value < range.low() - tie) {
      return value < range.low() - far(range, range.low()) ? Place.FAR_TOO_LOW : Place.LOW;
    }
    if (value > range.high() + tie) {
      return value > range.high() + far(range, range.high()) ? Place.FAR_TOO_HIGH : Place.HIGH;
    }
    return Place.USUAL;
  }

  /** Whether the value is below the usual range of the style. */
  public boolean belowUsual() {
    return place() == Place.LOW || place() == Place.FAR_TOO_LOW;
  }

  /** Whether the value is above the usual range of the style. */
  public boolean aboveUsual() {
    return place() == Place.HIGH || place() == Place.FAR_TOO_HIGH;
  }

  /** Whether the value is far below the usual range of the style. */
  public boolean farBelowUsual() {
    return place() == Place.FAR_TOO_LOW;
  }

  /** Whether the value is far above the usual range of the style. */
  public boolean farAboveUsual() {
    return place() == Place.FAR_TOO_HIGH;
  }

  /** Whether the value is twice as far below the usual range as what is called far. */
  public boolean belowAllCustom() {
    return usual.isPresent()
        && usual.get().low() - value > ALL_CUSTOM * far(usual.get(), usual.get().low());
  }

  /** Whether the value is twice as far above the usual range as what is called far. */
  public boolean aboveAllCustom() {
    return usual.isPresent()
        && value - usual.get().high() > ALL_CUSTOM * far(usual.get(), usual.get().high());
  }

  private double far(Style.Range range, double edge) {
    return Math.max((range.high() - range.low()) / 2, scale.far * Math.abs(edge));
  }

  /** Whether the value lies in the usual range of the style. */
  public boolean withinUsual() {
    return place() == Place.USUAL;
  }
}
