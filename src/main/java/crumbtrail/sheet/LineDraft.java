package crumbtrail.sheet;

import crumbtrail.quantity.Dimension;
import crumbtrail.quantity.Quantities;
import crumbtrail.quantity.Quantity;
import crumbtrail.quantity.Scan;
import crumbtrail.quantity.Unit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One ingredient line on its way from a plain text to its parts. */
final class LineDraft {
  private static final Pattern ODD_UNIT = Pattern.compile("^(?!rye|oat)\\p{L}{1,3} (?=\\p{L})");
  private static final Pattern EACH = Pattern.compile("^ ?each ?");
  private static final Pattern OF = Pattern.compile("^[.,:; ]*(?:of\\b)? ?");
  private static final Pattern TRAILING = Pattern.compile("[-,:;.…= ]+$");
  private static final Pattern NO_LETTERS = Pattern.compile("[^\\p{L}]+");
  private static final Pattern BLANKS = Pattern.compile(" {2,}");

  private static final Pattern QUARTER_OUNCE_PACKET =
      pattern("^(\\d{1,2}) 1/4[- ]?(?:oz|ounce)s?\\.? (?=" + LineWords.CONTAINERS + "\\b)");
  private static final Pattern UNCOUNTED =
      pattern(
          "^(?:(?:an?|one|two|three|\\d{1,2}|some) )?(?:(?:small|large|big|good|generous) )?"
              + "(?:handful|knob|drizzle|glug|bunch|sprig|drop|lump|scoop|splash)s? (?:of )?(?=\\S)"
              + "|^(?:some|a (?:little|bit of|touch of)|any) (?=\\S)");
  private static final Pattern UNIT_ALONE =
      pattern(
          "^(?:(?:generous|good|big|small|large|tiny|scant|heaped|heaping) )?"
              + "(?:pinch|dash|stick|packet|sachet|envelope)\\b.*");
  private static final Pattern CONTAINER =
      pattern("^[- ]?(" + LineWords.CONTAINERS + ")\\b\\.? ?(?:of )?");
  private static final Pattern WARMTH =
      pattern(
          "(?:,? ?(?:at|about|around|heated to|warmed to) )*(?:\\d{1,3}(?:[.,]\\d)? ?- ?)?"
              + "(?:\\d{1,3}(?:[.,]\\d)? ?(?:°|degrees?|deg\\.?) ?(?:C|F|celsius|fahrenheit)?\\b"
              + "|(?:2[1-9]|[3-9]\\d|1\\d\\d|2\\d\\d)(?:[.,]\\d)? ?(?:C|F|celsius|fahrenheit)\\b)");
  private static final Pattern SAID_AGAIN = pattern(" [/|=] (?=\\d)");
  private static final Pattern PART_OF = pattern("^(?:the )?(juice|zest|rind|peel) of (?=\\S)");
  private static final Pattern HALF_AND_HALF = pattern("^half[- ]and[- ]half\\b.*");

  private final String where;
  private final String written;
  private final StatedPercents percents;
  private final LineAmounts amounts = new LineAmounts();
  private final List<String> notes = new ArrayList<>();
  private String rest;

  LineDraft(String where, String written, String plain) {
    this.where = where;
    this.written = written;
    this.percents = StatedPercents.of(plain);
    this.rest = percents.rest();
  }

  LineReading finish() {
    boolean started = multiples() || uncounted();
    brackets();
    warmth();
    if (!started) {
      front();
      partOf();
    }
    if (amounts.isEmpty() && !started) {
      later();
    } else {
      alsoLater();
    }
    NameParts name = NameParts.of(rest, amounts.of(Dimension.COUNT).isPresent());
    notes.addAll(0, name.notes());
    return checked(name);
  }

  /** Reads "1 (7 g) packet", "2 x 7 g sachets", "1 7-g packet": so many times an amount. */
  private boolean multiples() {
    Matcher quarter = QUARTER_OUNCE_PACKET.matcher(rest);
    if (quarter.find()) {
      rest = quarter.group(1) + " (0.25 oz) " + rest.substring(quarter.end());
    }
    Optional<Scan> count = Quantities.scan(rest, 0, EnumSet.of(Dimension.COUNT));
    if (count.isEmpty() || !count.get().bare()) {
      return false;
    }
    String after = rest.substring(count.get().end()).strip();
    boolean times = after.startsWith("x ");
    String inner = times ? after.substring(2).strip() : after;
    boolean bracket = inner.startsWith("(");
    Optional<Scan> each =
        Quantities.scan(inner, bracket ? 1 : 0, EnumSet.of(Dimension.MASS, Dimension.VOLUME));
    if (each.isEmpty() || each.get().start() > 1) {
      return false;
    }
    String tail = inner.substring(each.get().end());
    if (bracket) {
      tail = EACH.matcher(tail).replaceFirst("");
      if (!tail.startsWith(")")) {
        return false;
      }
      tail = tail.substring(1);
    }
    tail = tail.strip();
    Matcher container = CONTAINER.matcher(tail);
    boolean held = container.find();
    if (!held && !times) {
      return false;
    }
    String words = rest.substring(0, rest.length() - tail.length()).strip();
    Quantity number = count.get().quantity();
    amounts.keep(LineAmounts.times(each.get().quantity(), number, words), false);
    if (held) {
      Quantities.scan("1 " + container.group(1), 0, EnumSet.of(Dimension.COUNT))
          .filter(one -> !one.bare())
          .ifPresent(
              one -> amounts.keep(LineAmounts.counted(number, one.quantity().unit()), false));
      rest = tail.substring(container.end());
    } else {
      rest = tail;
    }
    return true;
  }

