package crumbtrail.report;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import crumbtrail.formula.Formula;
import crumbtrail.formula.FormulaWorker;
import crumbtrail.formula.LaidOut;
import crumbtrail.formula.Level;
import crumbtrail.pantry.Pantry;
import crumbtrail.report.Report.FormulaTable;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Problem;
import crumbtrail.sheet.Salvage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A recipe laid out line by line while it is still being written: what each line weighs, and what
 * of it was not understood. Nothing is judged here.
 *
 * @param title of the recipe, empty if it has none
 * @param lines in the order of the recipe
 * @param formula baker's percentages of the whole; null where there is no flour to reckon on
 * @param salt percent of the flour, null where it is not known
 * @param yeast percent of the flour, null where it is not known
 * @param notUnderstood lines that count for nothing or not in full
 * @param problems lines that cannot be used at all, with what would do
 * @param assumptions what was taken for granted, in sentences
 * @param steps what its steps tell of times and heat: "first rise 1 hour"
 * @param notes lines that are no ingredients, kept as notes on the day
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record RecipeLayout(
    String title,
    List<RecipeLine> lines,
    @Nullable FormulaTable formula,
    @Nullable Double salt,
    @Nullable Double yeast,
    List<OpenLine> notUnderstood,
    List<Problem> problems,
    List<String> assumptions,
    List<String> steps,
    List<String> notes) {

  /** Where nothing was written. */
  public static final RecipeLayout EMPTY = without(List.of());

  public RecipeLayout {
    lines = List.copyOf(lines);
    notUnderstood = List.copyOf(notUnderstood);
    problems = List.copyOf(problems);
    assumptions = List.copyOf(assumptions);
    steps = List.copyOf(steps);
    notes = List.copyOf(notes);
  }

  /**
   * A line of the recipe.
   *
   * @param where its place on the sheet
   * @param part the preferment that it belongs to, empty for the final dough
   * @param written the line as written
   * @param ingredient what it was taken for, empty if it is not known
   * @param grams its weight, null where it cannot be told
   * @param low the least that it may weigh, null where its weight was given
   * @param high the most that it may weigh, null where its weight was given
   * @param percent its weight on all the flour, null where it cannot be told
   * @param millilitres what it fills, null where nobody measures it by the cup or spoon
   * @param inDough false for flour to dust with and the like, which counts nowhere
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record RecipeLine(
      String where,
      String part,
      String written,
      String ingredient,
      @Nullable Double grams,
      @Nullable Double low,
      @Nullable Double high,
      @Nullable Double percent,
      @Nullable Double millilitres,
      boolean inDough) {}

  /**
   * A line that was not understood, or not in full.
   *
   * @param where its place on the sheet
   * @param written the line as written
   * @param uncertain what it leaves open
   * @param remedy what would do
   */
  public record OpenLine(String where, String written, String uncertain, String remedy) {}

  /** Lays out a recipe as it was pasted or typed. */
  public static RecipeLayout ofRecipe(String recipe, Pantry pantry) {
    return of(JsonNodeFactory.instance.objectNode().put("recipe", recipe), pantry);
  }

  /** Lays out the formula of a bake sheet, which may still be faulty; never throws. */
  public static RecipeLayout of(JsonNode sheet, Pantry pantry) {
    Salvage salvage = Salvage.of(sheet);
    return salvage
        .sheet()
        .map(one -> laidOut(one, salvage.problems(), pantry))
        .orElseGet(() -> without(salvage.problems()));
  }

  private static RecipeLayout without(List<Problem> problems) {
    return new RecipeLayout(
        "", List.of(), null, null, null, List.of(), problems, List.of(), List.of(), List.of());
  }

  private static RecipeLayout laidOut(BakeSheet sheet, List<Problem> problems, Pantry pantry) {
    Formula formula = FormulaWorker.work(sheet, pantry);
    List<RecipeLine> lines = new ArrayList<>();
    LaidOut.of(sheet, formula, pantry).forEach(line -> lines.add(line(line)));
    return new RecipeLayout(
        sheet.title(),
        lines,
        FormulaTables.of(sheet, formula),
        level(formula, "salt"),
        level(formula, "yeast"),
        formula.notUnderstood().stream()
            .map(one -> new OpenLine(one.where(), one.written(), one.uncertain(), remedy(one)))
            .toList(),
        problems,
        formula.assumptions(),
        sheet.process().fromSteps(),
        sheet.process().sentences());
  }

  private static RecipeLine line(LaidOut line) {
    Optional<Level> vague = line.grams().filter(grams -> grams.high() - grams.low() > 0.01);
    return new RecipeLine(
        line.line().where(),
        line.part(),
        line.line().written(),
        line.ingredient().orElse(""),
        grams(line.grams().map(Level::value)),
        grams(vague.map(Level::low)),
        grams(vague.map(Level::high)),
        line.percent().map(percent -> ReportWriter.rounded(percent, 2)).orElse(null),
        line.millilitres().isPresent()
            ? (Double) ReportWriter.rounded(line.millilitres().getAsDouble(), 1)
            : null,
        line.inDough());
  }

  // Of a pinch of yeast a tenth of a gram would tell nothing.
  private static Double grams(Optional<Double> weight) {
    return weight.map(one -> ReportWriter.rounded(one, one < 1 ? 2 : 1)).orElse(null);
  }

  private static String remedy(Formula.NotUnderstood open) {
    if (open.uncertain().startsWith("counted by weight")) {
      return "write a plainer name, such as whole milk or rye flour";
    }
    if (open.uncertain().startsWith("the weight of this measure")) {
      return "write its weight in grams or ounces";
    }
    return open.uncertain().startsWith("two things")
        ? "write one ingredient a line"
        : "write a weight and a plain name, such as 500 g bread flour";
  }

  private static Double level(Formula formula, String reading) {
    return formula
        .reading(reading)
        .map(level -> ReportWriter.rounded(level.value(), 2))
        .orElse(null);
  }
}
