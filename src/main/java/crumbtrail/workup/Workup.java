package crumbtrail.workup;

import crumbtrail.formula.Formula;
import crumbtrail.knowledge.Style;
import crumbtrail.vessel.TinRoom;
import java.util.List;
import java.util.Optional;

/**
 * What can be worked out from a bake sheet.
 *
 * @param style the style, fitted to the formula: a bread raised by starter alone is a sourdough
 * @param formula baker's percentages; without flour where the sheet has no formula
 * @param readings numbers, each beside its usual range
 * @param heard what the baker's words were taken to mean
 * @param assumptions what was assumed where the sheet was silent or vague, in sentences
 * @param rise what the dough did until it was baked; empty where the sheet tells of no rise
 * @param bake temperatures through the bake; empty where the sheet tells of no bake
 */
public record Workup(
    Style style,
    Formula formula,
    List<Reading> readings,
    Heard heard,
    List<String> assumptions,
    Optional<RiseCourse> rise,
    Optional<BakeCurve> bake) {
  /** Room that an open tin gives a loaf of which no style says, cm³/g; see {@link TinRoom}. */
  public static final double OPEN_TIN_ROOM = TinRoom.PEAKED.middle();

  public Workup {
    readings = List.copyOf(readings);
    assumptions = List.copyOf(assumptions);
  }

  /** The same with other words heard. */
  public Workup with(Heard other) {
    return new Workup(style, formula, readings, other, assumptions, rise, bake);
  }

  /** A workup without courses. */
  public Workup(
      Style style, Formula formula, List<Reading> readings, Heard heard, List<String> assumptions) {
    this(style, formula, readings, heard, assumptions, Optional.empty(), Optional.empty());
  }
}
