package crumbtrail.workup;

import crumbtrail.formula.Formula;
import crumbtrail.knowledge.Style;
import java.util.List;

/**
 * What can be worked out from a bake sheet.
 *
 * @param style the style, fitted to the formula: a bread raised by starter alone is a sourdough
 * @param formula baker's percentages; without flour where the sheet has no formula
 * @param readings numbers, each beside its usual range
 * @param heard what the baker's words were taken to mean
 * @param assumptions what was assumed where the sheet was silent or vague, in sentences
 */
public record Workup(
    Style style, Formula formula, List<Reading> readings, Heard heard, List<String> assumptions) {
  public Workup {
    readings = List.copyOf(readings);
    assumptions = List.copyOf(assumptions);
  }
}
