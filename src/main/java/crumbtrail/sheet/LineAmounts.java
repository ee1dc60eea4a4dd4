package crumbtrail.sheet;

import crumbtrail.quantity.Dimension;
import crumbtrail.quantity.Quantities;
import crumbtrail.quantity.Quantity;
import crumbtrail.quantity.Scan;
import crumbtrail.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The amounts of one ingredient line, as they are found from left to right. */
final class LineAmounts {

  static final Set<Dimension> KINDS =
      EnumSet.of(Dimension.MASS, Dimension.VOLUME, Dimension.COUNT, Dimension.PERCENT);

  private static final Pattern SEPARATOR = Pattern.compile(" ?(?:[/|=;,]|or|and|- |about)? ?");
  private static final Pattern NUMBER_WORD =
      Pattern.compile("(?:an?|half|quarter|one|two|three|four|five|six|eight|ten|twelve)\\b.*");
  private static final List<Dimension> STRONGEST_FIRST =
      List.of(Dimension.MASS, Dimension.VOLUME, Dimension.COUNT, Dimension.PERCENT);

  private final Map<Dimension, Quantity> found = new EnumMap<>(Dimension.class);
  private final List<Quantity> again = new ArrayList<>();
  private boolean bareCount;

  /** Keeps an amount; a second one of the same kind is only kept beside the first. */
  void keep(Quantity quantity, boolean bare) {
    if (found.putIfAbsent(quantity.dimension(), quantity) != null) {
      again.add(quantity);
    } else if (quantity.dimension() == Dimension.COUNT) {
      bareCount = bare;
    }
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  Optional<Quantity> of(Dimension dimension) {
    return Optional.ofNullable(found.get(dimension));
  }

  void forget(Dimension dimension) {
    found.remove(dimension);
  }

  /** Whether the only amount is a number without a unit. */
  boolean onlyBareCount() {
    return bareCount && found.size() == 1 && found.containsKey(Dimension.COUNT);
  }

  /** The amounts, the one that counts first: weight, volume, pieces, percentage of flour. */
  List<Quantity> ranked() {
    return Stream.concat(found.values().stream(), again.stream())
        .sorted(Comparator.comparingInt(q -> STRONGEST_FIRST.indexOf(q.dimension())))
        .toList();
  }

  /**
   * Reads the amounts that stand at a place, one after another: "440 g / 3 1/2 cups".
   *
   * @return where the text goes on after them; the place itself when there is none
   */
  int readAt(String text, int from, boolean bareToo) {
    Optional<Scan> first = Quantities.scan(text, from, KINDS);
    if (first.isEmpty() || (first.get().bare() && !bareToo) || first.get().start() != from) {
      return from;
    }
    keep(first.get().quantity(), first.get().bare());
    int end = first.get().end();
    boolean more = !first.get().bare();
    while (more) {
      int next = afterSeparator(text, end);
      Optional<Scan> also = Quantities.scan(text, next, KINDS);
      more =
          also.isPresent()
              && !also.get().bare()
              && also.get().quantity().dimension() != Dimension.PERCENT
              && (!found.containsKey(also.get().quantity().dimension())
                  || text.substring(end, next).matches(" ?[/|=] ?"));
      if (more) {
        keep(also.get().quantity(), false);
        end = also.get().end();
      }
    }
    return end;
  }

  private static int afterSeparator(String text, int from) {
    var matcher = SEPARATOR.matcher(text).region(from, text.length());
    return matcher.lookingAt() ? matcher.end() : from;
  }

  /** A piece of text that is nothing but amounts: "(440 g)", "(1 packet/7 g)". */
  static Optional<LineAmounts> allOf(String text) {
    LineAmounts amounts = new LineAmounts();
    int end = amounts.readAt(text, 0, false);
    return end > 0 && end >= text.length() ? Optional.of(amounts) : Optional.empty();
  }

  /** The places in a text at which an amount could start. */
  static List<Integer> places(String text) {
    List<Integer> places = new ArrayList<>();
    for (int i = 1; i < text.length(); i++) {
      char before = text.charAt(i - 1);
      boolean start = !Character.isLetterOrDigit(before) && "./,".indexOf(before) < 0;
      char c = text.charAt(i);
      boolean number = Character.isDigit(c) || "~.".indexOf(c) >= 0;
      if (start && (number || NUMBER_WORD.matcher(text.substring(i)).matches())) {
        places.add(i);
      }
    }
    return places;
  }

  /** So many times an amount, keeping the words: "2 (7 g) packets". */
  static Quantity times(Quantity each, Quantity count, String written) {
    return new Quantity(
        written,
        each.unit(),
        each.low() * count.low(),
        each.value() * count.value(),
        each.high() * count.high());
  }

  /** So many pieces in another counted unit: the packets of "2 (7 g) packets". */
  static Quantity counted(Quantity count, Unit unit) {
    return new Quantity(count.written(), unit, count.low(), count.value(), count.high());
  }
}
