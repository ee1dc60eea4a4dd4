package crumbtrail.sheet;

import java.util.ArrayList;
import java.util.List;

/** stub */
public record RecipeText(
    List<FormulaLine> lines,
    List<BakeSheet.Preferment> preferments,
    List<String> remarks,
    List<Problem> problems) {

  /** stub */
  public static RecipeText read(String where, String text) {
    List<FormulaLine> lines = new ArrayList<>();
    List<String> remarks = new ArrayList<>();
    int n = 0;
    for (String line : text.lines().toList()) {
      n++;
      if (!line.isBlank()) {
        IngredientLine.read(where + " line " + n, line)
            .filter(l -> l.amount().isPresent())
            .ifPresentOrElse(lines::add, () -> remarks.add(line.strip()));
      }
    }
    return new RecipeText(lines, List.of(), remarks, List.of());
  }
}
