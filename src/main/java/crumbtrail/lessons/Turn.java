package crumbtrail.lessons;

import crumbtrail.knowledge.KnobKind;
import crumbtrail.quantity.Dimension;
import crumbtrail.quantity.Quantities;
import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.Problem;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A knob and how far it is turned, from low to high.
 *
 * @param knob what is turned
 * @param low smallest value, in the knob's unit
 * @param high largest value, above low
 */
public record Turn(KnobKind knob, double low, double high) {
  private static final Pattern BETWEEN =
      Pattern.compile("\\.{2,}|…|–|—|\\s+to\\s+|(?<=[\\d%CFhdgm])\\s*-\\s*(?=\\d)");
  private static final Pattern END = Pattern.compile("(-?[0-9]+(?:[.,][0-9]+)?)\\s*(\\S.*)?");
  private static final int LONGEST = 80;

  /** Units that knobs have, what they measure, and how many base units are in one. */
  private static final Map<String, Dimension> DIMENSIONS =
      Map.of(
          "%", Dimension.PERCENT,
          "C", Dimension.TEMPERATURE,
          "min", Dimension.TIME,
          "h", Dimension.TIME,
          "d", Dimension.TIME,
          "g", Dimension.MASS,
          "m", Dimension.LENGTH);

  private static final Map<String, Double> SIZES = Map.of("h", 60.0, "d", 1440.0, "m", 1000.0);

  /**
   * A range as typed, or what is wrong with it.
   *
   * @param turn empty if there is a problem
   */
  public record Reading(Optional<Turn> turn, List<Problem> problems) {}

  /**
   * Reads "0..3%", "0-3 %", "20 C to 32 C", "68..90 F", "30 min..2 h". A unit that stands only at
   * the end counts for both ends; without any, the knob's own counts.
   */
  public static Reading read(KnobKind knob, String text) {
    String[] ends = text.length() > LONGEST ? new String[0] : BETWEEN.split(text.strip(), -1);
    if (ends.length != 2) {
      return refused(knob, "\"" + shown(text) + "\" is no range");
    }
    Matcher low = END.matcher(ends[0].strip());
    Matcher high = END.matcher(ends[1].strip());
    if (!low.matches() || !high.matches()) {
      return refused(knob, "\"" + shown(text) + "\" is no range of two numbers");
    }
    String unit = high.group(2) == null ? knob.unit() : high.group(2);
    Optional<Double> from = value(knob, low.group(1), low.group(2) == null ? unit : low.group(2));
    Optional<Double> to = value(knob, high.group(1), unit);
    if (from.isEmpty() || to.isEmpty()) {
      return refused(knob, "\"" + shown(text) + "\" has a unit that " + knob.name() + " has not");
    }
    if (from.get() >= to.get()) {
      return refused(
          knob, "\"" + shown(text) + "\" does not rise from its first to its second end");
    }
    if (from.get() < knob.low() || to.get() > knob.high()) {
      return refused(
          knob, "\"" + shown(text) + "\" goes beyond what makes sense for " + knob.name());
    }
    return new Reading(Optional.of(new Turn(knob, from.get(), to.get())), List.of());
  }

  private static Optional<Double> value(KnobKind knob, String number, String unit) {
    double plain = Double.parseDouble(number.replace(',', '.'));
    if (unit.strip().replace("°", "").equalsIgnoreCase(knob.unit())) {
      return Optional.of(plain);
    }
    return Optional.ofNullable(DIMENSIONS.get(knob.unit()))
        .flatMap(dimension -> Quantities.read(number + " " + unit, dimension))
        .map(Quantity::value)
        .map(base -> base / SIZES.getOrDefault(knob.unit(), 1.0));
  }

  private static Reading refused(KnobKind knob, String what) {
    String remedy =
        "write a low and a high end between "
            + Numbers.plain(knob.low())
            + " and "
            + Numbers.plain(knob.high())
            + " "
            + knob.unit()
            + ", like "
            + example(knob);
    return new Reading(Optional.empty(), List.of(new Problem(knob.key(), what, remedy)));
  }

  private static String shown(String text) {
    String line = text.strip().replaceAll("\\s+", " ");
    return line.length() <= LONGEST ? line : line.substring(0, LONGEST) + "…";
  }

  /**
   * From half to one and a half times a value, as far as the knob goes; all of it around nought.
   */
  public static Turn around(KnobKind knob, double own) {
    double low = knob.settable(own * 0.5);
    double high = knob.settable(own * 1.5);
    return own > 0 && high - low >= 2 * knob.step()
        ? new Turn(knob, low, high)
        : new Turn(knob, knob.low(), knob.high());
  }

  /** The range as a baker would write it: "0..5%". */
  public String written() {
    return String.format(
        Locale.ROOT,
        "%s..%s%s",
        Numbers.plain(low),
        Numbers.plain(high),
        knob.unit().equals("%") ? "%" : " " + knob.unit());
  }

  /** All that the knob can be turned, as a baker would write it: "0..5%". */
  public static String example(KnobKind knob) {
    return new Turn(knob, knob.low(), knob.high()).written();
  }

  /** A value of this knob with its unit. */
  public String told(double value) {
    return Numbers.plain(value) + " " + (knob.unit().equals("C") ? "°C" : knob.unit());
  }
}
