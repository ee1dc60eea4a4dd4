package crumbtrail.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;
import org.kie.internal.event.rule.RuleEventManager;

/**
 * The rules at work on one bake, ready to be asked again about the same bake with something
 * changed: only what changed is taken out and put in, and what the rules said of it goes with it.
 * The answer is the one that {@link RuleBase#run} gives for the same facts; it only comes sooner.
 *
 * <p>Used by one thread. Close it when done.
 */
public final class RuleRun implements AutoCloseable {
  /**
   * A loop in the rules would show as a run that never ends; no bake comes near this many firings.
   */
  private static final int MOST_FIRINGS = 10_000;

  private static final int ALL = -1;
  private static final int NONE = -2;

  private final KieBase base;
  private final Map<String, Testimony.Preface> prefaces;
  private final Broken broken;
  private KieSession session;
  private Testimony testimony;
  private Map<Object, FactHandle> inside = new LinkedHashMap<>();

  RuleRun(KieBase base, Map<String, Testimony.Preface> prefaces, Broken broken) {
    this.base = base;
    this.prefaces = prefaces;
    this.broken = broken;
    begin();
  }

  private void begin() {
    testimony = new Testimony(prefaces);
    session = base.newKieSession();
    session.setGlobal("testimony", testimony);
    ((RuleEventManager) session).addEventListener(testimony);
    inside = new LinkedHashMap<>();
  }

  /**
   * What the rules say of these facts.
   *
   * @param facts readings, signs, circumstances, the bread: all of them, not only what changed;
   *     neither order nor repetition matters. A rule that breaks off is taken out, and the others
   *     are asked again.
   * @return by cause, in a fixed order; the list of a cause of which the rules say what they said
   *     when they were last asked is the very same list
   */
  public Map<String, List<Evidence>> evidence(Collection<?> facts) {
    Set<String> met = new HashSet<>();
    while (true) {
      try {
        return tried(facts);
      } catch (RuntimeException fault) {
        // What it left behind is not to be trusted.
        session.dispose();
        Optional<String> rule = broken.takeOut(base, fault);
        begin();
        // Each round there is one rule less; a rule that comes up again was not what broke.
        if (rule.isEmpty() || !met.add(rule.get())) {
          throw fault;
        }
      }
    }
  }

  /**
   * What the rules say of some facts, and where they say something else with one fact more.
   *
   * @param without by cause
   * @param changes for each of the facts more, the causes of which something else is said then
   */
  public record OneMore(
      Map<String, List<Evidence>> without, List<Map<String, List<Evidence>>> changes) {}

  /**
   * What the rules say of these facts with one fact more, for each of some: what {@link #evidence}
   * says of each by itself, from one run with all of them. A word that rests on two of them is
   * heard of neither.
   *
   * @param facts as for {@link #evidence}
   * @param more facts whose silence no rule minds ({@link RuleBase#mindsSilence})
   */
  public OneMore withOneMore(Collection<?> facts, List<?> more) {
    Map<String, List<Evidence>> without = evidence(facts);
    Map<String, List<Evidence>> with = evidence(joined(facts, more));
    List<Map<String, List<Evidence>>> changes = new ArrayList<>(more.size());
    more.forEach(one -> changes.add(new HashMap<>()));
    Map<Object, Integer> places = new HashMap<>();
    for (int place = 0; place < more.size(); place++) {
      places.put(more.get(place), place);
    }
    facts.forEach(places::remove);
    with.forEach(
        (cause, words) -> {
          if (!same(words, without.get(cause))) {
            apart(words, places).forEach((place, heard) -> changes.get(place).put(cause, heard));
          }
        });
    return new OneMore(without, changes);
  }

  private static List<Object> joined(Collection<?> facts, List<?> more) {
    List<Object> joined = new ArrayList<>(facts);
    joined.addAll(more);
    return joined;
  }

  @SuppressWarnings("ReferenceEquality") // as the testimony hands lists out
  private static boolean same(List<Evidence> one, @Nullable List<Evidence> other) {
    return one == other;
  }

  // The words that each of the places hears, of those that hear more than all others do.
  private static Map<Integer, List<Evidence>> apart(
      List<Evidence> words, Map<Object, Integer> places) {
    int[] owners = new int[words.size()];
    Map<Integer, List<Evidence>> apart = new HashMap<>();
    for (int word = 0; word < owners.length; word++) {
      owners[word] = owner(words.get(word), places);
      if (owners[word] >= 0) {
        apart.putIfAbsent(owners[word], new ArrayList<>());
      }
    }
    apart.forEach(
        (place, heard) -> {
          for (int word = 0; word < owners.length; word++) {
            if (owners[word] == ALL || owners[word] == place) {
              heard.add(words.get(word));
            }
          }
        });
    return apart;
  }

  private static int owner(Evidence word, Map<Object, Integer> places) {
    int owner = ALL;
    for (Object fact : word.facts()) {
      Integer place = places.get(fact);
      if (place != null) {
        if (owner != ALL && owner != place) {
          return NONE;
        }
        owner = place;
      }
    }
    return owner;
  }

  private Map<String, List<Evidence>> tried(Collection<?> facts) {
    Map<Object, FactHandle> staying = new LinkedHashMap<>(2 * facts.size());
    List<Object> fresh = new ArrayList<>();
    for (Object fact : facts) {
      FactHandle handle = inside.remove(fact);
      if (handle != null) {
        staying.put(fact, handle);
      } else if (!staying.containsKey(fact)) {
        fresh.add(fact);
      }
    }
    inside.values().forEach(session::delete);
    inside = staying;
    for (Object fact : fresh) {
      inside.computeIfAbsent(fact, session::insert);
    }
    session.fireAllRules(MOST_FIRINGS);
    return testimony.heard();
  }

  @Override
  public void close() {
    session.dispose();
  }
}
