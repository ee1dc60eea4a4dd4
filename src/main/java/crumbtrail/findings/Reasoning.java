package crumbtrail.findings;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.pantry.Pantry;
import crumbtrail.rules.Evidence;
import crumbtrail.rules.Facts;
import crumbtrail.rules.RuleBase;
import crumbtrail.rules.RuleRun;
import crumbtrail.rules.WrittenRule;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.Heard;
import crumbtrail.workup.SheetWorkup;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

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
  private final Map<List<Object>, Findings> standings = new HashMap<>();

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
    this.run = rules.open();
  }

  /** What can be worked out from a sheet. */
  public Workup work(BakeSheet sheet) {
    return workups.work(sheet);
  }

  /** What the rules make of a workup. */
  public Findings judge(Workup workup) {
    return rank(workup, run.evidence(Facts.of(workup)));
  }

  /**
   * What the rules make of a workup, where only causes and probabilities matter: what the evidence
   * says of readings may be that of another what-if. Of a few hundred what-ifs most have the same
   * rules speak with the same weight, and are ranked once.
   */
  Findings standing(Workup workup) {
    List<Evidence> evidence = run.evidence(Facts.of(workup));
    List<Object> words = new ArrayList<>(3 * evidence.size() + 2);
    words.add(workup.style().tags());
    words.add(seen(workup));
    for (Evidence one : evidence) {
      words.add(one.rule());
      words.add(one.cause());
      words.add(one.decibans());
    }
    return standings.computeIfAbsent(words, first -> rank(workup, evidence));
  }

  /**
   * How likely each cause is to strike a bake that is still to come.
   *
   * @param workup of a sheet without signs
   */
  public Findings foresee(Workup workup) {
    Workup ahead = Beforehand.of(catalogue(), workup);
    return beforehand.rank(run.evidence(Facts.of(ahead)), Set.of(), ahead.style().tags());
  }

  /** Whether a circumstance speaks of the finished loaf. */
  public boolean isOutcome(String circumstance) {
    return Beforehand.isOutcome(catalogue(), circumstance);
  }

  private Findings rank(Workup workup, List<Evidence> evidence) {
    return ranking.rank(evidence, seen(workup), workup.style().tags());
  }

  private static Set<String> seen(Workup workup) {
    return workup.heard().signs().stream()
        .filter(Heard.Sign::seen)
        .map(Heard.Sign::key)
        .collect(Collectors.toSet());
  }

  /** What the rules make of a sheet. */
  public Findings judge(BakeSheet sheet) {
    return judge(work(sheet));
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
