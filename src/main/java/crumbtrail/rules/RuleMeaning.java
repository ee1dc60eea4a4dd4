package crumbtrail.rules;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Source;
import crumbtrail.rules.WrittenRule.Condition;
import crumbtrail.rules.WrittenRule.Kind;
import crumbtrail.rules.WrittenRule.Strength;
import crumbtrail.rules.WrittenRule.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Understands the sentences of checked rules. */
final class RuleMeaning {
  private static final Pattern VERDICT =
      Pattern.compile(
          "(Suspect|Doubt|Clear) \"([^\"]+)\"(?: (faintly|plainly|firmly|surely|beyond doubt))?");

  private RuleMeaning() {}

  /** The rules in the order in which they were read; what no check lets through is left out. */
  static List<WrittenRule> of(List<RuleText> rules, Sentences sentences) {
    return rules.stream().map(rule -> of(rule, sentences)).toList();
  }

  private static WrittenRule of(RuleText rule, Sentences sentences) {
    List<Condition> conditions = new ArrayList<>();
    for (RuleText.Sentence sentence : rule.conditions()) {
      sentences
          .condition(sentence.words())
          .ifPresent(slots -> conditions.add(condition(sentence.words(), slots)));
    }
    List<Verdict> verdicts = new ArrayList<>();
    for (RuleText.Sentence sentence : rule.consequences()) {
      Matcher said = VERDICT.matcher(sentence.words());
      if (said.matches()) {
        verdicts.add(verdict(said));
      }
    }
    return new WrittenRule(
        rule.name(),
        rule.file(),
        rule.line(),
        rule.metadata().getOrDefault("strand", ""),
        rule.metadata().getOrDefault("source", Source.COMMON_PRACTICE),
        rule.metadata().getOrDefault("lesson", ""),
        conditions,
        verdicts);
  }

  private static Condition condition(String sentence, Map<String, String> slots) {
    List<String> keys = new ArrayList<>();
    List<Double> edges = new ArrayList<>();
    String of = "";
    for (Map.Entry<String, String> slot : slots.entrySet()) {
      String name = slot.getKey().replaceAll("\\d", "");
      switch (name) {
        case "reading", "tag" -> keys.add(slot.getValue());
        case "sign", "circumstance" -> keys.add(Catalogue.keyOf(slot.getValue()));
        case "limit", "least", "most" -> {
          edges.add(Double.valueOf(slot.getValue()));
          continue;
        }
        default -> {
          continue;
        }
      }
      of = name;
    }
    return new Condition(kind(of, sentence), keys, sentence, edges);
  }

  private static Kind kind(String of, String sentence) {
    return switch (of) {
      case "reading" -> sentence.startsWith("Nothing is known") ? Kind.NO_READING : Kind.READING;
      case "circumstance" -> Kind.CIRCUMSTANCE;
      case "tag" -> Kind.BREAD;
      default -> {
        if (sentence.endsWith("and did not see it")) {
          yield Kind.SIGN_ABSENT;
        }
        yield sentence.startsWith("The baker did not speak") ? Kind.SIGN_UNSPOKEN : Kind.SIGN;
      }
    };
  }

  private static Verdict verdict(Matcher said) {
    Strength strength = said.group(3) == null ? Strength.CLEAR : Strength.of(said.group(3));
    return new Verdict(Catalogue.keyOf(said.group(2)), said.group(1).equals("Suspect"), strength);
  }
}
