package crumbtrail.rules;

import crumbtrail.knowledge.Fault;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Finds rules that say something of the same cause under the same conditions. One of the two is
 * never heard, or they contradict each other; either way one of them misleads its reader.
 */
final class RuleTwins {
  private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");

  private RuleTwins() {}

  /** One fault for each sentence about a cause that an earlier rule speaks of in the same case. */
  static List<Fault> faults(List<RuleText> rules) {
    Map<String, RuleText> first = new HashMap<>();
    List<Fault> faults = new ArrayList<>();
    for (RuleText rule : rules) {
      String conditions = conditions(rule);
      for (RuleText.Sentence sentence : rule.consequences()) {
        Matcher cause = QUOTED.matcher(sentence.words());
        if (!cause.find()) {
          continue;
        }
        RuleText twin = first.putIfAbsent(conditions + " => " + cause.group(1), rule);
        if (twin != null) {
          faults.add(fault(rule, sentence, cause.group(1), twin));
        }
      }
    }
    return faults;
  }

  private static Fault fault(
      RuleText rule, RuleText.Sentence sentence, String cause, RuleText twin) {
    return new Fault(
        rule.file(),
        sentence.line(),
        "\"%s\" and \"%s\" (%s:%d) both speak of \"%s\" under the same conditions"
            .formatted(rule.name(), twin.name(), twin.file(), twin.line(), cause),
        "Say it once, or add what tells the two apart");
  }

  // Neither the order of the conditions nor that of the things named in one of them matters.
  private static String conditions(RuleText rule) {
    return rule.conditions().stream()
        .map(sentence -> inOrder(sentence.words()))
        .distinct()
        .sorted()
        .collect(Collectors.joining(" & "));
  }

  private static String inOrder(String sentence) {
    Matcher quoted = QUOTED.matcher(sentence);
    String frame = quoted.replaceAll("").replace(" or ", " ").replaceAll("\\s+", " ");
    return quoted.reset().results().map(found -> found.group(1)).sorted().toList() + frame;
  }
}
