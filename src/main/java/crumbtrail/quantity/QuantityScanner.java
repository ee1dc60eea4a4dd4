package crumbtrail.quantity;

import crumbtrail.quantity.NumberScanner.Num;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * Reads one quantity at the place of a cursor: qualifiers, number or range, unit, and what may
 * follow ("1 h 30 min", "an hour and a half", "10 min or so").
 */
final class QuantityScanner {

  private static final Set<String> ABOUT =
      Set.of(
          "about",
          "around",
          "approx",
          "approximately",
          "roughly",
          "ca",
          "circa",
          "nearly",
          "almost",
          "some",
          "ish");
  private static final Set<String> EMPTY_WORDS = Set.of("just", "exactly", "only", "for");
  private static final Set<String> NEUTRAL = Set.of("level", "whole", "full", "more");
  private static final Set<String> HEAPED = Set.of("heaped", "heaping");
  private static final Set<String> GENEROUS = Set.of("generous", "rounded", "good", "big", "large");
  private static final Set<String> SCANT = Set.of("scant", "small", "short");

  private final TokenCursor c;
  private final Set<Dimension> wanted;

  /** What the words around the number say about how exact it is. */
  private boolean about;

  private boolean atLeast;
  private boolean atMost;
  private boolean between;

  private QuantityScanner(TokenCursor c, Set<Dimension> wanted) {
    this.c = c;
    this.wanted = wanted;
  }

  /**
   * Reads a quantity of one of the dimensions wanted. A bare number is read as pieces when counts
   * are wanted. The cursor stays where it was when there is no such quantity.
   */
  static Optional<Measured> scan(TokenCursor c, Set<Dimension> wanted) {
    int start = c.at();
    Optional<Measured> first = new QuantityScanner(c, wanted).whole();
    if (first.isEmpty()) {
      c.backTo(start);
      return first;
    }
    Measured found = first.get();
    int after = c.at();
    if (!found.bare() && NumberScanner.takeRangeMark(c, false)) {
      Set<Dimension> same = EnumSet.of(found.unit().dimension());
      Optional<Measured> second = new QuantityScanner(c, same).whole();
      if (second.isPresent() && !second.get().bare()) {
        return Optional.of(found.to(second.get()));
      }
      c.backTo(after);
    }
    return first;
  }

  private Optional<Measured> whole() {
    qualifiers();
    Optional<Measured> read = special();
    if (read.isEmpty()) {
      read = numbered();
    }
    if (read.isPresent()) {
      suffix();
    }
    return read.map(this::blurred);
  }

  private void qualifiers() {
    boolean moved = true;
    while (moved) {
      int before = c.at();
      if (c.takeMark('~') || c.takeAnyWord(ABOUT)) {
        c.takeMark('.');
        about = true;
      } else if (c.takeWords("at", "least")
          || c.takeWords("more", "than")
          || c.takeWord("over")
          || c.takeMark('>')) {
        c.takeMark('=');
        atLeast = true;
      } else if (c.takeWords("at", "most")
          || c.takeWords("up", "to")
          || c.takeWords("no", "more", "than")
          || c.takeWords("less", "than")
          || c.takeWord("under")
          || c.takeMark('<')) {
        c.takeMark('=');
        atMost = true;
      } else if (c.takeWord("between")) {
        between = true;
      } else {
        c.takeAnyWord(EMPTY_WORDS);
      }
      moved = c.at() > before;
    }
  }

  private Optional<Measured> special() {
    if (wanted.contains(Dimension.TIME)
        && (c.takeWord("overnight") || c.takeWords("over", "night"))) {
      // A night is taken as 8 to 12 h: our choice.
      return Optional.of(Measured.of(new Num(8, 10, 12), Unit.HOUR, false));
    }
    if (wanted.contains(Dimension.TEMPERATURE)
        && (c.takeWords("gas", "mark") || c.takeWord("gas"))) {
      return NumberScanner.read(c, between)
          .filter(mark -> mark.low() >= 1 && mark.high() <= 10)
          .map(mark -> Measured.of(mark, Unit.GAS_MARK, false));
    }
    return Optional.empty();
  }

  private Optional<Measured> numbered() {
    boolean minus = c.next().isMark('-') && c.ahead(1).isNumber();
    if (minus) {
      c.skip(1);
    }
    Optional<Num> number = clock();
    if (number.isEmpty()) {
      number = NumberScanner.read(c, between);
    }
    if (number.isEmpty()) {
      return Optional.empty();
    }
    Num n = number.get();
    if (minus) {
      // "-2-3 C" means from -2 to 3; a single number changes its sign.
      n = n.low() == n.high() ? Num.of(-n.low()) : Num.range(-n.low(), n.high());
    }
    int after = c.at();
    Num measure = adjectives(n);
    Optional<Unit> unit = unit();
    if (unit.isEmpty()) {
      c.backTo(after);
      return wanted.contains(Dimension.COUNT)
          ? Optional.of(Measured.of(n, Unit.PIECE, true))
          : Optional.empty();
    }
    return Optional.of(compound(Measured.of(measure, unit.get(), false)));
  }

