package crumbtrail.findings;

import crumbtrail.knowledge.Calibration;
import crumbtrail.knowledge.Cause;
import crumbtrail.rules.Evidence;
import crumbtrail.rules.SignFact;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * All causes in the order of their sums, and how likely each is at its place. Used by one thread.
 */
final class Order {
  /** Likelier than not. */
  private static final double EVEN = 0.5;

  /** That nothing speaks for a cause speaks against it, as plainly as a plain word. Our choice. */
  private static final double SILENCE = 6;

  private static final Comparator<Finding> WEIGHTIEST_FIRST =
      Comparator.comparingDouble(Finding::decibans)
          .reversed()
          .thenComparing(finding -> finding.cause().key());

  private final Calibration calibration;
  private final List<Finding> supported;
  private final List<Finding> unsupported;

  /**
   * @param findings on all causes, in any order
   */
  Order(Finding[] findings, Calibration calibration) {
    this.calibration = calibration;
    this.supported = new ArrayList<>(findings.length);
    this.unsupported = new ArrayList<>(findings.length);
    for (Finding finding : findings) {
      if (finding.supported()) {
        supported.add(finding);
      } else {
        unsupported.add(finding);
      }
    }
    supported.sort(WEIGHTIEST_FIRST);
  }

  /** The causes for which anything speaks, the weightiest first, each with its probability. */
  List<Finding> believed() {
    List<Finding> believed = new ArrayList<>();
    believe((finding, probability) -> believed.add(finding.believed(probability)));
    return believed;
  }

  /** Takes note of a finding and its probability, and says whether to go on to the next. */
  @FunctionalInterface
  private interface Note {
    boolean take(Finding finding, double probability);
  }

  private void believe(Note note) {
    Link.Standing[] standings =
        Link.standings(
            calibration.unnamed(), supported.stream().mapToDouble(Finding::decibans).toArray());
    Set<String> claimed = new HashSet<>();
    double above = 1;
    boolean on = true;
    for (int place = 0; on && place < standings.length; place++) {
      Finding finding = supported.get(place);
      double placed = standings[place].probability(calibration);
      // No more than the cause that stands above it: the order is that of the sums.
      above = Math.min(above, Math.max(placed, foreseen(finding, claimed)));
      on = note.take(finding, above);
      for (Evidence one : finding.evidence()) {
        if (one.decibans() > 0) {
          claimed.add(one.strand());
        }
      }
    }
  }

  /** How likely each cause is all the same of which nothing speaks, by key. */
  Map<String, Double> unspoken() {
    return unspoken(every -> true);
  }

  /** How likely some causes are, whether anything speaks for them or not. */
  Beliefs beliefs(List<Cause> causes) {
    Map<String, Double> probabilities = new HashMap<>();
    Set<String> wanted = causes.stream().map(Cause::key).collect(Collectors.toSet());
    believe(
        (finding, probability) -> {
          if (wanted.remove(finding.cause().key())) {
            probabilities.put(finding.cause().key(), probability);
          }
          return !wanted.isEmpty();
        });
    if (!wanted.isEmpty()) {
      probabilities.putAll(unspoken(wanted::contains));
    }
    return Beliefs.of(
        causes.stream()
            .mapToDouble(cause -> probabilities.getOrDefault(cause.key(), 0.0))
            .toArray());
  }

  // Each stands against the field of all causes there are.
  private Map<String, Double> unspoken(Predicate<String> wanted) {
    double[] sums =
        Stream.concat(unsupported.stream(), supported.stream())
            .mapToDouble(Finding::decibans)
            .toArray();
    for (int place = 0; place < unsupported.size(); place++) {
      sums[place] -= SILENCE;
    }
    Link.Standing[] standings = Link.standings(calibration.unnamed(), sums);
    Map<String, Double> unspoken = new HashMap<>();
    for (int place = 0; place < unsupported.size(); place++) {
      String cause = unsupported.get(place).cause().key();
      if (wanted.test(cause)) {
        Link.Standing at = standings[place];
        unspoken.put(cause, new Link.Standing(at.sum(), at.lead(), false).probability(calibration));
      }
    }
    return unspoken;
  }

  // A rival takes from a cause what both account for, the signs above all, and not what numbers and
  // tales say of that cause and of none above it: what was by itself likelier than not before the
  // bake stays as likely, but for what speaks against it. Fainter causes do not strike each time;
  // where the signs point elsewhere they did not.
  private double foreseen(Finding finding, Set<String> claimed) {
    double shared = 0;
    for (Evidence one : finding.evidence()) {
      if (one.decibans() > 0 && (claimed.contains(one.strand()) || restsOnSign(one))) {
        shared += one.decibans();
      }
    }
    double alone = Link.alone(finding.decibans() - shared).probability(calibration.beforehand());
    return alone > EVEN ? alone : 0;
  }

  private static boolean restsOnSign(Evidence evidence) {
    for (Object fact : evidence.facts()) {
      if (fact instanceof SignFact) {
        return true;
      }
    }
    return false;
  }
}