  /** Reads "a handful of raisins": no amount that anyone could weigh. */
  private boolean uncounted() {
    Matcher m = UNCOUNTED.matcher(rest);
    if (m.find()) {
      notes.add(m.group().strip());
      rest = rest.substring(m.end());
      return true;
    }
    if (UNIT_ALONE.matcher(rest).matches()) {
      rest = "a " + rest;
    }
    return false;
  }

  /** Reads "juice of 1 lemon" as a number of lemons. */
  private void partOf() {
    Matcher m = PART_OF.matcher(rest);
    if (m.find()) {
      Quantities.scan(rest, m.end(), EnumSet.of(Dimension.COUNT))
          .filter(Scan::bare)
          .ifPresent(
              scan -> {
                amounts.keep(scan.quantity(), false);
                rest = rest.substring(scan.end()).strip() + " " + m.group(1);
              });
    }
  }

  /** Takes bracketed parts out of the line: amounts, or remarks. */
  private void brackets() {
    StringBuilder outside = new StringBuilder();
    StringBuilder inside = new StringBuilder();
    int depth = 0;
    for (int i = 0; i < rest.length(); i++) {
      char c = rest.charAt(i);
      if (c == '(' || c == '[') {
        if (depth++ > 0) {
          inside.append(c);
        }
      } else if ((c == ')' || c == ']') && depth > 0) {
        if (--depth == 0) {
          bracket(inside.toString().strip());
          inside.setLength(0);
          outside.append(' ');
        } else {
          inside.append(c);
        }
      } else {
        (depth > 0 ? inside : outside).append(c);
      }
    }
    bracket(inside.toString().strip());
    rest = BLANKS.matcher(outside).replaceAll(" ").replace(" ,", ",").strip();
  }

  private void bracket(String content) {
    if (content.isEmpty()) {
      return;
    }
    boolean each = content.endsWith(" each");
    String text = each ? content.substring(0, content.length() - 5).strip() : content;
    Optional<LineAmounts> all = LineAmounts.allOf(text);
    Optional<Scan> count = Quantities.scan(rest, 0, EnumSet.of(Dimension.COUNT));
    if (all.isEmpty() || (each && count.isEmpty())) {
      notes.add(content);
      return;
    }
    for (Quantity q : all.get().ranked()) {
      Quantity kept = each ? LineAmounts.times(q, count.get().quantity(), content) : q;
      amounts.keep(kept, false);
    }
  }

  private void warmth() {
    Matcher m = WARMTH.matcher(rest);
    if (m.find() && m.start() > 0) {
      notes.add(m.group().replaceFirst("^[, ]+", "").strip());
      rest = (rest.substring(0, m.start()) + rest.substring(m.end())).strip();
    }
  }

  private void front() {
    if (HALF_AND_HALF.matcher(rest).matches()) {
      return;
    }
    Optional<Scan> first = Quantities.scan(rest, 0, LineAmounts.KINDS);
    if (first.isEmpty()) {
      return;
    }
    String after = rest.substring(first.get().end());
    double value = first.get().quantity().value();
    // "7-grain flour, 500 g" and "00 flour 500 g" start with a name.
    boolean name = first.get().bare() && (after.startsWith("-") || value == 0 || value >= 100);
    if (name && hasMeasure(after)) {
      return;
    }
    int end = amounts.readAt(rest, 0, true);
    rest = OF.matcher(rest.substring(end)).replaceFirst("");
    if (amounts.of(Dimension.MASS).isPresent()) {
      rest = CONTAINER.matcher(rest).replaceFirst("");
    }
  }

  private static boolean hasMeasure(String text) {
    return LineAmounts.places(text).stream()
        .flatMap(i -> Quantities.scan(text, i, LineAmounts.KINDS).stream())
        .anyMatch(scan -> !scan.bare());
  }

  /** Finds the amount of a line that starts with the name: "butter, 50 g, softened". */
  private void later() {
    for (int place : LineAmounts.places(rest)) {
      int end = amounts.readAt(rest, place, false);
      if (end > place) {
        cut(place, end);
        return;
      }
    }
    Optional<Scan> last =
        LineAmounts.places(rest).stream()
            .flatMap(i -> Quantities.scan(rest, i, EnumSet.of(Dimension.COUNT)).stream())
            .filter(scan -> isLast(rest.substring(scan.end())))
            .findFirst();
    if (last.isPresent() && !rest.substring(0, last.get().start()).strip().endsWith("of")) {
      amounts.keep(last.get().quantity(), true);
      String size = rest.substring(last.get().end());
      cut(last.get().start(), rest.length());
      rest = (size + " " + rest).strip();
    }
  }

