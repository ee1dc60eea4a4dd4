package crumbtrail.advice;

import crumbtrail.findings.Finding;
import crumbtrail.findings.Findings;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Published;
import crumbtrail.knowledge.QuestionKind;
import crumbtrail.knowledge.SignKind;
import crumbtrail.knowledge.Source;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What will be seen of a bake whose likely causes are known. A cause shows a sign as often as the
 * published tables that know the cause name the sign for it; each likely cause has its own chance
 * to show it, independent of the others. Immutable; safe for use by many threads.
 *
 * <p>Tables tell which signs a cause may show, not how often it does: the numbers order the signs
 * and are no frequencies (our choice, unmeasured).
 */
public final class PredictedSigns {
  /** One table more that names no sign, so that a sign of a single table is not taken for sure. */
  private static final double ONE_MORE = 1;

  private final Catalogue catalogue;

  /** Shares of the tables by cause and sign. */
  private final Map<String, Map<String, Double>> shares = new HashMap<>();

  /**
   * @param catalogue its published pairs
   */
  public PredictedSigns(Catalogue catalogue) {
    this.catalogue = catalogue;
    Map<String, String> witnesses =
        catalogue.knowledge().sources().stream()
            .collect(Collectors.toMap(Source::id, Source::witness));
    Map<String, Map<String, Set<String>>> tables = new HashMap<>();
    for (Published pair : catalogue.knowledge().published()) {
      tables
          .computeIfAbsent(pair.cause(), cause -> new HashMap<>())
          .computeIfAbsent(pair.sign(), sign -> new HashSet<>())
          .add(witnesses.getOrDefault(pair.source(), pair.source()));
    }
    tables.forEach((cause, signs) -> shares.put(cause, shares(signs)));
  }

  private static Map<String, Double> shares(Map<String, Set<String>> signs) {
    Set<String> all = new HashSet<>();
    signs.values().forEach(all::addAll);
    Map<String, Double> shares = new HashMap<>();
    signs.forEach((sign, named) -> shares.put(sign, named.size() / (all.size() + ONE_MORE)));
    return shares;
  }

  /**
   * A sign that may be seen.
   *
   * @param sign the sign
   * @param probability from 0 to 1
   * @param cause key of the cause that does most for it
   */
  public record Predicted(SignKind sign, double probability, String cause) {}

  /**
   * How often a cause shows each sign, 0 to 1, by key of the sign. Of a finer cause that no table
   * knows, the signs of the coarser causes that it refines.
   */
  public Map<String, Double> shares(String cause) {
    Map<String, Double> own = shares.get(cause);
    if (own != null) {
      return Map.copyOf(own);
    }
    Map<String, Double> inherited = new HashMap<>();
    catalogue
        .cause(cause)
        .ifPresent(
            finer ->
                finer
                    .refines()
                    .forEach(
                        coarser ->
                            shares
                                .getOrDefault(coarser, Map.of())
                                .forEach(
                                    (sign, share) -> inherited.merge(sign, share, Math::max))));
    return inherited;
  }

  /**
   * The signs to be expected, likeliest first.
   *
   * @param findings on a bake, judged without its signs
   * @param tags tags of the bread's style; what such a bread cannot show is left out
   * @param least signs less probable are left out
   */
  public List<Predicted> of(Findings findings, List<String> tags, double least) {
    Map<String, Double> missing = new HashMap<>();
    Map<String, String> chief = new HashMap<>();
    Map<String, Double> most = new HashMap<>();
    for (Finding finding : findings.ranked()) {
      shares(finding.cause().key())
          .forEach(
              (sign, share) -> {
                double shows = finding.probability() * share;
                missing.merge(sign, 1 - shows, (one, other) -> one * other);
                if (shows > most.getOrDefault(sign, 0.0)) {
                  most.put(sign, shows);
                  chief.put(sign, finding.cause().key());
                }
              });
    }
    List<Predicted> predicted = new ArrayList<>();
    missing.forEach(
        (key, not) ->
            catalogue
                .sign(key)
                .filter(sign -> 1 - not >= least && fits(key, tags))
                .ifPresent(sign -> predicted.add(new Predicted(sign, 1 - not, chief.get(key)))));
    predicted.sort(
        Comparator.comparingDouble(Predicted::probability)
            .reversed()
            .thenComparing(one -> one.sign().key()));
    return predicted;
  }

  private boolean fits(String sign, List<String> tags) {
    return catalogue.question(sign).map((QuestionKind kind) -> kind.fits(tags)).orElse(true);
  }
}
