package crumbtrail.formula;

import crumbtrail.formula.WeighedLine.Way;
import crumbtrail.memory.Recent;
import crumbtrail.pantry.Find;
import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Pantry;
import crumbtrail.quantity.Dimension;
import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.FormulaLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Looks a line up in the pantry and weighs it. */
final class LineWeigher {
  private static final Pattern NOT_IN_DOUGH =
      Pattern.compile(
          "\\b(?:for|to)\\s+(?:the\\s+|your\\s+)?(?:dust|greas|brush|tin\\b|pan\\b|bowl|tray|work"
              + "|surface|board|bench|counter|topping|top\\b|glaz|sprinkl|boil|bath|coat"
              + "|finish|fry|deep[- ]fry|filling|serv|decorat|scatter|basket)"
              + "|\\begg\\s*wash\\b|\\b(?:topping|glaze|filling|icing|frosting)\\b",
          Pattern.CASE_INSENSITIVE);

  /** "500 g flour, plus extra for dusting": the amount is for the dough. */
  private static final Pattern EXTRA =
      Pattern.compile("^(?:plus|and|with|\\+)\\b|\\b(?:extra|more|additional)\\b");

  private static final Pattern TWO_THINGS = Pattern.compile("(?:\\+|\\bplus)\\s*\\d");

  private static final Pattern SPOONED = Pattern.compile("\\b(?:spooned|sifted|loose)");
  private static final Pattern SCOOPED = Pattern.compile("\\b(?:scoop|dip|heap|packed)");

  // What-ifs of a bake weigh its lines again and again, and leave their words alone.
  private static final Recent<Words, Named> LATELY = new Recent<>(1024);

  private final Pantry pantry;
  private final Notes notes;

  /** The words of a line, without its amount. */
  private record Words(Pantry pantry, String ingredient, List<String> notes) {}

  /** What the words of a line mean. */
  private record Named(Optional<Find> find, boolean inDough, boolean twoThings) {}

  LineWeigher(Pantry pantry, Notes notes) {
    this.pantry = pantry;
    this.notes = notes;
  }

  List<WeighedLine> weigh(List<FormulaLine> lines) {
    List<WeighedLine> weighed = new ArrayList<>();
    for (FormulaLine line : lines) {
      weighed.add(weigh(line));
    }
    return weighed;
  }

  private WeighedLine weigh(FormulaLine line) {
    Named named = LATELY.of(new Words(pantry, line.ingredient(), line.notes()), LineWeigher::named);
    Optional<Level> grams = grams(line, named.find().map(Find::ingredient));
    if (named.inDough() && named.twoThings()) {
      notes.notUnderstood(
          line.where(), line.written(), "two things on one line: only the first is counted");
    }
    return new WeighedLine(line, named.find(), grams, way(line), named.inDough());
  }

  private static Named named(Words words) {
    boolean inDough =
        !NOT_IN_DOUGH.matcher(words.ingredient()).find()
            && words.notes().stream()
                .filter(note -> !EXTRA.matcher(note).find())
                .noneMatch(note -> NOT_IN_DOUGH.matcher(note).find());
    return new Named(find(words), inDough, TWO_THINGS.matcher(words.ingredient()).find());
  }

  /** The name alone if it is plain; else with what the line says beside it ("salt", "coarse"). */
  private static Optional<Find> find(Words words) {
    Pantry pantry = words.pantry();
    Optional<Find> plain = pantry.find(words.ingredient());
    if (plain.isPresent() && !plain.get().assumed()) {
      return plain;
    }
    if (!words.notes().isEmpty()) {
      Optional<Find> fuller =
          pantry.find(String.join(" ", words.notes()) + " " + words.ingredient());
      if (fuller.isPresent() && !fuller.get().assumed()) {
        return fuller;
      }
    }
    return plain;
  }

  private static Way way(FormulaLine line) {
    if (line.amount().isEmpty()) {
      return Way.NONE;
    }
    return switch (line.amount().get().dimension()) {
      case MASS -> Way.WEIGHT;
      case VOLUME -> Way.VOLUME;
      case COUNT -> Way.COUNT;
      case PERCENT -> Way.PERCENT;
      default -> Way.NONE;
    };
  }

  private Optional<Level> grams(FormulaLine line, Optional<Ingredient> ingredient) {
    if (line.amount().isEmpty()) {
      return Optional.empty();
    }
    Quantity amount = line.amount().get();
    if (amount.dimension() == Dimension.MASS) {
      Level weight = Level.of(amount.low(), amount.value(), amount.high());
      ingredient.ifPresent(known -> compare(line, known, weight));
      return Optional.of(weight);
    }
    // The reader puts a weight first; one that stands second was put there to settle the measure.
    Optional<Quantity> settled =
        line.alsoGiven().filter(other -> other.dimension() == Dimension.MASS);
    if (settled.isPresent()) {
      return otherGrams(line, ingredient, settled.get());
    }
    Optional<Level> first = ingredient.flatMap(known -> Measures.grams(known, amount, line.size()));
    if (first.isPresent()) {
      return first.map(
          level -> amount.dimension() == Dimension.VOLUME ? filled(line, level) : level);
    }
    // "1 can (400 g)": the other amount may be the one that can be weighed.
    return line.alsoGiven().flatMap(other -> otherGrams(line, ingredient, other));
  }

  /** A baker who says how the cup was filled narrows its weight to the light or the heavy side. */
  private static Level filled(FormulaLine line, Level level) {
    String said = String.join(" ", line.notes()).toLowerCase(Locale.ROOT);
    if (SPOONED.matcher(said).find()) {
      return Level.of(level.low(), (level.low() + level.value()) / 2, level.value());
    }
    if (SCOOPED.matcher(said).find()) {
      return Level.of(level.value(), (level.value() + level.high()) / 2, level.high());
    }
    return level;
  }

  private static Optional<Level> otherGrams(
      FormulaLine line, Optional<Ingredient> ingredient, Quantity other) {
    if (other.dimension() == Dimension.MASS) {
      return Optional.of(Level.of(other.low(), other.value(), other.high()));
    }
    return ingredient.flatMap(known -> Measures.grams(known, other, line.size()));
  }

  /** Notes where the weight and the other measure cannot both be true. */
  private void compare(FormulaLine line, Ingredient known, Level weight) {
    Optional<Level> other =
        line.alsoGiven().flatMap(also -> Measures.grams(known, also, line.size()));
    if (other.isEmpty() || other.get().value() <= 0) {
      return;
    }
    // Published conversions are rounded to a few percent.
    double slack = 0.04;
    Level span = other.get();
    if (weight.high() < span.low() * (1 - slack) || weight.low() > span.high() * (1 + slack)) {
      notes.contradict(
          line.where(),
          "\""
              + line.written()
              + "\": "
              + line.alsoGiven().get().written()
              + " of "
              + known.plainName()
              + " weighs "
              + Notes.grams(span.low())
              + " to "
              + Notes.grams(span.high())
              + ", not "
              + Notes.grams(weight.value())
              + "; the weight was used");
    }
  }
}
