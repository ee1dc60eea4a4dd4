package crumbtrail.quantity;

import java.util.Optional;

/**
 * What a scanner found, before anyone has asked whether it can be true.
 *
 * @param unit the unit written; {@link Unit#PIECE} for a bare number
 * @param bare whether no unit was written
 */
record Measured(Unit unit, double low, double value, double high, boolean bare) {

  static Measured of(NumberScanner.Num number, Unit unit, boolean bare) {
    return new Measured(
        unit,
        unit.toBase(number.low()),
        unit.toBase(number.value()),
        unit.toBase(number.high()),
        bare);
  }

  Measured plus(double base) {
    return new Measured(unit, low + base, value + base, high + base, bare);
  }

  Measured plus(Measured more) {
    return new Measured(unit, low + more.low, value + more.value, high + more.high, bare);
  }

  /** The range from the smaller end of either to the larger end of either. */
  Measured to(Measured other) {
    double bottom = Math.min(low, other.low);
    double top = Math.max(high, other.high);
    return new Measured(unit, bottom, bottom + (top - bottom) / 2, top, bare);
  }

  double width() {
    return high - low;
  }

  /** Widens the range to at least these limits. */
  Measured within(double bottom, double top) {
    return new Measured(unit, Math.min(low, bottom), value, Math.max(high, top), bare);
  }

  /** Says why the values cannot be true, or nothing when they can. */
  Optional<String> implausible() {
    if (!(Double.isFinite(low) && Double.isFinite(value) && Double.isFinite(high))) {
      return Optional.of("is a number too large to be meant");
    }
    if (unit.dimension() == Dimension.TEMPERATURE) {
      if (low < -60) {
        return Optional.of("is colder than any freezer");
      }
      return high > 700 ? Optional.of("is hotter than any oven") : Optional.empty();
    }
    if (low < 0) {
      return Optional.of("is negative");
    }
    if (high > 0 && high < SMALLEST) {
      return Optional.of("is too little to be meant");
    }
    return high > largest(unit.dimension())
        ? Optional.of("is far more than any bake needs")
        : Optional.empty();
  }

  /** A tenth of a milligram, a hundredth of a second: less is a slip of the pen. Our choice. */
  private static final double SMALLEST = 1e-4;

  /** Limits of what is believed, wide enough for a bakery: our choice. */
  private static double largest(Dimension dimension) {
    return switch (dimension) {
      case MASS, VOLUME -> 2e6;
      case COUNT -> 1e4;
      case TEMPERATURE -> 700;
      case TIME -> 2 * 366 * 1440.0;
      case LENGTH -> 9e6;
      case PERCENT -> 1000;
    };
  }
}
