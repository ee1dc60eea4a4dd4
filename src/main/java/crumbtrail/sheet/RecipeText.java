package crumbtrail.sheet;

import java.util.List;

/**
 * A whole recipe as it was pasted, taken apart: ingredients by line, preferments under their
 * headings, and everything else as remarks, so that nothing is lost.
 *
 * @param title the first line when it is neither heading nor ingredient, else empty
 * @param lines the ingredients of the dough
 * @param preferments one for each heading such as "Poolish:", with the stages its lines name
 * @param remarks all other lines, in order
 * @param steps the lines that say what is to be done, with their headings
 * @param day what tells how the dough was made and baked, steps and remarks, in order
 * @param problems lines that are meant as ingredients and cannot be used
 */
public record RecipeText(
    String title,
    List<FormulaLine> lines,
    List<BakeSheet.Preferment> preferments,
    List<String> remarks,
    List<String> steps,
    List<String> day,
    List<Problem> problems) {

  public RecipeText {
    lines = List.copyOf(lines);
    preferments = List.copyOf(preferments);
    remarks = List.copyOf(remarks);
    steps = List.copyOf(steps);
    day = List.copyOf(day);
    problems = List.copyOf(problems);
  }

  /** Reads a recipe; never throws, whatever the text. */
  public static RecipeText read(String text) {
    return read("recipe", text);
  }

  /**
   * @param where the place of the text on its sheet; its lines are named from there
   */
  static RecipeText read(String where, String text) {
    RecipeSorter sorter = new RecipeSorter(where);
    if (text.length() > SheetLimits.RECIPE) {
      return sorter.refused(
          "this recipe has " + text.length() + " characters",
          "paste at most " + SheetLimits.RECIPE + " characters");
    }
    List<String> all = text.lines().toList();
    if (all.size() > SheetLimits.RECIPE_LINES) {
      return sorter.refused(
          "this recipe has " + all.size() + " lines",
          "paste at most " + SheetLimits.RECIPE_LINES + " lines");
    }
    for (int i = 0; i < all.size(); i++) {
      sorter.take(i + 1, all.get(i));
    }
    return sorter.finish();
  }
}
