package crumbtrail.handbook;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.rules.WrittenRule;
import crumbtrail.rules.WrittenRule.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Causes that show much the same, and what tells them apart. */
final class Neighbours {
  private static final int MOST = 4;
  private static final int SHARED = 3;
  private static final int TELLING = 3;
  // By how much a sign must speak louder for the one to tell it from the other, decibans.
  private static final double LOUDER = 3;

  private final Catalogue catalogue;
  private final Witnesses witnesses;
  private final Plain plain;

  Neighbours(Catalogue catalogue, Witnesses witnesses) {
    this.catalogue = catalogue;
    this.witnesses = witnesses;
    this.plain = new Plain(catalogue);
  }

  /** Keys of the causes that share most of what is seen, the nearest first. */
  List<String> of(String cause) {
    Map<String, Double> shared = new TreeMap<>();
    for (Cause other : catalogue.knowledge().causes()) {
      if (!other.key().equals(cause) && !kin(other, cause)) {
        double sum =
            common(cause, other.key()).values().stream().mapToDouble(Double::doubleValue).sum();
        shared.put(other.key(), sum);
      }
    }
    return loudest(shared, MOST);
  }

  // Finer forms and roots show what the coarser cause shows; they are named at the top.
  private boolean kin(Cause other, String cause) {
    return other.refines().contains(cause)
        || catalogue.cause(cause).filter(one -> one.refines().contains(other.key())).isPresent();
  }

  /** The signs that both show, linked, the loudest first. */
  List<String> shared(String cause, String other) {
    return loudest(common(cause, other), SHARED).stream().map(plain::sign).toList();
  }

  private Map<String, Double> common(String cause, String other) {
    Map<String, Double> theirs = weights(other);
    Map<String, Double> common = weights(cause);
    common.replaceAll((sign, weight) -> Math.min(weight, theirs.getOrDefault(sign, 0.0)));
    common.values().removeIf(weight -> weight <= 0);
    return common;
  }

  /**
   * What speaks for the one rather than for the other: second signs, and what was measured or done
   * where a rule parts the two. Where there is neither, what speaks loudest for the one alone.
   */
  List<String> telling(String cause, String other) {
    Map<String, Double> theirs = new TreeMap<>();
    witnesses.signsOf(other).forEach((sign, words) -> theirs.put(sign, words.decibans()));
    Map<String, Double> louder = weights(cause);
    louder.replaceAll((sign, weight) -> weight - theirs.getOrDefault(sign, 0.0));
    louder.values().removeIf(weight -> weight < LOUDER);
    List<String> telling =
        new ArrayList<>(loudest(louder, TELLING).stream().map(plain::sign).toList());
    witnesses.partings(cause, other).stream()
        .filter(rule -> Witnesses.says(rule, cause, true) && !rule.looksAt(Kind.SIGN))
        .min(SIMPLEST)
        .or(() -> telling.isEmpty() ? alone(cause, other) : Optional.empty())
        .map(plain::when)
        .ifPresent(telling::add);
    return telling;
  }

  private static final Comparator<WrittenRule> SIMPLEST =
      Comparator.comparingInt((WrittenRule rule) -> rule.conditions().size())
          .thenComparing(WrittenRule::name);

  // The loudest rule for the one that says nothing for the other.
  private Optional<WrittenRule> alone(String cause, String other) {
    return witnesses.on(cause).stream()
        .filter(words -> words.decibans() > 0)
        .map(Words::rule)
        .filter(rule -> !Witnesses.says(rule, other, true))
        .findFirst();
  }

  private Map<String, Double> weights(String cause) {
    Map<String, Double> weights = new TreeMap<>();
    witnesses.signsOf(cause).forEach((sign, words) -> weights.put(sign, words.decibans()));
    weights.values().removeIf(weight -> weight <= 0);
    return weights;
  }

  private static List<String> loudest(Map<String, Double> weights, int most) {
    return weights.entrySet().stream()
        .filter(one -> one.getValue() > 0)
        .sorted(
            Map.Entry.<String, Double>comparingByValue(Comparator.reverseOrder())
                .thenComparing(Map.Entry.comparingByKey()))
        .limit(most)
        .map(Map.Entry::getKey)
        .toList();
  }
}
