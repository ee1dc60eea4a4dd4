package crumbtrail.findings;

import crumbtrail.knowledge.Calibration;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.Prior;
import crumbtrail.knowledge.Published;
import crumbtrail.knowledge.Source;
import crumbtrail.rules.Evidence;
import crumbtrail.rules.SignFact;
import crumbtrail.rules.WrittenRule.Strength;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What a rule's word weighs. A rule that rests on one sign alone is weighed against the published
 * tables: a sign that many independent tables name for this cause, and few for others, speaks
 * louder than its word; one that every cause shows speaks softer. Immutable.
 */
public final class Weights {
  /** However many tables agree, one sign is no proof; odds of twenty to one. */
  private static final double STRONGEST = 13;

  /** What a rule that suspects says at least where tables name its pair; enough to explain it. */
  static final double EXPLAINS = 1.5;

  /** What it says where tables know both and never name them together. */
  private static final double SOFTEST = 1;

  /** The faintest word there is. */
  private static final double FAINT = Strength.FAINTLY.decibans();

  /** Half a table more for every sign, so that a sign of one table is not taken for a rare sign. */
  private static final double HALF = 0.5;

  private final Catalogue catalogue;
  private final Calibration calibration;
  private final Map<String, Map<String, Set<String>>> byPair = new HashMap<>();
  private final Map<String, Set<String>> byCause = new HashMap<>();
  private final Map<String, Integer> bySign = new HashMap<>();
  private final Map<String, String> lineages;
  private final double all;
  private final @Nullable String left;
  private final Map<String, Double> kitchen;

  private Weights(
      Catalogue catalogue,
      Calibration calibration,
      @Nullable String left,
      Map<String, Double> kitchen) {
    this.left = left;
    this.kitchen = Map.copyOf(kitchen);
    this.catalogue = catalogue;
    this.calibration = calibration;
    this.lineages =
        catalogue.knowledge().sources().stream()
            .collect(Collectors.toMap(Source::id, Source::witness));
    for (Published pair : catalogue.knowledge().published()) {
      String lineage = lineages.getOrDefault(pair.source(), pair.source());
      if (!lineage.equals(left)
          && byPair
              .computeIfAbsent(pair.sign(), sign -> new HashMap<>())
              .computeIfAbsent(pair.cause(), cause -> new HashSet<>())
              .add(lineage)) {
        byCause.computeIfAbsent(pair.cause(), key -> new HashSet<>()).add(lineage);
        bySign.merge(pair.sign(), 1, Integer::sum);
      }
    }
    this.all = byCause.values().stream().mapToInt(Set::size).sum();
  }

  /** The weights of a catalogue, with all its published tables and its calibration. */
  public static Weights of(Catalogue catalogue) {
    return new Weights(catalogue, catalogue.knowledge().calibration(), null, Map.of());
  }

  /** The same with another calibration. */
  public Weights with(Calibration other) {
    return new Weights(catalogue, other, left, kitchen);
  }

  /** The weights as they would be had the tables of one lineage never been published. */
  public Weights without(String lineage) {
    return new Weights(catalogue, calibration, lineage, kitchen);
  }

  /**
   * The weights in one kitchen.
   *
   * @param decibans by how much the log-odds of causes differ from those of all kitchens, by key
   */
  public Weights in(Map<String, Double> decibans) {
    return new Weights(catalogue, calibration, left, decibans);
  }

  /** The numbers behind the weights. */
  public Calibration calibration() {
    return calibration;
  }

  /** Names of the lineages that name this cause for this sign. */
  public Set<String> lineages(String sign, String cause) {
    return Set.copyOf(naming(sign, cause));
  }

  /**
   * Log-odds of a cause before anything is known, decibans.
   *
   * @param tags tags of the bread's style
   */
  public double prior(Cause cause, Collection<String> tags) {
    double middle = Prior.COMMON.decibans();
    return middle
        + calibration.priorShare() * (cause.prior(tags).decibans() - middle)
        + kitchen.getOrDefault(cause.key(), 0.0);
  }

  /**
   * The evidence at its calibrated weight. What rests on a single sign gets that sign as its
   * strand, whatever the rule says, so that one sign is one witness.
   */
  public Evidence weigh(Evidence evidence) {
    Optional<String> sign = single(evidence);
    if (sign.isEmpty() || evidence.decibans() <= 0) {
      return evidence;
    }
    return evidence.weighing(sign.get(), weight(evidence.decibans(), sign.get(), evidence.cause()));
  }

  // Finer signs and causes than the tables know go by the word alone. Where tables that know both
  // never name them together, the word is heard at its softest.
  private double weight(double word, String sign, String cause) {
    if (!bySign.containsKey(sign) || !byCause.containsKey(cause)) {
      return word;
    }
    double share = calibration.tablesShare();
    return published(sign, cause)
        .map(tables -> Math.max(EXPLAINS, share * tables + (1 - share) * word))
        .orElse(Math.min(word, SOFTEST + (1 - share) * Math.max(0, word - FAINT)));
  }

  /** The sign on which evidence rests, if it rests on one sign that was seen and nothing else. */
  public static Optional<String> single(Evidence evidence) {
    List<Object> facts = evidence.facts();
    return facts.size() == 1 && facts.get(0) instanceof SignFact sign && sign.seen()
        ? Optional.of(Catalogue.keyOf(sign.name()))
        : Optional.empty();
  }

  /**
   * Weight of a sign for a cause from the tables alone, decibans: how much oftener tables that
   * speak of the cause name the sign than tables at large do. Empty where no table names the pair.
   */
  Optional<Double> published(String sign, String cause) {
    Set<String> naming = naming(sign, cause);
    if (naming.isEmpty()) {
      return Optional.empty();
    }
    double usual = (bySign.get(sign) + HALF) / (all + 10);
    double smoothing = calibration.smoothing();
    double here = (naming.size() + smoothing * usual) / (byCause.get(cause).size() + smoothing);
    double weight = 10 * Math.log10(here / usual);
    return Optional.of(Math.max(-STRONGEST, Math.min(STRONGEST, weight)));
  }

  private Set<String> naming(String sign, String cause) {
    return byPair.getOrDefault(sign, Map.of()).getOrDefault(cause, Set.of());
  }
}
