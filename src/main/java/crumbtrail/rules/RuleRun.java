package crumbtrail.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

  private final KieSession session;
  private final Testimony testimony = new Testimony();
  private final Map<Object, FactHandle> inside = new LinkedHashMap<>();

  RuleRun(KieBase base) {
    session = base.newKieSession();
    session.setGlobal("testimony", testimony);
    ((RuleEventManager) session).addEventListener(testimony);
  }

  /**
   * What the rules say of these facts.
   *
   * @param facts readings, signs, circumstances, the bread: all of them, not only what changed;
   *     neither order nor repetition matters
   * @return in a fixed order
   */
  public List<Evidence> evidence(Collection<?> facts) {
    Set<Object> wanted = new HashSet<>(facts);
    Iterator<Map.Entry<Object, FactHandle>> each = inside.entrySet().iterator();
    while (each.hasNext()) {
      Map.Entry<Object, FactHandle> entry = each.next();
      if (!wanted.contains(entry.getKey())) {
        session.delete(entry.getValue());
        each.remove();
      }
    }
    List<Object> fresh = new ArrayList<>(facts);
    fresh.removeIf(inside::containsKey);
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
