package crumbtrail.findings;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.CircumstanceKind;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.Heard;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What can be known of a bake that is still to come. */
public final class Beforehand {
  private Beforehand() {}

  /** The workup without signs and without words on the finished loaf. */
  public static Workup of(Catalogue catalogue, Workup workup) {
    Heard heard = workup.heard();
    return workup.with(
        new Heard(
            List.of(),
            heard.circumstances().stream().filter(one -> !isOutcome(catalogue, one.key())).toList(),
            heard.notUnderstood()));
  }

  /**
   * The sheet before anybody has looked at the loaf. Bakers tell what was done among what they saw;
   * that stays on it as a remark.
   */
  public static BakeSheet sheet(Reasoning reasoning, BakeSheet sheet) {
    if (sheet.seen().isEmpty()) {
      return sheet.unseen();
    }
    List<String> remarks = new ArrayList<>(sheet.process().remarks());
    Set<String> left = new HashSet<>(keys(reasoning.work(sheet.unseen())));
    keys(reasoning.work(sheet)).stream()
        .filter(key -> !left.contains(key) && !remarks.contains(key))
        .filter(key -> !reasoning.isOutcome(key))
        .forEach(remarks::add);
    return sheet.with(sheet.process().withRemarks(remarks)).unseen();
  }

  private static List<String> keys(Workup workup) {
    return workup.heard().circumstances().stream().map(Heard.Circumstance::key).toList();
  }

  /** Whether a circumstance speaks of the finished loaf. */
  public static boolean isOutcome(Catalogue catalogue, String circumstance) {
    return catalogue.circumstance(circumstance).map(CircumstanceKind::outcome).orElse(false);
  }
}
