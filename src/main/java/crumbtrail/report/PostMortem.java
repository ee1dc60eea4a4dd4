package crumbtrail.report;

import com.fasterxml.jackson.databind.JsonNode;
import crumbtrail.advice.Corrections;
import crumbtrail.advice.Foresight;
import crumbtrail.advice.NextBake;
import crumbtrail.advice.Plan;
import crumbtrail.advice.Replaced;
import crumbtrail.advice.Wish;
import crumbtrail.findings.Findings;
import crumbtrail.findings.Firmness;
import crumbtrail.findings.NextQuestions;
import crumbtrail.findings.Question;
import crumbtrail.findings.Ranking;
import crumbtrail.findings.Reasoning;
import crumbtrail.findings.Weights;
import crumbtrail.report.ReportWriter.Advised;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.SheetWorkup;
import crumbtrail.workup.Workup;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

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
    return trace(sheet, Set.of());
  }

  private Report trace(BakeSheet sheet, Set<String> passed) {
    try (Reasoning reasoning = reasoning()) {
      Workup workup = reasoning.work(sheet);
      Findings findings = reasoning.judge(workup);
      // How firm the findings are and what to change go separate ways from here, each some
      // hundred bakes long; the second core is there for the one while this one goes the other.
      CompletableFuture<Firmness> firm =
          CompletableFuture.supplyAsync(() -> firmness(sheet, workup, findings));
      List<Question> questions =
          NextQuestions.of(reasoning, sheet, workup, findings, passed, QUESTIONS);
      Advised advised = advised(reasoning, sheet, findings, Wish.PLAIN);
      return new ReportWriter(rules)
          .write(sheet, workup, findings, joined(firm), questions, advised);
    }
  }

  private Firmness firmness(BakeSheet sheet, Workup workup, Findings findings) {
    try (Reasoning reasoning = reasoning()) {
      return Firmness.of(reasoning, sheet, workup, findings);
    }
  }

  // What goes wrong over there is told as if it had gone wrong here.
  private static <T> T joined(CompletableFuture<T> future) {
    try {
      return future.join();
    } catch (CompletionException thrown) {
      if (thrown.getCause() instanceof RuntimeException here) {
        throw here;
      }
      throw thrown;
    }
  }

  /**
   * The report on a bake that is still to come: its causes are risks, and signs on the sheet are
   * left out of account. Never throws for what a sheet says.
   */
  public Report precheck(BakeSheet sheet) {
    try (Reasoning reasoning = reasoning()) {
      Foresight ahead = Foresight.of(reasoning, rules.catalogue(), sheet);
      Advised advised = advised(reasoning, ahead.sheet(), ahead.risks(), Wish.PLAIN);
      return new ReportWriter(rules)
          .write(
              ahead.sheet(),
              ahead.workup(),
              ahead.risks(),
              null,
              List.of(),
              new Advised(
                  advised.corrections(),
                  advised.next(),
                  new AdviceTables(rules.catalogue()).foresight(ahead)));
    }
  }

  /**
   * The next bake after one that failed.
   *
   * @param wish what the baker wants of it
   */
  public Report.NextBakeSheet next(BakeSheet sheet, Wish wish) {
    try (Reasoning reasoning = reasoning()) {
      return advised(reasoning, sheet, reasoning.judge(sheet), wish).next();
    }
  }

  private Advised advised(Reasoning reasoning, BakeSheet sheet, Findings findings, Wish wish) {
    Corrections corrections = new Corrections(reasoning, rules.catalogue(), rules.pantry());
    Replaced replaced = Replaced.of(sheet, rules.pantry(), wish.instead());
    Plan plan = Plan.of(corrections, replaced.sheet(), findings);
    AdviceTables tables = new AdviceTables(rules.catalogue());
    NextBake next =
        NextBake.of(corrections, rules.catalogue(), rules.pantry(), plan, wish, sheet)
            .noting(replaced.notes());
    return new Advised(
        tables.corrections(plan, findings), tables.next(next, plan.conflicts(), wish), null);
  }

  /** The formula of a sheet laid out while it is still being written. */
  public RecipeLayout layout(JsonNode sheet) {
    return RecipeLayout.of(sheet, rules.pantry());
  }

  /**
   * The report on a bake with one question more answered.
   *
   * @param passed what was asked before and need not be asked again
   */
  public Replied reply(BakeSheet sheet, Set<String> passed, Reply reply) {
    try (Enquiry enquiry = enquire(sheet)) {
      Reply.Taken taken = reply.take(enquiry, rules.catalogue(), passed);
      return new Replied(trace(taken.sheet(), taken.passed()), taken);
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
