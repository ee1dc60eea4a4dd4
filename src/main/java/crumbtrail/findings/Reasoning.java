package crumbtrail.findings;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.pantry.Pantry;
import crumbtrail.rules.Facts;
import crumbtrail.rules.RuleBase;
import crumbtrail.rules.RuleRun;
import crumbtrail.rules.WrittenRule;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.Care;
import crumbtrail.workup.Heard;
import crumbtrail.workup.SheetWorkup;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The way from a sheet to findings, to be gone again and again with one bake: what if this had been
 * so? Every what-if is the same pipeline on an altered sheet.
 *
 * <p>Used by one thread. Close it when done.
 */
public final class Reasoning implements AutoCloseable {
  private final SheetWorkup workups;
  private final RuleBase rules;
  private final Ranking ranking;
  private final Ranking beforehand;
  private final RuleRun run;
  private final Ledger hindsight;
  private final Ledger foresight;
  private final Care draw;
  private final Alike standings;
  private final Alike prospects;

  /**
   * @param workups works sheets out
   * @param rules judge what was worked out
   * @param ranking ranks what they say
   */
  public Reasoning(SheetWorkup workups, RuleBase rules, Ranking ranking) {
    this.workups = workups;
    this.rules = rules;
    this.ranking = ranking;
    this.beforehand = ranking.beforehand();
    this.hindsight = ranking.ledger();
    this.foresight = beforehand.ledger();
    this.run = rules.open();
    this.draw = Care.ofDraw(rules.sights().readings());
    this.standings = new Alike(rules.sights());
    this.prospects = new Alike(rules.sights());
  }

  /** What can be worked out from a sheet. */
  public Workup work(BakeSheet sheet) {
    return workups.work(sheet);
  }

  /** The same with no more care than the question is worth. */
  public Workup work(BakeSheet sheet, Care care) {
    return workups.work(sheet, care);
  }

  /** What the rules look at of one of some hundred draws. */
  Workup draw(BakeSheet sheet) {
    return work(sheet, draw);
  }

  /** What the rules make of a workup. */
  public Findings judge(Workup workup) {
    return rank(workup, Facts.of(workup));
  }

  /**
   * What the rules make of a workup, where only causes and probabilities matter: the readings that
   * the evidence shows may be those of another what-if. Of a few hundred what-ifs most look the
   * same to the rules, and are judged once.
   */
  Findings standing(Workup workup) {
    return standings.alike(workup, facts -> rank(workup, facts));
  }

  /**
   * How likely some causes are on a workup on which one sign more was looked for. No model asks
   * what was seen, so the numbers stand as they were worked out.
   */
  Beliefs beliefs(Workup workup, Heard.Sign more, List<Cause> causes) {
    List<Object> facts = new ArrayList<>(standings.facts(workup));
    facts.add(Facts.of(more));
    return ranking.beliefs(causes, run.evidence(facts), workup.style().tags(), hindsight);
  }

  /**
   * The same for each of some signs.
   *
   * @param more signs whose silence no rule minds
   * @return in their order
   */
  List<Beliefs> beliefs(Workup workup, List<Heard.Sign> more, List<Cause> causes) {
    RuleRun.OneMore heard =
        run.withOneMore(standings.facts(workup), more.stream().map(Facts::of).toList());
    return ranking.beliefs(causes, heard, workup.style().tags(), hindsight);
  }

  /**
   * How likely each cause is to strike a bake that is still to come.
   *
   * @param workup of a sheet without signs
   */
  public Findings foresee(Workup workup) {
    return foreseen(workup, Facts.of(ahead(workup)));
  }

  /**
   * The same where only causes and probabilities matter; see {@link #standing}.
   *
   * @param workup of a sheet without signs
   */
  public Findings prospect(Workup workup) {
    return prospects.alike(ahead(workup), facts -> foreseen(workup, facts));
  }

  private Findings foreseen(Workup workup, List<Object> facts) {
    return beforehand.rank(run.evidence(facts), Set.of(), workup.style().tags(), foresight);
  }

  private Workup ahead(Workup workup) {
    return Beforehand.of(catalogue(), workup);
  }

  /** Whether a circumstance speaks of the finished loaf. */
  public boolean isOutcome(String circumstance) {
    return Beforehand.isOutcome(catalogue(), circumstance);
  }

  private Findings rank(Workup workup, List<Object> facts) {
    return ranking.rank(run.evidence(facts), seen(workup), workup.style().tags(), hindsight);
  }

  private static Set<String> seen(Workup workup) {
    Set<String> seen = new HashSet<>();
    for (Heard.Sign sign : workup.heard().signs()) {
      if (sign.seen()) {
        seen.add(sign.key());
      }
    }
    return seen;
  }

  /** What the rules make of a sheet. */
  public Findings judge(BakeSheet sheet) {
    return judge(work(sheet));
  }

  /** Whether any rule speaks because nothing was said of a sign. */
  boolean mindsSilence(String sign) {
    return rules.mindsSilence(sign);
  }

  /** The rules that look at a sign or a circumstance, or have something to say to its absence. */
  List<WrittenRule> rulesOn(String key) {
    return rules.rulesOn(key);
  }

  Catalogue catalogue() {
    return rules.catalogue();
  }

  Pantry pantry() {
    return rules.pantry();
  }

  @Override
  public void close() {
    run.close();
  }
}
