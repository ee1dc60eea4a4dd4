package crumbtrail.findings;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.rules.Evidence;
import crumbtrail.rules.Facts;
import crumbtrail.rules.SignFact;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Ranks causes by weight of evidence (I. J. Good): prior log-odds plus the decibans of each
 * independent observation.
 */
public final class Ranking {
  /** The weight of a plain word; less than this does not single out a finer cause. */
  private static final double PLAIN = 5;

  /** Likelier than not. */
  private static final double EVEN = 0.5;

  /** That nothing speaks for a cause speaks against it, as plainly as a plain word. Our choice. */
  private static final double SILENCE = 6;

  // Of equal words the order of names decides, so that the order of arrival never shows.
  private static final Comparator<Evidence> STRONGEST_FIRST =
      Comparator.comparingDouble((Evidence one) -> -Math.abs(one.decibans()))
          .thenComparing(Evidence::rule)
          .thenComparing(Evidence::facts, Facts::compare);

  private static final Comparator<Evidence> FOR_BEFORE_AGAINST =
      Comparator.comparingDouble(Evidence::decibans).reversed().thenComparing(STRONGEST_FIRST);

  private static final Comparator<Finding> WEIGHTIEST_FIRST =
      Comparator.comparingDouble(Finding::decibans)
          .reversed()
          .thenComparing(finding -> finding.cause().key());

  private final Catalogue catalogue;
  private final Weights weights;
  private final UnaryOperator<Evidence> weigh;
  private final Ledger.Find find;
  // Found out when first asked for; by two threads at worst.
  private volatile @Nullable Ranking beforehand;

  /**
   * @param weights what the words of rules weigh
   */
  public Ranking(Catalogue catalogue, Weights weights) {
    this.catalogue = catalogue;
    this.weights = weights;
    this.weigh = weights::weigh;
    this.find = this::finding;
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
        evidence.stream().collect(Collectors.groupingBy(Evidence::cause)),
        seen,
        tags,
        new Ledger());
  }

  /**
   * The same, where little has changed since the last time.
   *
   * @param heard what the rules said, by cause
   * @param ledger what was found out the last time
   */
  Findings rank(
      Map<String, List<Evidence>> heard, Set<String> seen, Collection<String> tags, Ledger ledger) {
    Order order = order(heard, tags, ledger);
    List<Finding> ranked = believed(order.supported());
    Set<String> unexplained = new TreeSet<>(seen);
    for (Finding finding : ranked) {
      finding.explains().forEach(unexplained::remove);
    }
    return new Findings(ranked, List.copyOf(unexplained), unspoken(order, every -> true));
  }

  /** The same where nothing is asked but how likely some causes are. */
  Beliefs beliefs(
      List<Cause> causes,
      Map<String, List<Evidence>> heard,
      Collection<String> tags,
      Ledger ledger) {
    Order order = order(heard, tags, ledger);
    Map<String, Double> probabilities = new HashMap<>();
    Set<String> wanted = causes.stream().map(Cause::key).collect(Collectors.toSet());
    believe(
        order.supported(),
        (finding, probability) -> {
          if (wanted.remove(finding.cause().key())) {
            probabilities.put(finding.cause().key(), probability);
          }
          return !wanted.isEmpty();
        });
    if (!wanted.isEmpty()) {
      probabilities.putAll(unspoken(order, wanted::contains));
    }
    return Beliefs.of(
        causes.stream()
            .mapToDouble(cause -> probabilities.getOrDefault(cause.key(), 0.0))
            .toArray());
  }

  /** Causes for which anything speaks, the weightiest first, and the others. */
  private record Order(List<Finding> supported, List<Finding> unsupported) {}

  private Order order(Map<String, List<Evidence>> heard, Collection<String> tags, Ledger ledger) {
    List<Finding> supported = new ArrayList<>();
    List<Finding> unsupported = new ArrayList<>();
    List<Cause> causes = catalogue.knowledge().causes();
    double[] priors = ledger.priors(tags, () -> priors(causes, tags));
    ledger.hear(causes, this::coarser, heard);
    for (int one = 0; one < priors.length; one++) {
      Finding finding = ledger.finding(one, priors[one], weigh, find);
      if (finding.supported()) {
        supported.add(finding);
      } else {
        unsupported.add(finding);
      }
    }
    supported.sort(WEIGHTIEST_FIRST);
    return new Order(supported, unsupported);
  }

  private double[] priors(List<Cause> causes, Collection<String> tags) {
    return causes.stream().mapToDouble(cause -> weights.prior(cause, tags)).toArray();
  }

  // Each stands against the field of all causes there are.
  private Map<String, Double> unspoken(Order order, Predicate<String> wanted) {
    double[] sums =
        Stream.concat(order.unsupported().stream(), order.supported().stream())
            .mapToDouble(Finding::decibans)
            .toArray();
    for (int place = 0; place < order.unsupported().size(); place++) {
      sums[place] -= SILENCE;
    }
    Link.Standing[] standings = Link.standings(weights.calibration().unnamed(), sums);
    Map<String, Double> unspoken = new HashMap<>();
    for (int place = 0; place < order.unsupported().size(); place++) {
      String cause = order.unsupported().get(place).cause().key();
      if (wanted.test(cause)) {
        Link.Standing at = standings[place];
        unspoken.put(
            cause,
            new Link.Standing(at.sum(), at.lead(), false).probability(weights.calibration()));
      }
    }
    return unspoken;
  }

  private List<Finding> believed(List<Finding> supported) {
    List<Finding> believed = new ArrayList<>();
    believe(supported, (finding, probability) -> believed.add(finding.believed(probability)));
    return believed;
  }

  /** Takes note of a finding and its probability, and says whether to go on to the next. */
  @FunctionalInterface
  private interface Note {
    boolean take(Finding finding, double probability);
  }

  private void believe(List<Finding> supported, Note note) {
    Link.Standing[] standings =
        Link.standings(
            weights.calibration().unnamed(),
            supported.stream().mapToDouble(Finding::decibans).toArray());
    Set<String> claimed = new HashSet<>();
    double above = 1;
    boolean on = true;
    for (int place = 0; on && place < standings.length; place++) {
      Finding finding = supported.get(place);
      double placed = standings[place].probability(weights.calibration());
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

  // Findings on a cause hang on what was said of it and of those that it refines, and on its prior.
  private Finding finding(int place, double prior, List<List<Evidence>> weighed) {
    return finding(catalogue.knowledge().causes().get(place), prior, witnesses(weighed));
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
    double alone =
        Link.alone(finding.decibans() - shared).probability(weights.calibration().beforehand());
    return alone > EVEN ? alone : 0;
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

  private static boolean restsOnSign(Evidence evidence) {
    for (Object fact : evidence.facts()) {
      if (fact instanceof SignFact) {
        return true;
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
