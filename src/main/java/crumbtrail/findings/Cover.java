package crumbtrail.findings;

import crumbtrail.knowledge.ActingTogether;
import crumbtrail.knowledge.Cause;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * Chooses the causes that together account for the signs seen, at the least cost. No cause is taken
 * that brings nothing.
 *
 * <p>A cause costs its log-odds against, so that a far-fetched one is dear; and never less than
 * {@link #EACH}, so that beyond four to one all causes cost the same and the smaller set wins, and
 * of sets of one size the likelier. A cause that has a known partner in the set costs a little
 * less. A finer cause accounts for whatever its coarser causes account for, since where the finer
 * one was at work the coarser was.
 *
 * <p>Up to {@value #EXACT} signs (signs that exactly the same causes explain count as one) the
 * answer is exact: depth-first search, cut off where what is left cannot be had cheaply enough. Of
 * more signs the cause that is cheapest for what it newly explains is taken again and again.
 */
final class Cover {
  /** Log-odds, in decibans, at which a cause would cost nothing but for the least cost. */
  static final double FREE = 12;

  /** What a cause costs at least. */
  static final double EACH = 6;

  /** What a cause saves that has a known partner in the set (our choice). */
  static final double PARTNER = 1.5;

  static final int EXACT = 12;

  private static final double TIE = 1e-9;

  private final List<Finding> ranked;
  private final int[] masks;
  private final double[] costs;
  private final BitSet[] partners;
  private double[] least = {};
  private List<Integer> best = List.of();
  private double bestCost = Double.POSITIVE_INFINITY;

  private Cover(List<Finding> ranked, int[] masks, List<ActingTogether> pairs) {
    this.ranked = ranked;
    this.masks = masks;
    this.costs = ranked.stream().mapToDouble(Cover::cost).toArray();
    this.partners = partners(ranked, pairs);
  }

  /**
   * @param ranked causes, likeliest first
   * @param signs the signs to be accounted for, each by at least one of the causes
   * @param pairs causes that act together
   * @return the chosen causes, likeliest first; the first cause alone where no sign was seen
   */
  static List<Finding> of(List<Finding> ranked, Set<String> signs, List<ActingTogether> pairs) {
    if (ranked.isEmpty() || signs.isEmpty()) {
      return ranked.stream().limit(1).toList();
    }
    Map<Integer, Set<String>> explained = explained(ranked);
    Map<Set<Integer>, Integer> classes = new LinkedHashMap<>();
    for (String sign : signs) {
      Set<Integer> by = new LinkedHashSet<>();
      explained.forEach((cause, all) -> addIf(by, cause, all.contains(sign)));
      classes.putIfAbsent(by, classes.size());
    }
    if (classes.size() > EXACT) {
      return greedy(ranked, explained, signs);
    }
    int[] masks = new int[ranked.size()];
    classes.forEach((by, bit) -> by.forEach(cause -> masks[cause] |= 1 << bit));
    Cover cover = new Cover(ranked, masks, pairs);
    int all = (1 << classes.size()) - 1;
    cover.least = cover.least(all);
    cover.search(all, new BitSet(), 0);
    return cover.best.stream().map(ranked::get).toList();
  }

  private static void addIf(Set<Integer> set, int member, boolean add) {
    if (add) {
      set.add(member);
    }
  }

  /** What a cause costs by itself. */
  static double cost(Finding finding) {
    return Math.max(EACH, FREE - decibans(finding));
  }

  /** Log-odds of the probability that the report states. */
  static double decibans(Finding finding) {
    double sure = 1e-9;
    double probability = Math.min(1 - sure, Math.max(sure, finding.probability()));
    return 10 * Math.log10(probability / (1 - probability));
  }

  // What each cause explains, itself or as a finer form of others.
  private static Map<Integer, Set<String>> explained(List<Finding> ranked) {
    Map<String, Finding> byKey = new HashMap<>();
    ranked.forEach(one -> byKey.put(one.cause().key(), one));
    Map<Integer, Set<String>> explained = new LinkedHashMap<>();
    for (int place = 0; place < ranked.size(); place++) {
      Set<String> signs = new LinkedHashSet<>();
      gather(ranked.get(place).cause(), byKey, new LinkedHashSet<>(), signs);
      explained.put(place, signs);
    }
    return explained;
  }

  private static void gather(
      Cause cause, Map<String, Finding> byKey, Set<String> met, Set<String> signs) {
    if (met.add(cause.key()) && byKey.containsKey(cause.key())) {
      signs.addAll(byKey.get(cause.key()).explains());
      for (String coarser : cause.refines()) {
        if (byKey.containsKey(coarser)) {
          gather(byKey.get(coarser).cause(), byKey, met, signs);
        }
      }
    }
  }

  // Of each cause the places of those that act together with it.
  private static BitSet[] partners(List<Finding> ranked, List<ActingTogether> pairs) {
    BitSet[] partners = new BitSet[ranked.size()];
    Map<String, Integer> places = new HashMap<>();
    for (int place = 0; place < partners.length; place++) {
      partners[place] = new BitSet();
      places.put(ranked.get(place).cause().key(), place);
    }
    for (ActingTogether pair : pairs) {
      List<Integer> here =
          pair.causes().stream().map(places::get).filter(Objects::nonNull).toList();
      for (int one : here) {
        here.stream().filter(other -> other != one).forEach(partners[one]::set);
      }
    }
    return partners;
  }

  // The least that each set of signs can cost, every cause taken as if its partner were there.
  private double[] least(int all) {
    double[] least = new double[all + 1];
    for (int signs = 1; signs <= all; signs++) {
      int first = Integer.lowestOneBit(signs);
      least[signs] = Double.POSITIVE_INFINITY;
      for (int cause = 0; cause < masks.length; cause++) {
        if ((masks[cause] & first) != 0) {
          double cost = costs[cause] - (partners[cause].isEmpty() ? 0 : PARTNER);
          least[signs] = Math.min(least[signs], cost + least[signs & ~masks[cause]]);
        }
      }
    }
    return least;
  }

  private void search(int open, BitSet chosen, double floor) {
    if (floor + least[open] > bestCost + TIE) {
      return;
    }
    if (open == 0) {
      weigh(chosen);
      return;
    }
    int first = Integer.lowestOneBit(open);
    for (int cause = 0; cause < masks.length; cause++) {
      if ((masks[cause] & first) != 0) {
        chosen.set(cause);
        double cost = costs[cause] - (partners[cause].isEmpty() ? 0 : PARTNER);
        search(open & ~masks[cause], chosen, floor + cost);
        chosen.clear(cause);
      }
    }
  }

  private void weigh(BitSet chosen) {
    if (redundant(chosen)) {
      return;
    }
    double cost =
        chosen.stream()
            .mapToDouble(cause -> costs[cause] - (partners[cause].intersects(chosen) ? PARTNER : 0))
            .sum();
    List<Integer> set = chosen.stream().boxed().toList();
    if (cost < bestCost - TIE || (cost < bestCost + TIE && better(set, best))) {
      best = set;
      bestCost = Math.min(cost, bestCost);
    }
  }

  private boolean redundant(BitSet chosen) {
    return chosen.stream()
        .anyMatch(
            cause ->
                (masks[cause]
                        & ~chosen.stream()
                            .filter(other -> other != cause)
                            .map(other -> masks[other])
                            .reduce(0, (one, other) -> one | other))
                    == 0);
  }

  // Of sets that cost the same: the smaller, the likelier in sum, the one higher in the ranking.
  private boolean better(List<Integer> one, List<Integer> other) {
    if (one.size() != other.size()) {
      return one.size() < other.size();
    }
    double difference = sum(one) - sum(other);
    if (Math.abs(difference) > TIE) {
      return difference > 0;
    }
    for (int place = 0; place < one.size(); place++) {
      if (!one.get(place).equals(other.get(place))) {
        return one.get(place) < other.get(place);
      }
    }
    return false;
  }

  private double sum(List<Integer> set) {
    return set.stream().mapToDouble(cause -> decibans(ranked.get(cause))).sum();
  }

  private static List<Finding> greedy(
      List<Finding> ranked, Map<Integer, Set<String>> explained, Set<String> signs) {
    Set<String> open = new LinkedHashSet<>(signs);
    List<Integer> chosen = new ArrayList<>();
    while (!open.isEmpty()) {
      int next = -1;
      double dearest = Double.POSITIVE_INFINITY;
      for (int cause = 0; cause < ranked.size(); cause++) {
        long brings = explained.get(cause).stream().filter(open::contains).count();
        double each = cost(ranked.get(cause)) / brings;
        if (brings > 0 && each < dearest) {
          next = cause;
          dearest = each;
        }
      }
      if (next < 0) {
        break;
      }
      chosen.add(next);
      open.removeAll(explained.get(next));
    }
    return chosen.stream().sorted().map(ranked::get).toList();
  }
}
