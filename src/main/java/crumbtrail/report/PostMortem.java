package crumbtrail.report;

import crumbtrail.findings.Findings;
import crumbtrail.findings.Ranking;
import crumbtrail.findings.Weights;
import crumbtrail.rules.Evidence;
import crumbtrail.rules.Facts;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.Heard;
import crumbtrail.workup.SheetWorkup;
import crumbtrail.workup.Workup;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The whole way from a bake sheet to its report: workup, facts, rules, evidence, findings.
 * Immutable; safe for use by many threads.
 */
public final class PostMortem {
  private final RuleBase rules;
  private final SheetWorkup workups;
  private final Ranking ranking;

  /**
   * @param rules the rule base
   */
  public PostMortem(RuleBase rules) {
    this.rules = rules;
    this.workups = new SheetWorkup(rules.catalogue(), rules.pantry());
    this.ranking = new Ranking(rules.catalogue(), Weights.of(rules.catalogue()));
  }

  /** The rule base that judges. */
  public RuleBase rules() {
    return rules;
  }

  /** The report on one bake; never throws for what a sheet says. */
  public Report trace(BakeSheet sheet) {
    Workup workup = workups.work(sheet);
    List<Evidence> evidence = rules.run(Facts.of(workup));
    Set<String> seen =
        workup.heard().signs().stream()
            .filter(Heard.Sign::seen)
            .map(Heard.Sign::key)
            .collect(Collectors.toSet());
    Findings findings = ranking.rank(evidence, seen, workup.style().tags());
    return new ReportWriter(rules.catalogue(), rules.version()).write(sheet, workup, findings);
  }
}
