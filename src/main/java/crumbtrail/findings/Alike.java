package crumbtrail.findings;

import crumbtrail.rules.Facts;
import crumbtrail.rules.Sights;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

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
  private @Nullable Workup before;
  private List<Object> stoodFor = List.of();

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
      found = judge.apply(standing(facts, seen));
      known.put(seen, found);
    }
    return found;
  }

  /** Facts that look to the rules like those of a workup. */
  @SuppressWarnings("ReferenceEquality") // the same workup is asked about again and again
  List<Object> facts(Workup workup) {
    if (before != workup) {
      List<Object> facts = Facts.of(workup);
      stoodFor = standing(facts, sights.of(facts));
      before = workup;
    }
    return stoodFor;
  }

  private List<Object> standing(List<Object> facts, List<Object> seen) {
    List<Object> standing = new ArrayList<>(facts.size());
    for (int one = 0; one < facts.size(); one++) {
      Object fact = facts.get(one);
      standing.add(first.computeIfAbsent(seen.get(one), sight -> fact));
    }
    return standing;
  }
}
