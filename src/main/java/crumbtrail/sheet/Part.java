package crumbtrail.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import crumbtrail.quantity.Dimension;
import crumbtrail.quantity.PlainText;
import crumbtrail.quantity.Quantities;
import crumbtrail.quantity.Quantity;
import crumbtrail.quantity.QuantityReading;
import crumbtrail.quantity.Scan;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/**
 * One object of a bake sheet while it is read: hands out its values by key, and notes every problem
 * with its place. A missing key, an empty text and null are all the same: not said.
 */
final class Part {

  static final Set<String> YES = Set.of("yes", "y", "true", "on");
  static final Set<String> NO = Set.of("no", "n", "false", "off", "none");

  private static final Pattern TAIL =
      Pattern.compile(
          "(?:,| ?\\(| (?:in|at|on|under|with|until|then|by|from|covered|uncovered|before|after|fan)\\b)"
              + "[^\\d/]*",
          Pattern.CASE_INSENSITIVE);

  private final String where;
  private final JsonNode node;
  private final Problems problems;

  private Part(String where, JsonNode node, Problems problems) {
    this.where = where;
    this.node = node;
    this.problems = problems;
  }

  /** The object at a place, its keys checked; an empty one when there is none. */
  static Part of(String where, JsonNode node, Problems problems, List<String> known) {
    boolean none = node == null || node.isNull() || node.isMissingNode();
    if (none || !node.isObject()) {
      if (!none) {
        problems.add(
            where,
            Nodes.described(node) + " stands here",
            "write an object with keys such as " + String.join(", ", known));
      }
      return new Part(where, Nodes.emptyObject(), problems);
    }
    for (Map.Entry<String, JsonNode> entry : node.properties()) {
      if (!known.contains(entry.getKey())) {
        String remedy =
            NearestKey.to(entry.getKey(), known)
                .map(near -> "did you mean " + near + "?")
                .orElse("the keys here are " + String.join(", ", known));
        problems.add(
            Nodes.path(where, Nodes.shown(entry.getKey())),
            "the key " + Problems.quoted(entry.getKey()) + " is not known here",
            remedy);
      }
    }
    return new Part(where, node, problems);
  }

  Part object(String key, List<String> known) {
    return of(path(key), node.get(key), problems, known);
  }

  /** The same, where words may stand for the object. */
  Part object(String key, List<String> known, UnaryOperator<JsonNode> inWords) {
    JsonNode told = node.get(key);
    return of(path(key), told == null ? null : inWords.apply(told), problems, known);
  }

  String path(String key) {
    return Nodes.path(where, key);
  }

  boolean has(String key) {
    return !isNothing(node.get(key));
  }

  JsonNode get(String key) {
    return node.get(key);
  }

  Problems problems() {
    return problems;
  }

  /** Free words. True and false are taken as "yes" and "no". */
  Optional<String> text(String key) {
    return text(path(key), node.get(key), SheetLimits.TEXT, problems);
  }

  static Optional<String> text(String where, JsonNode value, int longest, Problems problems) {
    if (isNothing(value)) {
      return Optional.empty();
    }
    if (value.isBoolean()) {
      return Optional.of(value.booleanValue() ? "yes" : "no");
    }
    if (!value.isTextual()) {
      problems.add(
          where, Nodes.described(value) + " stands here", "write words in quotation marks");
      return Optional.empty();
    }
    String text = value.textValue().strip();
    if (text.length() > longest) {
      problems.add(
          where,
          "this text has " + text.length() + " characters",
          "write at most " + longest + " characters");
      return Optional.empty();
    }
    return Optional.of(text);
  }

  Optional<Quantity> quantity(String key, Dimension wanted) {
    JsonNode value = node.get(key);
    if (isNothing(value)) {
      return Optional.empty();
    }
    if (value.isNumber()) {
      problems.add(
          path(key),
          "the number " + Nodes.shown(value.asText()) + " has no unit",
          "write in quotation marks " + Quantities.example(wanted));
      return Optional.empty();
    }
    if (!value.isTextual()) {
      problems.add(
          path(key),
          Nodes.described(value) + " stands here",
          "write in quotation marks " + Quantities.example(wanted));
      return Optional.empty();
    }
    QuantityReading reading = Quantities.explain(value.textValue(), wanted);
    if (reading.quantity().isPresent()) {
      return reading.quantity();
    }
    Optional<Quantity> first = withWords(value.textValue(), wanted);
    if (first.isEmpty()) {
      problems.add(path(key), reading.what(), reading.remedy());
    }
    return first;
  }

