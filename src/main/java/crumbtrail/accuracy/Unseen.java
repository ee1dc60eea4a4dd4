package crumbtrail.accuracy;

import crumbtrail.findings.Weights;
import crumbtrail.knowledge.Source;
import crumbtrail.rules.Evidence;
import crumbtrail.rules.WrittenRule.Strength;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Evidence as it would be had one lineage of tables never been published: rules that cite it alone
 * fall away, and the word of a rule on one sign sinks to what the remaining lineages would have
 * given it (docs/adding-a-rule.md: one faintly, two or three plainly, four and more firmly).
 */
final class Unseen {
  private final String lineage;
  private final Weights weights;
  private final Map<String, String> lineages;

  Unseen(String lineage, Weights weights, List<Source> bibliography) {
    this.lineage = lineage;
    this.weights = weights;
    this.lineages = bibliography.stream().collect(Collectors.toMap(Source::id, Source::witness));
  }

  List<Evidence> of(List<Evidence> evidence) {
    List<Evidence> left = new ArrayList<>();
    for (Evidence one : evidence) {
      long sources = ids(one).count();
      long others = ids(one).filter(id -> !lineage.equals(lineages.get(id))).count();
      if (others == sources) {
        left.add(one);
      } else if (others > 0) {
        left.add(softened(one));
      }
    }
    return left;
  }

  private Evidence softened(Evidence evidence) {
    Optional<String> sign = Weights.single(evidence);
    if (sign.isEmpty() || evidence.decibans() <= 0) {
      return evidence;
    }
    int with = weights.lineages(sign.get(), evidence.cause()).size();
    boolean named = weights.lineages(sign.get(), evidence.cause()).contains(lineage);
    if (!named || word(with - 1) >= word(with)) {
      return evidence;
    }
    double softer = evidence.decibans() * Math.max(word(with - 1), word(1)) / word(with);
    return evidence.weighing(evidence.strand(), softer);
  }

  private static double word(int lineages) {
    if (lineages >= 4) {
      return Strength.FIRMLY.decibans();
    }
    return (lineages >= 2 ? Strength.PLAINLY : Strength.FAINTLY).decibans();
  }

  private static Stream<String> ids(Evidence evidence) {
    return Stream.of(evidence.source().split(";")).map(String::trim);
  }
}
