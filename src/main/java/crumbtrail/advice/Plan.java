package crumbtrail.advice;

import crumbtrail.findings.Findings;
import crumbtrail.sheet.BakeSheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The corrections of one bake: all that were tried, and those that are recommended together, worked
 * out one upon the other so that their numbers fit each other.
 *
 * @param tried every correction of the leading causes, each tried alone
 * @param recommended those that go into the next bake, in the order of expected gain
 * @param conflicts what could not be recommended because of another, in sentences
 * @param before risks of the sheet as it stands, by cause, without its signs
 * @param after risks with all that is recommended
 * @param next the sheet with all that is recommended, without signs
 */
public record Plan(
    List<Correction> tried,
    List<Correction> recommended,
    List<String> conflicts,
    Map<String, Double> before,
    Map<String, Double> after,
    BakeSheet next) {
  /** Causes that are as likely as this are mended. Our choice. */
  private static final double WORTH_MENDING = 0.2;

  private static final int MOST_CAUSES = 5;

  public Plan {
    tried = List.copyOf(tried);
    recommended = List.copyOf(recommended);
    conflicts = List.copyOf(conflicts);
    before = Map.copyOf(before);
    after = Map.copyOf(after);
  }

  /**
   * Works a plan out.
   *
   * @param findings what was found on the sheet with its signs
   */
  public static Plan of(Corrections corrections, BakeSheet sheet, Findings findings) {
    Trial start = corrections.trial(sheet);
    Planner planner = new Planner(corrections, start);
    List<Correction> tried = new ArrayList<>();
    for (String cause : causes(findings, start)) {
      tried.addAll(planner.mend(cause));
    }
    return new Plan(
        tried,
        planner.taken(),
        planner.conflicts(),
        risks(start),
        risks(planner.now()),
        planner.now().sheet());
  }

  // The likeliest causes of the failed bake, then what the sheet alone makes likely.
  private static Set<String> causes(Findings findings, Trial start) {
    Set<String> causes = new LinkedHashSet<>();
    findings.ranked().stream()
        .limit(MOST_CAUSES)
        .filter(one -> causes.isEmpty() || one.probability() >= WORTH_MENDING)
        .forEach(one -> causes.add(one.cause().key()));
    start.findings().ranked().stream()
        .limit(MOST_CAUSES)
        .filter(one -> one.probability() >= WORTH_MENDING)
        .forEach(one -> causes.add(one.cause().key()));
    return causes;
  }

  private static Map<String, Double> risks(Trial trial) {
    Map<String, Double> risks = new HashMap<>(trial.findings().unspoken());
    trial.findings().ranked().forEach(one -> risks.put(one.cause().key(), one.probability()));
    return risks;
  }

  /** Causes whose risk the plan leaves beyond what is sound and higher than it was. */
  public Set<String> raised() {
    Set<String> raised = new HashSet<>();
    after.forEach(
        (cause, risk) -> {
          if (risk > Trial.SOUND && risk > before.getOrDefault(cause, 0.0) + Trial.TELLING) {
            raised.add(cause);
          }
        });
    return raised;
  }
}
