package crumbtrail.report;

import com.fasterxml.jackson.databind.JsonNode;
import crumbtrail.advice.Corrections;
import crumbtrail.advice.Foresight;
import crumbtrail.advice.NextBake;
import crumbtrail.advice.Plan;
import crumbtrail.advice.Replaced;
import crumbtrail.advice.Wish;
import crumbtrail.compare.Comparer;
import crumbtrail.compare.Comparison;
import crumbtrail.findings.Findings;
import crumbtrail.findings.Firmness;
import crumbtrail.findings.NextQuestions;
import crumbtrail.findings.Ranking;
import crumbtrail.findings.Reasoning;
import crumbtrail.findings.Weights;
import crumbtrail.report.ReportWriter.Advised;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.SheetWorkup;
import crumbtrail.workup.Workup;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.FutureTask;

/**
 * The whole way from a bake sheet to its report: workup, facts, rules, evidence, findings.
 * Immutable; safe for use by many threads.
 */
public final class PostMortem {
  private static final int QUESTIONS = 3;

  private final RuleBase rules;
  private final SheetWorkup workups;
  private final Ranking ranking;
  private final Map<String, Double> kitchen;
  private final ReportWriter writer;

  // As many as ever were at work at once.
  private final Queue<Reasoning> idle = new ConcurrentLinkedQueue<>();

  /**
   * @param rules the rule base
   */
  public PostMortem(RuleBase rules) {
    this(rules, Map.of());
  }

  /**
   * A post-mortem by the odds of one kitchen.
   *
   * @param rules the rule base
   * @param kitchen by how much the log-odds of causes differ from those of all kitchens, decibans
   *     by key
   */
  public PostMortem(RuleBase rules, Map<String, Double> kitchen) {
    this.rules = rules;
    this.workups = new SheetWorkup(rules.catalogue(), rules.pantry());
    this.ranking = new Ranking(rules.catalogue(), Weights.of(rules.catalogue()).in(kitchen));
    this.kitchen = Map.copyOf(kitchen);
    this.writer = new ReportWriter(rules);
  }

  /** The rule base that judges. */
  public RuleBase rules() {
    return rules;
  }

  /** Whether the rules are laid out, so that the first sheet need not wait for them. */
  public boolean ready() {
    return rules.laidOut();
  }

  /** The report on one bake; never throws for what a sheet says. */
  public Report trace(BakeSheet sheet) {
    return trace(sheet, Set.of());
  }

  /**
   * The causes of one bake and what they rest on, and nothing more: how firm they are, what to ask
   * next and what to change are left out, which cost most of the time (docs/performance.md). Never
   * throws for what a sheet says.
   */
  public Report causes(BakeSheet sheet) {
    Reasoning reasoning = Objects.requireNonNullElseGet(idle.poll(), this::reasoning);
    Workup workup;
    Findings findings;
    try {
      workup = reasoning.work(sheet);
      findings = reasoning.judge(workup);
    } catch (RuntimeException fault) {
      // What it left behind is not to be trusted.
      reasoning.close();
      throw fault;
    }
    idle.add(reasoning);
    return writer.write(
        sheet, workup, findings, null, List.of(), new Advised(List.of(), null, null));
  }

  private Report trace(BakeSheet sheet, Set<String> passed) {
    try (Reasoning reasoning = reasoning()) {
      Workup workup = reasoning.work(sheet);
      Findings findings = reasoning.judge(workup);
      NextQuestions questions = new NextQuestions(reasoning, sheet, workup, findings, passed);
      Firmness.Draws draws = new Firmness.Draws(reasoning, sheet, workup, findings);
      // How firm the findings are, what to change and what to ask next are some hundred bakes each.
      // The second core begins with the first of them and this one with the second; what is left
      // is shared out among those who are done.
      FutureTask<List<Firmness.Matter>> matters = new FutureTask<>(() -> beside(draws, questions));
      ForkJoinPool.commonPool().execute(matters);
      Advised advised = advised(reasoning, sheet, findings, Wish.PLAIN);
      questions.weigh(reasoning);
      draws.draw(reasoning);
      Firmness firmness = draws.firmness(done(matters));
      Report report =
          writer.write(sheet, workup, findings, firmness, questions.best(QUESTIONS), advised);
      return kitchen.isEmpty() ? report : report.movedBy(shifts(workup, findings));
    }
  }

  private List<Report.KitchenShift> shifts(Workup workup, Findings own) {
    Ranking elsewhere = new Ranking(rules.catalogue(), Weights.of(rules.catalogue()));
    try (Reasoning plain = new Reasoning(workups, rules, elsewhere)) {
      return KitchenShifts.of(plain.judge(workup), own, kitchen);
    }
  }

  private List<Firmness.Matter> beside(Firmness.Draws draws, NextQuestions questions) {
    try (Reasoning reasoning = reasoning()) {
      List<Firmness.Matter> matters = draws.matters(reasoning);
      draws.draw(reasoning);
      questions.weigh(reasoning);
      return matters;
    }
  }

  // Does what nobody has begun. What goes wrong over there is told as if it had gone wrong here.
  private static <T> T done(FutureTask<T> task) {
    task.run();
    try {
      return task.get();
    } catch (ExecutionException thrown) {
      if (thrown.getCause() instanceof RuntimeException here) {
        throw here;
      }
      throw new IllegalStateException(thrown.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the diagnosis was broken off", stopped);
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
      return writer.write(
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

  /**
   * A bake held against another one: what was done otherwise, and what of it can explain the
   * outcome.
   *
   * @param before the bake that is held against, as a rule the one that came out better
   * @param after the bake in question
   */
  public Comparison compare(BakeSheet before, BakeSheet after) {
    try (Reasoning reasoning = reasoning()) {
      return new Comparer(reasoning, rules.catalogue(), rules.pantry()).of(before, after);
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
        tables.corrections(plan, findings),
        tables.next(next, plan.conflicts(), wish, rules.pantry()),
        null);
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