  /** Whether nothing but a size follows: "eggs, 2 large". */
  private static boolean isLast(String after) {
    String word = after.strip().toLowerCase(Locale.ROOT);
    return word.isEmpty() || LineWords.SIZES.contains(word);
  }

  /** Finds a weight or volume after a percentage, a number or an amount: "2 % milk, 250 ml". */
  private void alsoLater() {
    Matcher again = SAID_AGAIN.matcher(rest);
    if (again.find()) {
      int place = again.end();
      int end = amounts.readAt(rest, place, false);
      if (end > place) {
        cut(again.start(), end);
      }
    }
    boolean weighed = amounts.of(Dimension.MASS).isPresent();
    if (weighed || amounts.of(Dimension.VOLUME).isPresent()) {
      return;
    }
    Matcher remark = LineWords.REMARK.matcher(rest);
    int limit = remark.find() ? remark.start() : rest.length();
    EnumSet<Dimension> measures = EnumSet.of(Dimension.MASS, Dimension.VOLUME);
    for (int place : LineAmounts.places(rest)) {
      Optional<Scan> scan = Quantities.scan(rest, place, measures);
      if (place < limit && scan.isPresent()) {
        amounts.keep(scan.get().quantity(), false);
        cut(place, scan.get().end());
        milkOf();
        return;
      }
    }
  }

  /** The percentage before milk or cream is its fat when the amount follows. */
  private void milkOf() {
    Optional<Quantity> percent = amounts.of(Dimension.PERCENT);
    if (percent.isPresent()
        && rest.toLowerCase(Locale.ROOT).matches("^(?:fat )?(?:milk|cream).*")) {
      amounts.forget(Dimension.PERCENT);
      rest = percent.get().written() + " " + rest;
    }
  }

  private void cut(int from, int to) {
    String before = TRAILING.matcher(rest.substring(0, from)).replaceFirst("");
    String after = rest.substring(to).strip();
    boolean joined = after.isEmpty() || after.startsWith(",") || after.startsWith(";");
    rest = (joined ? before + after : before + ", " + after).strip();
  }

  private LineReading checked(NameParts name) {
    String ingredient = name.name();
    if (ingredient.isEmpty() && !notes.isEmpty()) {
      ingredient = notes.remove(0);
    }
    if (ingredient.chars().noneMatch(Character::isLetter)) {
      return LineReading.refused(
          where,
          "“" + written + "” names no ingredient",
          "write amount and ingredient, such as 500 g bread flour");
    }
    if (written.matches("^[-\u2212\u2013]\\d.*")) {
      return LineReading.refused(
          where, "“" + written + "” has a negative amount", "write how much went in");
    }
    Optional<LineReading> bare = bareNumber(ingredient).or(this::unbelievable);
    if (bare.isPresent()) {
      return bare.get();
    }
    List<Quantity> ranked = amounts.ranked();
    Optional<Quantity> amount = ranked.stream().findFirst();
    Optional<Quantity> also = ranked.stream().skip(1).findFirst();
    return LineReading.of(
        new FormulaLine(
            where,
            written,
            ingredient,
            amount,
            also,
            name.size(),
            notes,
            percents.protein(),
            percents.hydration(),
            percents.fallingNumber()));
  }

  /** An amount that no bake has is a slip of the pen, and no part of the ingredient's name. */
  private Optional<LineReading> unbelievable() {
    return Quantities.unbelievable(rest, LineAmounts.KINDS)
        .or(
            () ->
                amounts.ranked().stream()
                    .filter(amount -> !Quantities.believable(amount))
                    .map(amount -> "“" + amount.written() + "” is far more than any bake needs")
                    .findFirst())
        .map(
            what ->
                LineReading.refused(where, what, "write the amount that went in, such as 500 g"));
  }

  private Optional<LineReading> bareNumber(String ingredient) {
    Optional<Quantity> count = amounts.of(Dimension.COUNT);
    if (!amounts.onlyBareCount() || count.isEmpty() || count.get().unit() != Unit.PIECE) {
      return Optional.empty();
    }
    String[] words = NO_LETTERS.split(ingredient.toLowerCase(Locale.ROOT), -1);
    boolean measured = words.length > 0 && LineWords.MEASURED.contains(words[words.length - 1]);
    if (!measured && count.get().value() <= 60) {
      return Optional.empty();
    }
    return Optional.of(
        LineReading.refused(
            where,
            "“" + written + "” has a number without a unit",
            "write the unit, such as " + example(count.get().written(), ingredient)));
  }

  // In the baker's own words, unless they hold a unit that went wrong.
  private static String example(String number, String ingredient) {
    boolean plain =
        number.chars().anyMatch(Character::isDigit)
            && ingredient.chars().noneMatch(Character::isDigit)
            && !ODD_UNIT.matcher(ingredient).find();
    return plain
        ? number + " g " + ingredient + " or 2 cups " + ingredient
        : "500 g bread flour, 2 cups flour or 1 tsp salt";
  }

  private static Pattern pattern(String regex) {
    return Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
  }
}
