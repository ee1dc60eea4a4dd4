package crumbtrail.rules;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.workup.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.drools.base.InitialFact;
import org.kie.api.definition.rule.Rule;
import org.kie.api.runtime.rule.Match;
import org.kie.internal.event.rule.RuleEventListener;

/**
 * Collects what the rules say, and forgets what a rule said once the facts that it matched are
 * gone. Used by one thread.
 */
public final class Testimony implements RuleEventListener {
  /** Sorted so that the order of firing does not show; of equals the earlier comes first. */
  private static final Comparator<Word> ORDER =
      Comparator.comparing((Word one) -> one.evidence().cause())
          .thenComparing(one -> one.evidence().rule())
          .thenComparing(one -> one.evidence().facts().toString())
          .thenComparing(Word::number);

  private final IdentityHashMap<Match, List<Word>> heard = new IdentityHashMap<>();

  // Kept in order, since little of it changes from one what-if to the next.
  private final NavigableSet<Word> sorted = new TreeSet<>(ORDER);
  private long spoken;

  private record Word(Evidence evidence, long number) {}

  /**
   * Takes down what a rule says; called from the rules.
   *
   * @param match the firing rule and the facts that it matched
   * @param cause the cause as the rule writes it
   * @param decibans the weight that the sentence stands for
   */
  public void hear(Match match, String cause, double decibans) {
    Rule rule = match.getRule();
    List<Object> facts = new ArrayList<>(match.getObjects());
    // A rule that only asks for what is missing matches the engine's own first fact.
    facts.removeIf(InitialFact.class::isInstance);
    // The kind of bread is worth saying only where nothing else matched.
    if (facts.size() > 1) {
      facts.removeIf(Bread.class::isInstance);
    }
    Word word =
        new Word(
            new Evidence(
                Catalogue.keyOf(cause),
                rule.getName(),
                text(rule, "strand"),
                decibans * trust(facts),
                text(rule, "lesson"),
                text(rule, "source"),
                facts),
            spoken++);
    heard.computeIfAbsent(match, first -> new ArrayList<>(1)).add(word);
    sorted.add(word);
  }

  /** Called by the engine when what a rule matched is no longer so. */
  @Override
  public void onDeleteMatch(Match match) {
    forget(match);
  }

  /** Called by the engine when a match is to be judged anew; the rule will speak again. */
  @Override
  public void onUpdateMatch(Match match) {
    forget(match);
  }

  private void forget(Match match) {
    List<Word> words = heard.remove(match);
    if (words != null) {
      words.forEach(sorted::remove);
    }
  }

  /** What was heard, sorted. */
  List<Evidence> heard() {
    return sorted.stream().map(Word::evidence).toList();
  }

  // A chain is as strong as its weakest link: the least trusted reading sets the weight.
  private static double trust(List<Object> facts) {
    return facts.stream()
        .filter(Reading.class::isInstance)
        .mapToDouble(fact -> ((Reading) fact).trust())
        .min()
        .orElse(1);
  }

  private static String text(Rule rule, String key) {
    Object value = rule.getMetaData().get(key);
    String text = value == null ? "" : value.toString();
    // The engine hands an annotation's text over with its quotation marks.
    return text.length() > 1 && text.startsWith("\"") && text.endsWith("\"")
        ? text.substring(1, text.length() - 1)
        : text;
  }
}
