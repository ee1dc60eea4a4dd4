package crumbtrail.quantity;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads numbers as bakers write and say them, at the place of a cursor. */
final class NumberScanner {

  /** A number with its range; the three are equal when one number was written. */
  record Num(double low, double value, double high) {
    static Num of(double value) {
      return new Num(value, value, value);
    }

    static Num range(double a, double b) {
      double low = Math.min(a, b);
      double high = Math.max(a, b);
      return new Num(low, low + (high - low) / 2, high);
    }

    Num times(double factor) {
      return new Num(low * factor, value * factor, high * factor);
    }
  }

  private static final Map<String, Integer> COUNTING =
      Map.ofEntries(
          Map.entry("zero", 0),
          Map.entry("one", 1),
          Map.entry("two", 2),
          Map.entry("three", 3),
          Map.entry("four", 4),
          Map.entry("five", 5),
          Map.entry("six", 6),
          Map.entry("seven", 7),
          Map.entry("eight", 8),
          Map.entry("nine", 9),
          Map.entry("ten", 10),
          Map.entry("eleven", 11),
          Map.entry("twelve", 12),
          Map.entry("fifteen", 15),
          Map.entry("sixteen", 16),
          Map.entry("eighteen", 18));

  private static final Map<String, Integer> TENS =
      Map.of(
          "twenty", 20, "thirty", 30, "forty", 40, "fifty", 50, "sixty", 60, "seventy", 70,
          "eighty", 80, "ninety", 90);

  private static final Map<String, Double> PARTS =
      Map.of(
          "half", 0.5,
          "halves", 0.5,
          "third", 1.0 / 3,
          "thirds", 1.0 / 3,
          "quarter", 0.25,
          "quarters", 0.25,
          "eighth", 0.125,
          "eighths", 0.125);

  private NumberScanner() {}

  /** Reads one number or a range; leaves the cursor where it was when there is none. */
  static Optional<Num> read(TokenCursor c, boolean between) {
    Optional<Num> first = simple(c);
    if (first.isEmpty()) {
      return first;
    }
    int after = c.at();
    // The degree sign of "20°-22°C" belongs to the unit that follows later.
    c.takeMark('°');
    Optional<Num> second = Optional.empty();
    if (isPlusMinus(c)) {
      second = simple(c);
      if (second.isPresent()) {
        double middle = first.get().value();
        double width = second.get().value();
        return Optional.of(new Num(middle - width, middle, middle + width));
      }
    } else if (takeRangeMark(c, between) && !startsWithArticle(c)) {
      second = simple(c);
    }
    if (second.isPresent()) {
      return Optional.of(Num.range(first.get().low(), second.get().high()));
    }
    c.backTo(after);
    return first;
  }

  static boolean takeRangeMark(TokenCursor c, boolean between) {
    if (between && c.takeWord("and")) {
      return true;
    }
    if (c.next().isMark('.') && c.ahead(1).isMark('.')) {
      c.skip(2);
      c.takeMark('.');
      return true;
    }
    return c.takeMark('-') || c.takeWord("to") || c.takeWord("or") || c.takeWord("till");
  }

  private static boolean isPlusMinus(TokenCursor c) {
    if (c.takeMark('±')) {
      return true;
    }
    if (c.next().isMark('+') && c.ahead(1).isMark('/') && c.ahead(2).isMark('-')) {
      c.skip(3);
      return true;
    }
    return false;
  }

  private static boolean startsWithArticle(TokenCursor c) {
    return c.next().isWord("a") || c.next().isWord("an");
  }

