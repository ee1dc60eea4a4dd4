package crumbtrail.rules;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.workup.Reading;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
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
  private static final Comparator<Word> ORDER = Testimony::compare;

  private static final int REMEMBERED = 3;
  private static final double FIRM = WrittenRule.Strength.FIRMLY.decibans();

  private final Map<String, Preface> prefaces;
  private final IdentityHashMap<Match, List<Word>> heard = new IdentityHashMap<>();
  private final Map<String, List<Word>> words = new HashMap<>();

  // Kept in order, since little of it changes from one what-if to the next.
  private final NavigableMap<String, List<Evidence>> told = new TreeMap<>();

  // What-ifs go out from one bake and come back to it; so do the lists.
  private final Map<String, Deque<List<Evidence>>> before = new HashMap<>();
  private final Set<String> changed = new HashSet<>();
  private long spoken;

  /** What a rule says whatever it matched. */
  record Preface(String strand, String lesson, String source) {}

  /**
   * @param prefaces of the rules that spoke before, by name; grows, and is shared by all
   *     testimonies on one rule base
   */
  Testimony(Map<String, Preface> prefaces) {
    this.prefaces = prefaces;
  }

  private record Word(long number, Evidence evidence) {}

  private static int compare(Word one, Word other) {
    int order = one.evidence().rule().compareTo(other.evidence().rule());
    if (order == 0) {
      order = Facts.compare(one.evidence().facts(), other.evidence().facts());
    }
    return order == 0 ? Long.compare(one.number(), other.number()) : order;
  }

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
    Preface preface = preface(rule);
    Word word =
        new Word(
            spoken++,
            new Evidence(
                Catalogue.keyOf(cause),
                rule.getName(),
                preface.strand(),
                weight(decibans, trust(facts)),
                preface.lesson(),
                preface.source(),
                facts));
    heard.computeIfAbsent(match, first -> new ArrayList<>(1)).add(word);
    words.computeIfAbsent(word.evidence().cause(), first -> new ArrayList<>()).add(word);
    changed.add(word.evidence().cause());
  }

  private Preface preface(Rule rule) {
    Preface known = prefaces.get(rule.getName());
    if (known == null) {
      known = new Preface(text(rule, "strand"), text(rule, "lesson"), text(rule, "source"));
      prefaces.put(rule.getName(), known);
    }
    return known;
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
    List<Word> said = heard.remove(match);
    if (said != null) {
      for (Word word : said) {
        words.get(word.evidence().cause()).remove(word);
        changed.add(word.evidence().cause());
      }
    }
  }

  /**
   * What was heard, by cause, sorted. The list of a cause of which the same was heard when it was
   * last asked, or shortly before, is the very same list.
   */
  Map<String, List<Evidence>> heard() {
    for (String cause : changed) {
      List<Word> now = words.get(cause);
      if (now.isEmpty()) {
        told.remove(cause);
      } else {
        now.sort(ORDER);
        List<Evidence> evidence = new ArrayList<>(now.size());
        for (Word word : now) {
          evidence.add(word.evidence());
        }
        told.put(cause, again(cause, evidence));
      }
    }
    changed.clear();
    return Collections.unmodifiableMap(new LinkedHashMap<>(told));
  }

  private List<Evidence> again(String cause, List<Evidence> evidence) {
    Deque<List<Evidence>> lists =
        before.computeIfAbsent(cause, first -> new ArrayDeque<>(REMEMBERED));
    List<Evidence> told = Collections.unmodifiableList(evidence);
    for (List<Evidence> list : lists) {
      if (list.equals(evidence)) {
        told = list;
      }
    }
    // What was told last stands first and is forgotten last.
    if (!lists.removeFirstOccurrence(told) && lists.size() == REMEMBERED) {
      lists.removeLast();
    }
    lists.addFirst(told);
    return told;
  }

  // A chain is as strong as its weakest link: the least trusted reading sets the weight.
  // Nothing is surer than what it rests on: a word beyond firm counts beyond it only as far as the
  // reading is likelier right than wrong.
  private static double weight(double decibans, double trust) {
    double beyond = Math.max(0, decibans - FIRM);
    return (decibans - beyond) * trust + beyond * Math.max(0, 2 * trust - 1);
  }

  private static double trust(List<Object> facts) {
    double least = 1;
    for (Object fact : facts) {
      if (fact instanceof Reading reading) {
        least = Math.min(least, reading.trust());
      }
    }
    return least;
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
