package crumbtrail.handbook;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.rules.WrittenRule;
import crumbtrail.rules.WrittenRule.Condition;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Plain words with links, as seen from a page one folder below the handbook's own. */
final class Plain {
  private final Catalogue catalogue;

  Plain(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** The conditions of a rule, joined by "and". */
  String when(WrittenRule rule) {
    return rule.conditions().stream().map(this::said).collect(Collectors.joining(" and "));
  }

  private String said(Condition condition) {
    List<String> keys = condition.keys();
    return switch (condition.kind()) {
      case SIGN ->
          (condition.sentence().startsWith("The baker clearly") ? "clearly " : "")
              + any(keys, this::sign);
      case SIGN_ABSENT -> "looked for and not there: " + any(keys, this::sign);
      case SIGN_UNSPOKEN -> "no word of " + any(keys, this::sign);
      case CIRCUMSTANCE ->
          any(keys, key -> catalogue.circumstance(key).map(one -> one.name()).orElse(key));
      case READING -> lower(condition.sentence());
      case NO_READING -> "the " + keys.get(0) + " is not known";
      case BREAD -> lower(condition.sentence().replace("\"", ""));
    };
  }

  private static String any(List<String> keys, Function<String, String> word) {
    return keys.stream().map(word).collect(Collectors.joining(" or "));
  }

  /** A sign by its name, linked. */
  String sign(String key) {
    String name = catalogue.sign(key).map(sign -> sign.name()).orElse(key);
    return "[" + name + "](../signs/" + key + ".md)";
  }

  /** A cause by its name, linked. */
  String cause(String key) {
    return "[" + name(key) + "](../causes/" + key + ".md)";
  }

  /** A cause by its name. */
  String name(String key) {
    return catalogue.cause(key).map(Cause::name).orElse(key);
  }

  /** With a capital in front, or behind the bracket of a link. */
  static String upper(String words) {
    int first = words.startsWith("[") ? 1 : 0;
    return words.length() <= first
        ? words
        : words.substring(0, first)
            + words.substring(first, first + 1).toUpperCase(Locale.ROOT)
            + words.substring(first + 1);
  }

  private static String lower(String words) {
    return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
  }
}