  /** Reads the "1:30" of "1:30 h" as one and a half. */
  private Optional<Num> clock() {
    if (wanted.contains(Dimension.TIME)
        && c.next().isWhole()
        && c.ahead(1).isMark(':')
        && c.ahead(2).isWhole()
        && c.ahead(2).value() < 60) {
      double value = c.next().value() + c.ahead(2).value() / 60;
      c.skip(3);
      return Optional.of(Num.of(value));
    }
    return Optional.empty();
  }

  /** Words between number and unit. How much a heap or a scant measure differs is our choice. */
  private Num adjectives(Num number) {
    Num out = number;
    c.takeMark('-');
    boolean moved = true;
    while (moved) {
      int before = c.at();
      if (c.takeAnyWord(HEAPED)) {
        out = new Num(out.low(), out.value() * 1.25, out.high() * 1.5);
      } else if (c.takeAnyWord(GENEROUS)) {
        out = new Num(out.low(), out.value() * 1.1, out.high() * 1.2);
      } else if (c.takeAnyWord(SCANT)) {
        out = new Num(out.low() * 0.85, out.value() * 0.95, out.high());
      } else if (!c.takeAnyWord(NEUTRAL) && !c.takeWord("of")) {
        if (!c.takeWords("or", "so") && !c.takeWord("a")) {
          c.takeWord("an");
        }
      }
      moved = c.at() > before;
    }
    return out;
  }

  private Optional<Unit> unit() {
    int before = c.at();
    String name = unitWord();
    int afterFirst = c.at();
    c.takeMark('.');
    if (c.next().kind() == Token.Kind.WORD) {
      String both = name + " " + c.next().text();
      Optional<Unit> unit = UnitNames.find(both, wanted);
      if (unit.isPresent()) {
        c.skip(1);
        return dotted(unit);
      }
    }
    c.backTo(afterFirst);
    Optional<Unit> unit = UnitNames.find(name, wanted);
    if (unit.isEmpty()) {
      c.backTo(before);
      return unit;
    }
    return dotted(unit);
  }

  private String unitWord() {
    if (wanted.contains(Dimension.TEMPERATURE)) {
      boolean degree = c.takeMark('°') || c.takeAnyWord(Set.of("degrees", "degree", "deg"));
      if (degree) {
        c.takeMark('.');
        String scale = c.next().text();
        c.skip(1);
        return "°" + scale;
      }
    }
    String name = c.next().text();
    c.skip(1);
    return name;
  }

  /** Takes the point of an abbreviation. */
  private Optional<Unit> dotted(Optional<Unit> unit) {
    if (c.touching() && !c.ahead(1).isMark('.')) {
      c.takeMark('.');
    }
    return unit;
  }

  /** Adds smaller units that follow: "1 h 30 min", "1 lb 2 oz", "2 cups plus 1 tbsp". */
  private Measured compound(Measured first) {
    Unit unit = first.unit();
    if (unit.dimension() == Dimension.TEMPERATURE
        || unit.dimension() == Dimension.PERCENT
        || unit.dimension() == Dimension.COUNT) {
      return first;
    }
    double part = NumberScanner.andAPart(c);
    if (part > 0) {
      return first.plus(part * unit.factor());
    }
    Measured sum = first;
    Unit last = unit;
    boolean more = true;
    while (more) {
      int before = c.at();
      Optional<Measured> next = smaller(last);
      more = next.isPresent();
      if (more) {
        sum = sum.plus(next.get());
        last = next.get().unit();
      } else {
        c.backTo(before);
      }
    }
    return sum;
  }

  private Optional<Measured> smaller(Unit last) {
    boolean touching = c.touching();
    if (!c.takeWord("and") && !c.takeWord("plus") && !c.takeMark('+')) {
      c.takeMark('&');
    }
    if (!c.next().isNumber() && !c.next().isWord("half")) {
      return Optional.empty();
    }
    Optional<Num> number = NumberScanner.simple(c);
    if (number.isEmpty()) {
      return Optional.empty();
    }
    int after = c.at();
    Optional<Unit> unit = unit();
    if (unit.isPresent()) {
      return unit.filter(
              u -> u.dimension() == last.dimension() && u.factor() < last.factor() * 0.999)
          .map(u -> Measured.of(number.get(), u, false));
    }
    c.backTo(after);
    // "1h30"
    return last == Unit.HOUR && touching && number.get().value() < 60
        ? Optional.of(Measured.of(number.get(), Unit.MINUTE, false))
        : Optional.empty();
  }

  private void suffix() {
    int before = c.at();
    if (c.takeWords("or", "so")
        || c.takeWord("ish")
        || c.takeWord("approx")
        || c.takeWord("approximately")) {
      about = true;
      return;
    }
    if (c.takeMark('-') && c.takeWord("ish")) {
      about = true;
      return;
    }
    c.backTo(before);
  }

  /**
   * Gives a vague quantity its range. "About" is ten percent either way, two degrees Celsius for a
   * temperature; "at least" and "at most" are open by twice that on their side. Our choice.
   */
  private Measured blurred(Measured m) {
    boolean warm = m.unit().dimension() == Dimension.TEMPERATURE;
    double step = warm ? 2 : Math.abs(m.value()) * 0.1;
    Measured out = m;
    if (about) {
      out = out.within(m.value() - step, m.value() + step);
    }
    if (atLeast) {
      out = out.within(m.low(), m.value() + 2 * step);
    }
    if (atMost) {
      out = out.within(m.value() - 2 * step, m.high());
    }
    return out;
  }
}
