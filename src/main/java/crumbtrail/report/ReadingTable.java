package crumbtrail.report;

import crumbtrail.quantity.Amounts;
import crumbtrail.report.Report.WorkedReading;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The readings under their headings, in words; rows that say nothing are left out. */
public final class ReadingTable {
  // Said twice if both are the same number: the first adds nothing to the second.
  private static final Map<String, String> TWINS =
      Map.of(
          "total water", "hydration",
          "piece weight", "dough weight",
          "oven mean", "oven temperature");

  private ReadingTable() {}

  /** Writes numbers in the units of whoever reads them. */
  public interface Scale {
    /** A number that is known to half a spread either way, with its unit. */
    String quantity(double value, double half, String unit);

    /** A range with its unit. */
    String range(double low, double high, String unit);

    /** What a quantity may as well be, without its unit; empty where both ends read the same. */
    String spread(double low, double high, String unit);
  }

  /** The units of the readings themselves. */
  private static final Scale AS_THEY_ARE =
      new Scale() {
        @Override
        public String quantity(double value, double half, String unit) {
          return Amounts.quantity(value, half, unit);
        }

        @Override
        public String range(double low, double high, String unit) {
          return Amounts.range(low, high, unit);
        }

        @Override
        public String spread(double low, double high, String unit) {
          return Amounts.spread(low, high, unit);
        }
      };

  /** Readings under one heading, in the order of the catalogue. */
  public record Group(String name, List<Row> rows) {}

  /**
   * One reading.
   *
   * @param value with unit: "1.2 %"
   * @param spread what it may as well be, "1.1–1.3", or empty
   * @param usual the usual range with unit, or empty
   * @param lies where the value lies against it: "below", "within", "above" or empty
   * @param known how it is known
   * @param usualSource source of the usual range, or empty
   * @param what what the number means
   */
  public record Row(
      String name,
      String value,
      String spread,
      String usual,
      String lies,
      String known,
      String usualSource,
      String what) {}

  /** The table; empty without readings. */
  public static List<Group> of(Map<String, WorkedReading> workup) {
    return of(workup, AS_THEY_ARE);
  }

  /** The table in these units. */
  public static List<Group> of(Map<String, WorkedReading> workup, Scale scale) {
    Map<String, List<Row>> groups = new LinkedHashMap<>();
    workup.forEach(
        (name, reading) -> {
          if (!idle(name, reading, workup)) {
            String group = orEmpty(reading.group()).isEmpty() ? "other" : reading.group();
            groups.computeIfAbsent(group, key -> new ArrayList<>()).add(row(name, reading, scale));
          }
        });
    return groups.entrySet().stream()
        .map(group -> new Group(group.getKey(), List.copyOf(group.getValue())))
        .toList();
  }

  private static boolean idle(
      String name, WorkedReading reading, Map<String, WorkedReading> workup) {
    if (outside(reading)) {
      return false;
    }
    WorkedReading twin = workup.get(TWINS.getOrDefault(name, ""));
    boolean repeats = twin != null && twin.value() == reading.value();
    // None of it in the dough, and nobody says otherwise or misses it.
    boolean none = reading.value() == 0 && !reading.known().equals("measured");
    return none || repeats;
  }

  private static boolean outside(WorkedReading reading) {
    String lies = lies(reading);
    return lies.equals("below") || lies.equals("above");
  }

  private static Row row(String name, WorkedReading reading, Scale scale) {
    String unit = orEmpty(reading.unit());
    boolean usual = reading.usualLow() != null && reading.usualHigh() != null;
    return new Row(
        name.replace('-', ' '),
        scale.quantity(reading.value(), (reading.high() - reading.low()) / 2, unit),
        scale.spread(reading.low(), reading.high(), unit),
        usual ? scale.range(reading.usualLow(), reading.usualHigh(), unit) : "",
        lies(reading),
        reading.known(),
        orEmpty(reading.usualSource()),
        orEmpty(reading.what()));
  }

  private static String lies(WorkedReading reading) {
    if (reading.usualLow() == null || reading.usualHigh() == null) {
      return "";
    }
    if (reading.value() < reading.usualLow()) {
      return "below";
    }
    return reading.value() > reading.usualHigh() ? "above" : "within";
  }

  private static String orEmpty(String text) {
    return text == null ? "" : text;
  }
}
