package crumbtrail.workup;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.ReadingKind;
import crumbtrail.knowledge.Style;
import crumbtrail.quantity.Quantity;
import crumbtrail.workup.Reading.Known;
import crumbtrail.workup.Reading.Scale;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Gathers the readings of one bake, each in the unit of its kind and beside the usual range of the
 * style.
 */
final class ReadingList {
  /** As many as a bake may have, with air between them. */
  private static final int ROOM = 192;

  private final Catalogue catalogue;
  private final Style style;
  private final Map<String, Reading> readings = new LinkedHashMap<>(ROOM);

  ReadingList(Catalogue catalogue, Style style) {
    this.catalogue = catalogue;
    this.style = style;
  }

  Style style() {
    return style;
  }

  List<Reading> all() {
    return List.copyOf(readings.values());
  }

  Optional<Reading> get(String name) {
    return Optional.ofNullable(readings.get(name));
  }

  /** Takes a quantity that the baker states; nothing if there is none. */
  void measured(String name, Optional<Quantity> quantity) {
    if (quantity.isPresent()) {
      Quantity told = quantity.get();
      double factor = 1 / inBase(kind(name).unit());
      put(name, told.value() * factor, told.low() * factor, told.high() * factor, Known.MEASURED);
    }
  }

  /**
   * Takes a number. Numbers that are not finite say nothing and are left out.
   *
   * @param name must be a reading of the catalogue
   */
  void put(String name, double value, double low, double high, Known known) {
    ReadingKind kind = kind(name);
    if (Double.isFinite(value) && Double.isFinite(low) && Double.isFinite(high)) {
      readings.put(
          name,
          Reading.of(
              name,
              value,
              Math.min(low, value),
              Math.max(high, value),
              known,
              style.range(name).or(() -> Optional.ofNullable(kind.usual())),
              scale(kind)));
    }
  }

  private static Scale scale(ReadingKind kind) {
    if (kind.unit().equals("points") || kind.name().endsWith("margin")) {
      return Scale.DIFFERENCE;
    }
    return kind.unit().equals("C") ? Scale.DEGREES : Scale.AMOUNT;
  }

  /** Takes a number with a relative spread: 0.2 stands for 20 % up and down. */
  void put(String name, double value, double relativeSpread, Known known) {
    double spread = Math.abs(value) * relativeSpread;
    put(name, value, value - spread, value + spread, known);
  }

  private ReadingKind kind(String name) {
    return catalogue
        .reading(name)
        .orElseThrow(
            () -> new IllegalStateException("readings.yaml does not list \"" + name + "\""));
  }

  // How many base units of the quantity package go into one unit of a reading.
  private static double inBase(String unit) {
    return switch (unit) {
      case "h" -> 60;
      case "d" -> 24 * 60;
      case "m" -> 1000;
      default -> 1;
    };
  }
}
