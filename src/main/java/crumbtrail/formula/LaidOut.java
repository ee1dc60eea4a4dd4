package crumbtrail.formula;

import crumbtrail.pantry.Pantry;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.FormulaLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A line of a formula as written, beside what it weighs.
 *
 * @param part the preferment that it belongs to, empty for the final dough
 * @param line the line
 * @param ingredient what it was taken for, empty if it is not known
 * @param grams its weight with its spread, empty where it cannot be told
 * @param percent its weight on all the flour, empty where either is unknown
 * @param millilitres what it fills, empty where nobody measures it by the cup or spoon
 * @param inDough false for flour to dust with and the like, which counts nowhere
 */
public record LaidOut(
    String part,
    FormulaLine line,
    Optional<String> ingredient,
    Optional<Level> grams,
    Optional<Double> percent,
    OptionalDouble millilitres,
    boolean inDough) {

  /**
   * Every line of the sheet in its order, those of preferments after those of the dough.
   *
   * @param formula the same sheet worked out
   */
  public static List<LaidOut> of(BakeSheet sheet, Formula formula, Pantry pantry) {
    double flour = formula.flourGrams().value();
    List<LaidOut> all = new ArrayList<>(lines("", sheet.formula(), flour, formula, pantry));
    for (BakeSheet.Preferment one : sheet.preferments()) {
      // The percentages of a part made ahead are of its own flour.
      double own =
          formula.parts().stream()
              .filter(part -> part.name().equals(one.name()))
              .mapToDouble(part -> part.flourGrams().value())
              .findFirst()
              .orElse(flour);
      all.addAll(lines(one.name(), one.formula(), own, formula, pantry));
    }
    return all;
  }

  private static List<LaidOut> lines(
      String part, List<FormulaLine> lines, double base, Formula formula, Pantry pantry) {
    double flour = formula.flourGrams().value();
    return new LineWeigher(pantry, new Notes())
        .weigh(lines).stream()
            .map(line -> line.on(base))
            .map(
                line -> {
                  Optional<Level> grams = line.grams().filter(one -> formula.scaleKnown());
                  Optional<Double> percent =
                      flour > 0 && line.inDough()
                          ? line.grams().map(one -> one.value() / flour * 100)
                          : Optional.empty();
                  return new LaidOut(
                      part,
                      line.line(),
                      line.find().map(find -> find.ingredient().plainName()),
                      grams,
                      percent,
                      line.ingredient().isPresent() && grams.isPresent()
                          ? Measures.millilitres(line.ingredient().get(), grams.get().value())
                          : OptionalDouble.empty(),
                      line.inDough());
                })
            .toList();
  }
}
