package crumbtrail.report;

import crumbtrail.findings.Findings;
import crumbtrail.findings.Firmness;
import crumbtrail.findings.NextQuestions;
import crumbtrail.findings.Ranking;
import crumbtrail.findings.Reasoning;
import crumbtrail.findings.Weights;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.SheetWorkup;
import crumbtrail.workup.Workup;
import java.util.Set;

/**
 * The whole way from a bake sheet to its report: workup, facts, rules, evidence, findings.
 * Immutable; safe for use by many threads.
 */
public final class PostMortem {
  private static final int QUESTIONS = 3;

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
    try (Reasoning reasoning = reasoning()) {
      Workup workup = reasoning.work(sheet);
      Findings findings = reasoning.judge(workup);
      return new ReportWriter(rules)
          .write(
              sheet,
              workup,
              findings,
              Firmness.of(reasoning, sheet, workup, findings),
              NextQuestions.of(reasoning, sheet, workup, findings, Set.of(), QUESTIONS));
    }
  }

  /** An enquiry into one bake, question by question. */
  public Enquiry enquire(BakeSheet sheet) {
    return new Enquiry(rules.catalogue(), reasoning(), sheet);
  }

  private Reasoning reasoning() {
    return new Reasoning(workups, rules, ranking);
  }
}
