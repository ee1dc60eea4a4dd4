package crumbtrail.findings;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.rules.Evidence;
import crumbtrail.rules.SignFact;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Ranks causes by weight of evidence (I. J. Good): prior log-odds plus the decibans of each
 * independent observation.
 */
public final class Ranking {
  /** The weight of a plain word; less than this does not single out a finer cause. */
  private static final double PLAIN = 5;

  /** That nothing speaks for a cause speaks against it, as plainly as a plain word. Our choice. */
  private static final double SILENCE = 6;

  // Of equal words the order of names decides, so that the order of arrival never shows.
  private static final Comparator<Evidence> STRONGEST_FIRST =
      Comparator.comparingDouble((Evidence one) -> -Math.abs(one.decibans()))
          .thenComparing(Evidence::rule)
          .thenComparing(one -> one.facts().toString());

  private final Catalogue catalogue;
  private final Weights weights;

  /**
   * @param weights what the words of rules weigh
   */
  public Ranking(Catalogue catalogue, Weights weights) {
    this.catalogue = catalogue;
    this.weights = weights;
  }

  /** The same ranking for a bake that is still to come. */
  Ranking beforehand() {
    return new Ranking(catalogue, weights.with(weights.calibration().beforehand()));
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
    Map<String, List<Evidence>> byCause =
        evidence.stream().map(weights::weigh).collect(Collectors.groupingBy(Evidence::cause));
    List<Finding> supported = new ArrayList<>();
    List<Finding> unsupported = new ArrayList<>();
    for (Cause cause : catalogue.knowledge().causes()) {
      Finding finding = finding(cause, weights.prior(cause, tags), witnesses(cause, byCause));
      if (finding.supported()) {
        supported.add(finding);
      } else {
        unsupported.add(finding);
      }
    }
    supported.sort(
        Comparator.comparingDouble(Finding::decibans)
            .reversed()
            .thenComparing(finding -> finding.cause().key()));
    List<Finding> ranked = believed(supported);
    Set<String> explained =
        ranked.stream().flatMap(finding -> finding.explains().stream()).collect(Collectors.toSet());
    List<String> unexplained =
        seen.stream().filter(sign -> !explained.contains(sign)).sorted().toList();
    return new Findings(ranked, unexplained, unspoken(supported, unsupported));
  }

  // Each stands against the field of all causes there are.
  private Map<String, Double> unspoken(List<Finding> supported, List<Finding> unsupported) {
    double[] sums =
        Stream.concat(unsupported.stream(), supported.stream())
            .mapToDouble(Finding::decibans)
            .toArray();
    for (int place = 0; place < unsupported.size(); place++) {
      sums[place] -= SILENCE;
    }
    Link.Standing[] standings = Link.standings(weights.calibration().unnamed(), sums);
    Map<String, Double> unspoken = new HashMap<>();
    for (int place = 0; place < unsupported.size(); place++) {
      Link.Standing at = standings[place];
      unspoken.put(
          unsupported.get(place).cause().key(),
          new Link.Standing(at.sum(), at.lead(), false).probability(weights.calibration()));
    }
    return unspoken;
  }

  private List<Finding> believed(List<Finding> supported) {
    Link.Standing[] standings =
        Link.standings(
            weights.calibration().unnamed(),
            supported.stream().mapToDouble(Finding::decibans).toArray());
    List<Finding> believed = new ArrayList<>();
    for (int place = 0; place < standings.length; place++) {
      believed.add(
          supported.get(place).believed(standings[place].probability(weights.calibration())));
    }
    return believed;
  }

  // A scalded yeast is a dead yeast, and a dough with dead yeast is one that was not proofed: what
  // shows the coarser cause shows the finer one too, once something on the sheet (a number, a
  // circumstance) points to the finer cause itself.
  private List<Evidence> witnesses(Cause cause, Map<String, List<Evidence>> byCause) {
    List<Evidence> own = byCause.getOrDefault(cause.key(), List.of());
    if (cause.refines().isEmpty() || own.stream().noneMatch(Ranking::pointed)) {
      return own;
    }
    List<Evidence> all = new ArrayList<>(own);
    // A rule that speaks of the finer cause itself has had its say.
    Set<String> heard = own.stream().map(Evidence::rule).collect(Collectors.toSet());
    for (String key : coarser(cause, new HashSet<>(Set.of(cause.key())))) {
      byCause.getOrDefault(key, List.of()).stream()
          .filter(one -> !heard.contains(one.rule()))
          .forEach(all::add);
    }
    return all;
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
    return evidence.decibans() >= PLAIN
        && evidence.facts().stream().anyMatch(fact -> !(fact instanceof SignFact));
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
    Map<String, Evidence> strongest = new LinkedHashMap<>();
    for (Evidence one : evidence) {
      String side = (one.decibans() > 0 ? "for " : "against ") + one.strand();
      strongest.merge(
          side, one, (old, other) -> STRONGEST_FIRST.compare(old, other) <= 0 ? old : other);
    }
    return strongest.values().stream()
        .sorted(
            Comparator.comparingDouble(Evidence::decibans)
                .reversed()
                .thenComparing(STRONGEST_FIRST))
        .toList();
  }
}
