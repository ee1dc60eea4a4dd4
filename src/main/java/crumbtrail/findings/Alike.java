package crumbtrail.findings;

import crumbtrail.rules.Facts;
import crumbtrail.rules.Sights;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Findings on workups of which the rules cannot tell one from another. Of facts that are alike the
 * first stands for all, so that little changes before the rules from one what-if to the next.
 *
 * <p>Used by one thread.
 */
final class Alike {
  private final Sights sights;
  private final Map<List<Object>, Findings> known = new HashMap<>();
  private final Map<Object, Object> first = new HashMap<>();

  Alike(Sights sights) {
    this.sights = sights;
  }

  /**
   * What was found on a workup that looks the same to the rules, or else what is found on this one.
   *
   * @param judge finds, from facts that look like those of the workup
   */
  Findings alike(Workup workup, Function<List<Object>, Findings> judge) {
    List<Object> facts = Facts.of(workup);
    List<Object> seen = sights.of(facts);
    Findings found = known.get(seen);
    if (found == null) {
      List<Object> standing = new ArrayList<>(facts.size());
      for (int one = 0; one < facts.size(); one++) {
        Object fact = facts.get(one);
        standing.add(first.computeIfAbsent(seen.get(one), sight -> fact));
      }
      found = judge.apply(standing);
      known.put(seen, found);
    }
    return found;
  }
}
