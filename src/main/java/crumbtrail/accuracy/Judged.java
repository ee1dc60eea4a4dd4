package crumbtrail.accuracy;

import crumbtrail.findings.Finding;
import crumbtrail.findings.Findings;
import crumbtrail.findings.Ranking;
import crumbtrail.rules.Evidence;
import java.util.List;
import java.util.Set;

/**
 * What the rules said of one sheet, kept so that it can be ranked again with other weights.
 *
 * @param evidence what the rules said, at the weight of their words
 * @param seen keys of the signs seen
 * @param tags tags of the bread's style
 * @param notUnderstood phrases that were not understood
 */
record Judged(
    List<Evidence> evidence, Set<String> seen, List<String> tags, List<String> notUnderstood) {
  Judged {
    evidence = List.copyOf(evidence);
    seen = Set.copyOf(seen);
    tags = List.copyOf(tags);
    notUnderstood = List.copyOf(notUnderstood);
  }

  /** The same without what rests on one lineage of tables alone. */
  Judged without(Unseen unseen) {
    return new Judged(unseen.of(evidence), seen, tags, notUnderstood);
  }

  Findings ranked(Ranking ranking) {
    return ranking.rank(evidence, seen, tags);
  }

  /** Keys of the causes, likeliest first. */
  List<String> order(Ranking ranking) {
    return ranked(ranking).ranked().stream().map(finding -> finding.cause().key()).toList();
  }

  /** Place of the first of some causes, from 1; 0 if none is ranked. */
  static int place(List<Finding> ranked, List<String> causes) {
    for (int place = 0; place < ranked.size(); place++) {
      if (causes.contains(ranked.get(place).cause().key())) {
        return place + 1;
      }
    }
    return 0;
  }
}
