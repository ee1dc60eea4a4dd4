package crumbtrail.findings;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.rules.Evidence;
import crumbtrail.rules.Facts;
import crumbtrail.rules.RuleRun;
import crumbtrail.rules.SignFact;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Ranks causes by weight of evidence (I. J. Good): prior log-odds plus the decibans of each
 * independent observation.
 */
public final class Ranking {
  /** The weight of a plain word; less than this does not single out a finer cause. */
  private static final double PLAIN = 5;

  // Of equal words the order of names decides, so that the order of arrival never shows.
  private static final Comparator<Evidence> STRONGEST_FIRST =
      Comparator.comparingDouble((Evidence one) -> -Math.abs(one.decibans()))
          .thenComparing(Evidence::rule)
          .thenComparing(Evidence::facts, Facts::compare);

  private static final Comparator<Evidence> FOR_BEFORE_AGAINST =
      Comparator.comparingDouble(Evidence::decibans).reversed().thenComparing(STRONGEST_FIRST);

  private final Catalogue catalogue;
  private final Weights weights;
  // Found out when first asked for; by two threads at worst.
  private volatile @Nullable Ranking beforehand;

  /**
   * @param weights what the words of rules weigh
   */
  public Ranking(Catalogue catalogue, Weights weights) {
    this.catalogue = catalogue;
    this.weights = weights;
  }

  /** An empty ledger for this ranking. */
  Ledger ledger() {
    return new Ledger(catalogue.knowledge().causes(), this::coarser, weights::weigh, this::finding);
  }

  /** The same ranking for a bake that is still to come. */
  Ranking beforehand() {
    Ranking known = beforehand;
    if (known == null) {
      known = new Ranking(catalogue, weights.with(weights.calibration().beforehand()));
      beforehand = known;
    }
    return known;
  }

  /** Ranks every cause of the catalogue, for a bread of no particular style. */
  public static Findings of(Catalogue catalogue, List<Evidence> evidence, Set<String> seen) {
    return new Ranking(catalogue, Weights.of(catalogue)).rank(evidence, seen, List.of());
  }

  /**
   * Ranks every cause of the catalogue.
   *
   * @param evidence what the rules said
   * @param seen keys of the signs that the baker saw
   * @param tags tags of the bread's style
   */
  public Findings rank(List<Evidence> evidence, Set<String> seen, Collection<String> tags) {
    return rank(
        evidence.stream().collect(Collectors.groupingBy(Evidence::cause)), seen, tags, ledger());
  }

  /**
   * The same, where little has changed since the last time.
   *
   * @param heard what the rules said, by cause
   * @param ledger what was found out the last time
   */
  Findings rank(
      Map<String, List<Evidence>> heard, Set<String> seen, Collection<String> tags, Ledger ledger) {
    Order order = order(ledger.findings(priors(tags, ledger), heard));
    List<Finding> ranked = order.believed();
    Set<String> unexplained = new TreeSet<>(seen);
    for (Finding finding : ranked) {
      finding.explains().forEach(unexplained::remove);
    }
    return new Findings(ranked, List.copyOf(unexplained), order.unspoken());
  }

  /** The same where nothing is asked but how likely some causes are. */
  Beliefs beliefs(
      List<Cause> causes,
      Map<String, List<Evidence>> heard,
      Collection<String> tags,
      Ledger ledger) {
    return order(ledger.findings(priors(tags, ledger), heard)).beliefs(causes);
  }

  /** The same with each of some facts more. */
  List<Beliefs> beliefs(
      List<Cause> causes, RuleRun.OneMore heard, Collection<String> tags, Ledger ledger) {
    double[] priors = priors(tags, ledger);
    Finding[] without = ledger.findings(priors, heard.without());
    return heard.changes().stream()
        .map(changes -> order(ledger.findings(priors, without, changes)).beliefs(causes))
        .toList();
  }

  private Order order(Finding[] findings) {
    return new Order(findings, weights.calibration());
  }

  private double[] priors(Collection<String> tags, Ledger ledger) {
    return ledger.priors(tags, () -> priors(catalogue.knowledge().causes(), tags));
  }

  private double[] priors(List<Cause> causes, Collection<String> tags) {
    return causes.stream().mapToDouble(cause -> weights.prior(cause, tags)).toArray();
  }

  // Findings on a cause hang on what was said of it and of those that it refines, and on its prior.
  private Finding finding(int place, double prior, List<List<Evidence>> weighed) {
    return finding(catalogue.knowledge().causes().get(place), prior, witnesses(weighed));
  }

  // A scalded yeast is a dead yeast, and a dough with dead yeast is one that was not proofed: what
  // shows the coarser cause shows the finer one too, once something on the sheet (a number, a
  // circumstance) points to the finer cause itself.
  private static List<Evidence> witnesses(List<List<Evidence>> weighed) {
    List<Evidence> own = weighed.get(0);
    if (weighed.size() == 1 || own.stream().noneMatch(Ranking::pointed)) {
      return own;
    }
    List<Evidence> all = new ArrayList<>(own);
    // A rule that speaks of the finer cause itself has had its say.
    Set<String> heard = own.stream().map(Evidence::rule).collect(Collectors.toSet());
    for (List<Evidence> coarser : weighed.subList(1, weighed.size())) {
      coarser.stream().filter(one -> !heard.contains(one.rule())).forEach(all::add);
    }
    return all;
  }

  private Set<String> coarser(Cause cause) {
    return coarser(cause, new HashSet<>(Set.of(cause.key())));
  }

  private Set<String> coarser(Cause cause, Set<String> known) {
    Set<String> found = new TreeSet<>();
    for (String key : cause.refines()) {
      if (known.add(key)) {
        found.add(key);
        catalogue.cause(key).ifPresent(one -> found.addAll(coarser(one, known)));
      }
    }
    return found;
  }

  private static boolean pointed(Evidence evidence) {
    if (evidence.decibans() >= PLAIN) {
      for (Object fact : evidence.facts()) {
        if (!(fact instanceof SignFact)) {
          return true;
        }
      }
    }
    return false;
  }

  private static Finding finding(Cause cause, double prior, List<Evidence> evidence) {
    List<Evidence> counted = counted(evidence);
    double sum = prior + counted.stream().mapToDouble(Evidence::decibans).sum();
    Set<String> explains = new TreeSet<>();
    for (Evidence one : evidence) {
      // The softest word names a cause that is possible; it does not account for the sign.
      if (one.decibans() >= Weights.EXPLAINS) {
        for (Object fact : one.facts()) {
          if (fact instanceof SignFact sign && sign.seen()) {
            explains.add(Catalogue.keyOf(sign.name()));
          }
        }
      }
    }
    return new Finding(cause, sum, counted, List.copyOf(explains));
  }

  // Rules on the same observation are one witness: its strongest word for and its strongest word
  // against are heard.
  private static List<Evidence> counted(List<Evidence> evidence) {
    List<Evidence> counted = new ArrayList<>(evidence.size());
    for (Evidence one : evidence) {
      int same = 0;
      while (same < counted.size() && !sameWitness(counted.get(same), one)) {
        same++;
      }
      if (same == counted.size()) {
        counted.add(one);
      } else if (STRONGEST_FIRST.compare(one, counted.get(same)) < 0) {
        counted.set(same, one);
      }
    }
    counted.sort(FOR_BEFORE_AGAINST);
    return counted;
  }

  private static boolean sameWitness(Evidence one, Evidence other) {
    return one.decibans() > 0 == other.decibans() > 0 && one.strand().equals(other.strand());
  }
}
