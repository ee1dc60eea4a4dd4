package crumbtrail.findings;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.CircumstanceKind;
import crumbtrail.workup.Heard;
import crumbtrail.workup.Workup;
import java.util.List;

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

  /** Whether a circumstance speaks of the finished loaf. */
  public static boolean isOutcome(Catalogue catalogue, String circumstance) {
    return catalogue.circumstance(circumstance).map(CircumstanceKind::outcome).orElse(false);
  }
}
