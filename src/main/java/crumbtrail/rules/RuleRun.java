package crumbtrail.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
