package crumbtrail.advice;

import crumbtrail.findings.Findings;
import crumbtrail.formula.FormulaEdit;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.pantry.Pantry;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The next bake: what to change, the sheet with the changes made, and the day it takes.
 *
 * @param changes the corrections that were made, the one of the greatest gain first
 * @param sheet a bake sheet by weight, ready to be baked and to be read by this program
 * @param workup of that sheet
 * @param timetable of that sheet
 * @param risks of that sheet
 * @param notes what was fitted to the baker's wishes, in sentences
 */
public record NextBake(
    List<Correction> changes,
    BakeSheet sheet,
    Workup workup,
    Timetable timetable,
    Findings risks,
    List<String> notes) {

  public NextBake {
    changes = List.copyOf(changes);
    notes = List.copyOf(notes);
  }

  /** The next bake after a plan. */
  public static NextBake of(
      Corrections corrections,
      Catalogue catalogue,
      Pantry pantry,
      Plan plan,
      Wish wish,
      BakeSheet before) {
    List<Correction> changes = new ArrayList<>(plan.recommended());
    changes.sort(
        Comparator.comparingDouble((Correction one) -> one.riskAfter() - one.riskBefore()));
    BakeSheet next = plan.next();
    if (wish.single() && !changes.isEmpty()) {
      Correction first = changes.get(0);
      changes = List.of(alone(plan, first).orElse(first));
      next = changes.get(0).altered();
    }
    BakeSheet weighed = FormulaEdit.of(next, pantry).scaled(1);
    // A larger dough keeps its warmth longer, so its weight is settled before its hours.
    Sizing sizing = new Sizing(corrections.reasoning(), catalogue, pantry);
    BakeSheet sized = sizing.sized(weighed, wish);
    Schedule schedule = new Schedule(corrections.reasoning(), catalogue, pantry);
    BakeSheet fitted = titled(schedule.fitted(sized, wish), before);
    List<String> notes = new ArrayList<>(sizing.notes());
    notes.addAll(schedule.notes());
    ColdWater.note(fitted, pantry).ifPresent(notes::add);
    Trial trial = corrections.trial(fitted);
    return new NextBake(
        changes,
        trial.sheet(),
        trial.workup(),
        Timetable.of(trial.sheet(), catalogue, trial.workup().style()),
        trial.findings(),
        notes);
  }

  /** The same bake with more to be said of it, before all else. */
  public NextBake noting(List<String> first) {
    List<String> all = new ArrayList<>(first);
    all.addAll(notes);
    return new NextBake(changes, sheet, workup, timetable, risks, all);
  }

  // The same change as it was tried alone on the sheet as it came.
  private static Optional<Correction> alone(Plan plan, Correction one) {
    return plan.tried().stream().filter(other -> other.remedy().equals(one.remedy())).findFirst();
  }

  private static BakeSheet titled(BakeSheet sheet, BakeSheet before) {
    String title = before.title().isBlank() ? "Next bake" : before.title() + ", next time";
    return new BakeSheet(
        title,
        sheet.style(),
        sheet.formula(),
        sheet.preferments(),
        sheet.process(),
        List.of(),
        List.of(),
        List.of());
  }
}
