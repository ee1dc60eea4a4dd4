package crumbtrail.web;

import crumbtrail.advice.Instead;
import crumbtrail.advice.Wish;
import crumbtrail.quantity.Dimension;
import crumbtrail.quantity.Quantities;
import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.Vessels;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a baker wants of the next bake, as it was typed, with the sheet of the bake before it. The
 * server keeps nothing, so the form carries the sheet along.
 *
 * @param sheet the bake sheet as JSON, as it came; may be anything
 * @param fields the fields in the order of the page
 * @param single whether only one change is to be made
 * @param wish what could be read of it
 */
public record WishForm(String sheet, List<Field> fields, boolean single, Wish wish) {
  /** Names of the form: the sheet, and the box for one change only. */
  static final String SHEET = "sheet";

  static final String SINGLE = "one";

  private static final Pattern CLOCK = Pattern.compile("(\\d{1,2})[:.](\\d{2})(?::\\d{2})?");
  private static final double MINUTES_MOST = 72 * 60;
  private static final double NIGHTS_MOST = 120 * 60;
  private static final double GRAMS_LEAST = 20;
  private static final double GRAMS_MOST = 1_000_000;
  private static final String START = "start";
  private static final String READY = "ready";
  private static final String DOUGH = "dough";

  /**
   * A field ready to be drawn.
   *
   * @param kind type of the input element
   * @param fault what is wrong with it, in a sentence, or empty
   */
  public record Field(
      String name, String label, String hint, String kind, String typed, String fault) {

    /** Id in the page; other fields there have ids of their own. */
    public String id() {
      return "wish-" + name;
    }

    /** The ids of the texts that describe it, for screen readers; null if there are none. */
    public String describedBy() {
      String ids =
          (hint.isEmpty() ? "" : id() + "-hint ") + (fault.isEmpty() ? "" : id() + "-fault");
      return ids.isEmpty() ? null : ids.strip();
    }
  }

  public WishForm {
    fields = List.copyOf(fields);
  }

  /** Nothing wished yet. */
  static WishForm blank(String sheet, Texts t) {
    return of(Map.of(SHEET, sheet), t);
  }

  /** Reads the fields of a form by name. */
  static WishForm of(Map<String, String> typed, Texts t) {
    Reader reader = new Reader(typed, t);
    Optional<LocalTime> start = reader.clock(START);
    Optional<LocalTime> ready = reader.clock(READY);
    OptionalDouble bulk =
        reader.amount("bulk", Dimension.TIME, 5, MINUTES_MOST, t.of("wish.duration.fault"));
    OptionalDouble proof =
        reader.amount("proof", Dimension.TIME, 5, MINUTES_MOST, t.of("wish.duration.fault"));
    OptionalDouble overnight =
        reader.amount("overnight", Dimension.TIME, 60, NIGHTS_MOST, t.of("wish.overnight.fault"));
    OptionalDouble dough =
        reader.amount(DOUGH, Dimension.MASS, GRAMS_LEAST, GRAMS_MOST, t.of("wish.dough.fault"));
    Optional<Integer> loaves =
        reader.read(
            "loaves",
            text ->
                text.matches("\\d{1,3}")
                        && Integer.parseInt(text) >= 1
                        && Integer.parseInt(text) <= Wish.MOST_LOAVES
                    ? Optional.of(Integer.valueOf(text))
                    : Optional.empty(),
            t.of("wish.loaves.fault", Wish.MOST_LOAVES));
    Optional<String> tin =
        reader.read(
            "tin", text -> Optional.of(text).filter(Vessels::readable), t.of("wish.tin.fault"));
    Optional<List<Instead>> instead =
        reader.read("instead", Instead::read, t.of("wish.instead.fault", Instead.WOULD_DO));
    boolean single = !typed.getOrDefault(SINGLE, "").isBlank();
    OptionalDouble hours =
        overnight.isPresent() ? OptionalDouble.of(overnight.getAsDouble() / 60) : overnight;
    return new WishForm(
        typed.getOrDefault(SHEET, ""),
        reader.fields,
        single,
        new Wish(
            start,
            ready,
            bulk,
            proof,
            hours,
            dough,
            loaves.map(OptionalInt::of).orElse(OptionalInt.empty()),
            tin,
            instead.orElse(List.of()),
            single));
  }

  /** Fields with something wrong about them. */
  public List<Field> faults() {
    return fields.stream().filter(field -> !field.fault().isEmpty()).toList();
  }

  private static final class Reader {
    private final Map<String, String> typed;
    private final Texts t;
    private final List<Field> fields = new ArrayList<>();

    Reader(Map<String, String> typed, Texts t) {
      this.typed = new LinkedHashMap<>(typed);
      this.t = t;
    }

    Optional<LocalTime> clock(String name) {
      String text = typed.getOrDefault(name, "").strip();
      Matcher matcher = CLOCK.matcher(text);
      Optional<LocalTime> time = Optional.empty();
      if (matcher.matches()) {
        int hour = Integer.parseInt(matcher.group(1));
        int minute = Integer.parseInt(matcher.group(2));
        time = hour < 24 && minute < 60 ? Optional.of(LocalTime.of(hour, minute)) : time;
      }
      String fault = text.isEmpty() || time.isPresent() ? "" : t.of("wish.clock.fault");
      add(name, "time", text, fault);
      return time;
    }

    <T> Optional<T> read(String name, Function<String, Optional<T>> reads, String remedy) {
      String text = typed.getOrDefault(name, "").strip();
      Optional<T> read = text.isEmpty() ? Optional.empty() : reads.apply(text);
      String fault = text.isEmpty() || read.isPresent() ? "" : remedy;
      add(name, "text", text, fault);
      return read;
    }

    OptionalDouble amount(
        String name, Dimension dimension, double least, double most, String remedy) {
      String text = typed.getOrDefault(name, "").strip();
      Optional<Quantity> read =
          Quantities.read(text, dimension)
              .filter(one -> one.value() >= least && one.value() <= most);
      String fault = text.isEmpty() || read.isPresent() ? "" : remedy;
      add(name, "text", text, fault);
      return read.isPresent() ? OptionalDouble.of(read.get().value()) : OptionalDouble.empty();
    }

    private void add(String name, String kind, String text, String fault) {
      String key = "wish." + name;
      fields.add(new Field(name, t.of(key), t.orElse(key + ".hint", ""), kind, text, fault));
    }
  }
}
