package crumbtrail.findings;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The likeliest small set of causes that together account for the signs seen. Each cause costs its
 * odds against, so that one likely cause beats two and two likely ones beat a far-fetched one that
 * explains everything.
 */
final class Cover {
  /** Causes further down than this are not tried; the sets grow fast and the tail never wins. */
  private static final int TRIED = 14;

  private static final int LARGEST = 4;

  /** Log-odds, in decibans, at which taking one more cause into the story costs next to nothing. */
  private static final double FREE = 12;

  private final List<Finding> candidates;
  private final Set<String> signs;
  private List<Finding> best = List.of();
  private double bestCost = Double.POSITIVE_INFINITY;

  private Cover(List<Finding> candidates, Set<String> signs) {
    this.candidates = candidates;
    this.signs = signs;
  }

  /**
   * @param ranked causes, likeliest first
   * @param signs the signs to be accounted for, each by at least one of the causes
   * @return keys of the chosen causes, likeliest first; the first cause alone where no sign was
   *     seen
   */
  static List<String> of(List<Finding> ranked, Set<String> signs) {
    if (ranked.isEmpty()) {
      return List.of();
    }
    if (signs.isEmpty()) {
      return List.of(ranked.get(0).cause().key());
    }
    List<Finding> candidates = new ArrayList<>();
    Set<String> reachable = new HashSet<>();
    for (Finding finding : ranked) {
      boolean bringsNew = !reachable.containsAll(finding.explains());
      if (candidates.size() < TRIED || bringsNew) {
        candidates.add(finding);
        reachable.addAll(finding.explains());
      }
    }
    Cover cover = new Cover(candidates, signs);
    cover.search(0, List.of(), Set.of(), 0);
    List<Finding> chosen = cover.best.isEmpty() ? cover.greedy() : cover.best;
    return chosen.stream().map(finding -> finding.cause().key()).toList();
  }

  private void search(int from, List<Finding> chosen, Set<String> covered, double cost) {
    if (cost >= bestCost) {
      return;
    }
    if (covered.containsAll(signs)) {
      best = chosen;
      bestCost = cost;
      return;
    }
    if (chosen.size() == LARGEST) {
      return;
    }
    for (int next = from; next < candidates.size(); next++) {
      Finding finding = candidates.get(next);
      if (!covered.containsAll(finding.explains())) {
        List<Finding> longer = new ArrayList<>(chosen);
        longer.add(finding);
        Set<String> wider = new HashSet<>(covered);
        wider.addAll(finding.explains());
        search(next + 1, longer, wider, cost + Math.max(1, FREE - finding.decibans()));
      }
    }
  }

  // More signs than four causes can carry: take the likeliest that still brings something, again
  // and again.
  private List<Finding> greedy() {
    List<Finding> chosen = new ArrayList<>();
    Set<String> covered = new HashSet<>();
    for (Finding finding : candidates) {
      if (covered.addAll(finding.explains())) {
        chosen.add(finding);
      }
    }
    return chosen;
  }
}
