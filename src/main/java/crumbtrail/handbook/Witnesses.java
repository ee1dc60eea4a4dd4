package crumbtrail.handbook;

import crumbtrail.rules.RuleBook;
import crumbtrail.rules.WrittenRule;
import crumbtrail.rules.WrittenRule.Condition;
import crumbtrail.rules.WrittenRule.Kind;
import crumbtrail.rules.WrittenRule.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Who says what of which cause: the rule book, turned so that pages can be written from it. */
final class Witnesses {
  static final Comparator<Words> STRONGEST_FIRST =
      Comparator.comparingDouble((Words one) -> -Math.abs(one.decibans()))
          .thenComparing(one -> one.rule().name());

  private final RuleBook book;
  private final Strengths strengths;
  private final Map<String, List<Words>> byCause = new TreeMap<>();
  // The strongest word for or against a cause that rests on one sign alone: sign, cause.
  private final Map<String, Map<String, Words>> pairs = new TreeMap<>();

  Witnesses(RuleBook book, Strengths strengths) {
    this.book = book;
    this.strengths = strengths;
    for (WrittenRule rule : book.rules()) {
      for (Verdict verdict : rule.verdicts()) {
        byCause
            .computeIfAbsent(verdict.cause(), key -> new ArrayList<>())
            .add(new Words(rule, verdict, strengths.decibans(rule, verdict, Optional.empty())));
        if (Strengths.alone(rule)) {
          signs(rule).forEach(sign -> pair(sign, rule, verdict));
        }
      }
    }
    byCause.values().forEach(words -> words.sort(STRONGEST_FIRST));
  }

  private void pair(String sign, WrittenRule rule, Verdict verdict) {
    Words words = new Words(rule, verdict, strengths.decibans(rule, verdict, Optional.of(sign)));
    pairs
        .computeIfAbsent(sign, key -> new TreeMap<>())
        .merge(
            verdict.cause(),
            words,
            (old, other) -> STRONGEST_FIRST.compare(old, other) <= 0 ? old : other);
  }

  /** Signs on which a rule rests. */
  static List<String> signs(WrittenRule rule) {
    return rule.conditions().stream()
        .filter(condition -> condition.kind() == Kind.SIGN)
        .map(Condition::keys)
        .flatMap(List::stream)
        .toList();
  }

  /** What a sign alone says of a cause. */
  Optional<Words> pair(String sign, String cause) {
    return Optional.ofNullable(pairs.getOrDefault(sign, Map.of()).get(cause));
  }

  /** What a sign alone says, by cause. */
  Map<String, Words> ofSign(String sign) {
    return pairs.getOrDefault(sign, Map.of());
  }

  /** What single signs say of a cause, by sign, in the order of the catalogue. */
  Map<String, Words> signsOf(String cause) {
    Map<String, Words> found = new LinkedHashMap<>();
    book.catalogue()
        .knowledge()
        .signs()
        .forEach(sign -> pair(sign.key(), cause).ifPresent(one -> found.put(sign.key(), one)));
    return found;
  }

  /** Every rule's word on a cause, strongest first. */
  List<Words> on(String cause) {
    return byCause.getOrDefault(cause, List.of());
  }

  /** Rules that in one breath speak for the one cause and against the other. */
  List<WrittenRule> partings(String one, String other) {
    return book.rules().stream()
        .filter(
            rule ->
                (says(rule, one, true) && says(rule, other, false))
                    || (says(rule, one, false) && says(rule, other, true)))
        .sorted(Comparator.comparing(WrittenRule::name))
        .toList();
  }

  /** Whether a rule speaks for the cause, or against it. */
  static boolean says(WrittenRule rule, String cause, boolean speaksFor) {
    return rule.verdicts().stream()
        .anyMatch(word -> word.cause().equals(cause) && word.speaksFor() == speaksFor);
  }

  /** How many independent published tables name the cause for the sign. */
  int tables(String sign, String cause) {
    return strengths.tables(sign, cause);
  }
}