  /** Reads one number: digits, a fraction, a mixed number, or number words. */
  static Optional<Num> simple(TokenCursor c) {
    if (c.next().isNumber()) {
      return Optional.of(Num.of(dozens(c, digits(c))));
    }
    String word = c.next().text().toLowerCase(Locale.ROOT);
    if (startsWithArticle(c)) {
      c.skip(1);
      return Optional.of(afterArticle(c));
    }
    if (word.equals("half") || word.equals("quarter")) {
      c.skip(1);
      return Optional.of(Num.of(dozens(c, PARTS.get(word))));
    }
    if (COUNTING.containsKey(word)) {
      c.skip(1);
      return Optional.of(Num.of(dozens(c, parts(c, COUNTING.get(word)))));
    }
    if (TENS.containsKey(word)) {
      c.skip(1);
      int after = c.at();
      c.takeMark('-');
      Integer ones = COUNTING.get(c.next().text().toLowerCase(Locale.ROOT));
      if (ones != null && ones >= 1 && ones <= 9) {
        c.skip(1);
        return Optional.of(Num.of(TENS.get(word) + ones));
      }
      c.backTo(after);
      return Optional.of(Num.of(TENS.get(word)));
    }
    return Optional.empty();
  }

  private static Num afterArticle(TokenCursor c) {
    Double part = PARTS.get(c.next().text().toLowerCase(Locale.ROOT));
    if (part != null) {
      c.skip(1);
      return Num.of(part);
    }
    if (c.takeWord("dozen")) {
      return Num.of(12);
    }
    if (c.takeWord("couple")) {
      return Num.of(2);
    }
    // "A few" is taken as two to four: our choice.
    return c.takeWord("few") ? new Num(2, 3, 4) : Num.of(1);
  }

  private static double digits(TokenCursor c) {
    Token whole = c.next();
    c.skip(1);
    if (!whole.isWhole()) {
      return whole.value();
    }
    if (isFractionTail(c)) {
      double below = c.ahead(1).value();
      c.skip(2);
      return whole.value() / below;
    }
    int after = c.at();
    boolean dash = c.takeMark('-');
    if (!dash && !c.takeWord("and") && !c.takeMark('&')) {
      c.takeMark('+');
    }
    if (c.next().isWhole() && c.ahead(1).isMark('/') && c.ahead(2).isWhole()) {
      double above = c.next().value();
      double below = c.ahead(2).value();
      if (above < below && (whole.value() >= 1 || !dash)) {
        c.skip(3);
        return whole.value() + above / below;
      }
    }
    c.backTo(after);
    return whole.value() + andAPart(c);
  }

  private static boolean isFractionTail(TokenCursor c) {
    return c.next().isMark('/') && c.ahead(1).isWhole() && c.ahead(1).value() > 0;
  }

  /** Reads "and a half", "and three quarters"; zero when there is none. */
  static double andAPart(TokenCursor c) {
    int before = c.at();
    if (c.takeWord("and")) {
      double count = 1;
      Integer counted = COUNTING.get(c.next().text().toLowerCase(Locale.ROOT));
      if (counted != null) {
        count = counted;
        c.skip(1);
      } else {
        c.takeWord("a");
      }
      Double part = PARTS.get(c.next().text().toLowerCase(Locale.ROOT));
      if (part != null && count * part < 1) {
        c.skip(1);
        return count * part;
      }
      c.backTo(before);
      c.skip(1);
      if (c.next().isWhole() && isHalfSlash(c)) {
        double fraction = c.next().value() / c.ahead(2).value();
        c.skip(3);
        return fraction;
      }
    }
    c.backTo(before);
    return 0;
  }

  private static boolean isHalfSlash(TokenCursor c) {
    return c.ahead(1).isMark('/') && c.ahead(2).isWhole() && c.next().value() < c.ahead(2).value();
  }

  /** Reads what may follow a counting word: "three quarters", "two and a half". */
  private static double parts(TokenCursor c, int count) {
    Double part = PARTS.get(c.next().text().toLowerCase(Locale.ROOT));
    if (part != null) {
      c.skip(1);
      return count * part;
    }
    return count + andAPart(c);
  }

  private static double dozens(TokenCursor c, double count) {
    int before = c.at();
    c.takeMark('-');
    if (c.takeWord("dozen")) {
      return 12 * count;
    }
    c.backTo(before);
    return count;
  }
}