  /**
   * The same, where the nature of the thing sets bounds: what lies beyond them was not meant. The
   * bounds are our choice, wider than any bake that we know of.
   *
   * @param what the thing, such as "a dough"
   * @param unit as the remedy writes it
   */
  Optional<Quantity> quantity(
      String key, Dimension wanted, String what, double low, double high, String unit) {
    Optional<Quantity> read = quantity(key, wanted);
    if (read.isEmpty() || (read.get().value() >= low && read.get().value() <= high)) {
      return read;
    }
    String side = read.get().value() > high ? " is more than " : " is less than ";
    String scale = wanted == Dimension.TEMPERATURE ? "; if Fahrenheit was meant, write F" : "";
    problems.add(
        path(key),
        Problems.quoted(read.get().written()) + side + what + " can have",
        "write " + Math.round(low) + " to " + Math.round(high) + " " + unit + scale);
    return Optional.empty();
  }

  /** Reads "60 min in a warm oven": the quantity counts, and all of it is kept as a remark. */
  private Optional<Quantity> withWords(String text, Dimension wanted) {
    String plain = PlainText.of(text);
    Optional<Scan> scan =
        plain.length() > SheetLimits.TEXT
            ? Optional.empty()
            : Quantities.scan(plain, 0, EnumSet.of(wanted)).filter(s -> !s.bare());
    if (scan.isEmpty() || !TAIL.matcher(plain.substring(scan.get().end())).matches()) {
      return Optional.empty();
    }
    problems.setAside(plain);
    return scan.map(Scan::quantity);
  }

  /** A whole number, as a number or in words. */
  Optional<Integer> count(String key, int least, int most) {
    JsonNode value = node.get(key);
    if (isNothing(value)) {
      return Optional.empty();
    }
    double number = Double.NaN;
    if (value.isNumber()) {
      number = value.doubleValue();
    } else if (value.isTextual()) {
      number =
          Quantities.read(value.textValue(), Dimension.COUNT)
              .map(Quantity::value)
              .orElse(Double.NaN);
    }
    if (number >= least && number <= most && number == Math.rint(number)) {
      return Optional.of((int) number);
    }
    problems.add(
        path(key),
        Problems.quoted(value.isContainerNode() ? "…" : value.asText())
            + " does not count anything",
        "write a whole number from " + least + " to " + most);
    return Optional.empty();
  }

  Optional<Boolean> yesOrNo(String key) {
    JsonNode value = node.get(key);
    if (isNothing(value)) {
      return Optional.empty();
    }
    if (value.isBoolean()) {
      return Optional.of(value.booleanValue());
    }
    String word = value.isTextual() ? value.textValue().strip().toLowerCase(Locale.ROOT) : "";
    if (YES.contains(word) || NO.contains(word)) {
      return Optional.of(YES.contains(word));
    }
    problems.add(
        path(key),
        Problems.quoted(value.isContainerNode() ? "…" : value.asText()) + " is neither yes nor no",
        "write true or false, or \"yes\" or \"no\"");
    return Optional.empty();
  }

  /** A list of free texts; one text alone is a list, with an entry to each of its lines. */
  List<String> texts(String key) {
    JsonNode value = node.get(key);
    if (value != null && value.isTextual()) {
      return linesOf(path(key), value);
    }
    return list(key, (place, entry) -> text(place, entry, SheetLimits.TEXT, problems));
  }

  private List<String> linesOf(String place, JsonNode value) {
    List<String> lines = new ArrayList<>();
    text(place, value, SheetLimits.RECIPE, problems).stream()
        .flatMap(String::lines)
        .map(String::strip)
        .filter(line -> !line.isEmpty())
        .forEach(lines::add);
    if (lines.size() > SheetLimits.ENTRIES) {
      tooMany(place, lines.size(), SheetLimits.ENTRIES);
      return List.of();
    }
    return lines;
  }

  /** A list of parts; a single part that stands where a list could is taken as a list of one. */
  <T> List<T> list(String key, BiFunction<String, JsonNode, Optional<T>> each) {
    return list(key, SheetLimits.ENTRIES, each);
  }

  <T> List<T> list(String key, int most, BiFunction<String, JsonNode, Optional<T>> each) {
    JsonNode value = node.get(key);
    List<T> read = new ArrayList<>();
    if (isNothing(value)) {
      return read;
    }
    if (!value.isArray()) {
      each.apply(path(key), value).ifPresent(read::add);
      return read;
    }
    if (value.size() > most) {
      tooMany(path(key), value.size(), most);
      return read;
    }
    for (int i = 0; i < value.size(); i++) {
      String place = path(key) + "[" + i + "]";
      if (!isNothing(value.get(i))) {
        each.apply(place, value.get(i)).ifPresent(read::add);
      }
    }
    return read;
  }

  private void tooMany(String place, int count, int most) {
    problems.add(place, "this list has " + count + " entries", "write at most " + most);
  }

  static boolean isNothing(JsonNode value) {
    return value == null
        || value.isNull()
        || value.isMissingNode()
        || (value.isTextual() && value.textValue().isBlank());
  }
}
