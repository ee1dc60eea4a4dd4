package crumbtrail.advice;

import crumbtrail.advice.Correction.Moved;
import crumbtrail.advice.Correction.Verdict;
import crumbtrail.findings.Beforehand;
import crumbtrail.findings.Findings;
import crumbtrail.findings.Reasoning;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * A sheet before the bake: what can be worked out from it without its signs, and how likely each
 * cause is to strike.
 *
 * @param sheet without signs
 * @param workup of it
 * @param findings of it
 */
record Trial(BakeSheet sheet, Workup workup, Findings findings) {
  /** A risk beyond this is not sound. The healthy bakes of the cases stay below it. */
  static final double SOUND = 0.3;

  /** A risk that falls to this share of what it was has fallen. Our choice. */
  private static final double FALLEN = 0.9;

  /** Risks that move by less than this are not worth telling. Our choice. */
  static final double TELLING = 0.05;

  /** A trial of which only the risks matter, not what speaks for them. */
  static Trial of(Reasoning reasoning, BakeSheet sheet) {
    return of(reasoning, sheet, reasoning::work);
  }

  /**
   * The same where some sheets are worked out already.
   *
   * @param work works a sheet out as the reasoning does
   */
  static Trial of(Reasoning reasoning, BakeSheet sheet, Function<BakeSheet, Workup> work) {
    BakeSheet unseen = Beforehand.sheet(reasoning, sheet);
    Workup workup = work.apply(unseen);
    return new Trial(unseen, workup, reasoning.prospect(workup));
  }

  /** The same with what speaks for each risk. */
  Trial inFull(Reasoning reasoning) {
    return new Trial(sheet, workup, reasoning.foresee(workup));
  }

  double risk(String cause) {
    return findings.probability(cause);
  }

  /** What becomes of the risks if this trial comes in place of another. */
  Verdict against(Trial before, String cause) {
    if (!raised(before, cause).isEmpty() || risk(cause) > before.risk(cause) + TELLING) {
      return Verdict.HARMS;
    }
    return eases(before, cause) ? Verdict.HELPS : Verdict.NOT_SEEN;
  }

  /** Whether the risk of a cause is less than in another trial by more than a little. */
  boolean eases(Trial before, String cause) {
    return risk(cause) <= FALLEN * before.risk(cause);
  }

  /** Causes but one whose risk is beyond what is sound and higher than in another trial. */
  List<String> raised(Trial before, String but) {
    return causes(before).stream()
        .filter(key -> !key.equals(but))
        .filter(key -> risk(key) > SOUND && risk(key) > before.risk(key) + TELLING)
        .sorted(Comparator.comparingDouble((String key) -> -risk(key)))
        .toList();
  }

  /** Other causes whose risk differs from another trial, the largest step first. */
  List<Moved> moved(Trial before, String cause) {
    List<Moved> moved = new ArrayList<>();
    for (String key : causes(before)) {
      if (!key.equals(cause) && Math.abs(risk(key) - before.risk(key)) >= TELLING) {
        moved.add(new Moved(key, before.risk(key), risk(key)));
      }
    }
    moved.sort(
        Comparator.comparingDouble((Moved one) -> -Math.abs(one.after() - one.before()))
            .thenComparing(Moved::cause));
    return moved;
  }

  private Set<String> causes(Trial other) {
    Set<String> causes = new LinkedHashSet<>();
    findings.ranked().forEach(finding -> causes.add(finding.cause().key()));
    other.findings().ranked().forEach(finding -> causes.add(finding.cause().key()));
    return causes;
  }
}
