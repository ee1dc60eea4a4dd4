package crumbtrail.rules;

import crumbtrail.workup.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A pattern of the engine's language that is so plain that it needs no compiler: a fact of a kind,
 * there or not there, under a name, with a value within limits, with a property, with tags.
 *
 * @param absent whether no such fact may be there
 * @param fact the kind of fact
 * @param tests all of which the fact has to pass
 */
record PlainPattern(boolean absent, Class<?> fact, List<Test> tests) {
  private static final Pattern SHAPE = Pattern.compile("(not )?(\\w+)\\((.*)\\)");
  private static final Pattern NAME = Pattern.compile("name == \"([^\"]+)\"");
  private static final Pattern TAG = Pattern.compile("tags contains \"([^\"]+)\"");
  private static final Pattern NO_TAG = Pattern.compile("tags not contains \"([^\"]+)\"");
  private static final Pattern LIMIT = Pattern.compile("value (<=|>=|<|>) (-?[0-9.]+)");

  private static final Map<String, Class<?>> FACTS =
      Map.of(
          "Reading", Reading.class,
          "SignFact", SignFact.class,
          "CircumstanceFact", CircumstanceFact.class,
          "Bread", Bread.class);

  private static final Map<String, Predicate<Reading>> OF_READINGS =
      Map.of(
          "withinUsual()", Reading::withinUsual,
          "belowUsual()", Reading::belowUsual,
          "aboveUsual()", Reading::aboveUsual,
          "farBelowUsual()", Reading::farBelowUsual,
          "farAboveUsual()", Reading::farAboveUsual,
          "belowAllCustom()", Reading::belowAllCustom,
          "aboveAllCustom()", Reading::aboveAllCustom);

  private static final Map<String, Predicate<SignFact>> OF_SIGNS =
      Map.of("seen", SignFact::seen, "!seen", sign -> !sign.seen(), "marked()", SignFact::marked);

  PlainPattern {
    tests = List.copyOf(tests);
  }

  /** What a fact has to pass. */
  sealed interface Test {}

  /** It has one of these names. */
  record Named(List<String> names) implements Test {}

  /** Its value stands so to a limit. */
  record Limited(String sign, double limit) implements Test {}

  /** It has one of these tags, or, turned round, has not. */
  record Tagged(List<String> tags, boolean without) implements Test {}

  /** Something else holds of it. */
  record Being(String word, Predicate<Object> holds) implements Test {
    @Override
    public String toString() {
      return word;
    }
  }

  /**
   * Reads a pattern.
   *
   * @return empty if it says more than this can say
   */
  static Optional<PlainPattern> of(String text) {
    Matcher shape = SHAPE.matcher(text.strip());
    if (!shape.matches() || !FACTS.containsKey(shape.group(2))) {
      return Optional.empty();
    }
    Class<?> fact = FACTS.get(shape.group(2));
    List<Test> tests = new ArrayList<>();
    for (String part : parts(shape.group(3))) {
      Optional<Test> test = test(fact, part);
      if (test.isEmpty()) {
        return Optional.empty();
      }
      tests.add(test.get());
    }
    return Optional.of(new PlainPattern(shape.group(1) != null, fact, tests));
  }

  private static Optional<Test> test(Class<?> fact, String part) {
    if (fact != Bread.class && part.startsWith("name ")) {
      return any(NAME, part).map(Named::new);
    }
    if (fact == Bread.class) {
      Matcher without = NO_TAG.matcher(part);
      return without.matches()
          ? Optional.of(new Tagged(List.of(without.group(1)), true))
          : any(TAG, part).map(tags -> new Tagged(tags, false));
    }
    if (fact == Reading.class) {
      Matcher limit = LIMIT.matcher(part);
      return limit.matches()
          ? Optional.of(new Limited(limit.group(1), Double.parseDouble(limit.group(2))))
          : being(Reading.class, part, OF_READINGS);
    }
    return fact == SignFact.class ? being(SignFact.class, part, OF_SIGNS) : Optional.empty();
  }

  private static <F> Optional<Test> being(
      Class<F> fact, String part, Map<String, Predicate<F>> known) {
    return Optional.ofNullable(known.get(part))
        .map(holds -> new Being(part, one -> holds.test(fact.cast(one))));
  }

  // One or several of a kind, with "or" between them.
  private static Optional<List<String>> any(Pattern each, String part) {
    List<String> found = new ArrayList<>();
    for (String one : part.split(" \\|\\| ")) {
      Matcher matcher = each.matcher(one.strip());
      if (!matcher.matches()) {
        return Optional.empty();
      }
      found.add(matcher.group(1));
    }
    return Optional.of(found);
  }

  // Parted by commas, but for those within quotation marks.
  private static List<String> parts(String text) {
    List<String> parts = new ArrayList<>();
    boolean quoted = false;
    int from = 0;
    for (int at = 0; at < text.length(); at++) {
      char letter = text.charAt(at);
      quoted ^= letter == '"';
      if (letter == ',' && !quoted) {
        parts.add(text.substring(from, at).strip());
        from = at + 1;
      }
    }
    parts.add(text.substring(from).strip());
    return parts;
  }
}
