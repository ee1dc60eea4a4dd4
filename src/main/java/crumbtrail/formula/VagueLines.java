package crumbtrail.formula;

import crumbtrail.pantry.Kind;
import crumbtrail.pantry.Pantry;
import crumbtrail.quantity.Quantity;
import crumbtrail.quantity.Unit;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.FormulaLine;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Lines of a formula whose weight is open: cups, spoons, eggs, "about 300 g". */
public final class VagueLines {
  /** What a kitchen scale leaves open does not count as vague. */
  private static final double FIRM = 0.005;

  private static final MathContext FOUR_FIGURES = new MathContext(4);

  private VagueLines() {}

  /**
   * A line with the weights that it may stand for.
   *
   * @param line the line
   * @param grams its weight
   * @param measured whether a cup, spoon or count stands for the weight
   */
  public record Vague(FormulaLine line, Level grams, boolean measured) {}

  /** The vague lines of a sheet, those of its preferments included. */
  public static List<Vague> of(BakeSheet sheet, Pantry pantry) {
    List<FormulaLine> lines = new ArrayList<>(sheet.formula());
    sheet.preferments().forEach(preferment -> lines.addAll(preferment.formula()));
    List<Vague> vague = new ArrayList<>();
    for (WeighedLine line : new LineWeigher(pantry, new Notes()).weigh(lines)) {
      Optional<Level> grams = line.grams().filter(level -> open(level) && line.inDough());
      if (grams.isPresent()) {
        vague.add(new Vague(line.line(), grams.get(), line.way() != WeighedLine.Way.WEIGHT));
      }
    }
    return vague;
  }

  /**
   * The only flour of a sheet, where its strength is nowhere told.
   *
   * @return empty where there is no flour, where there are several, or where its protein is stated
   */
  public static Optional<FormulaLine> flourOfUnknownStrength(BakeSheet sheet, Pantry pantry) {
    List<WeighedLine> flours =
        new LineWeigher(pantry, new Notes())
            .weigh(sheet.formula()).stream().filter(line -> line.isKind(Kind.FLOUR)).toList();
    boolean single = flours.size() == 1 && sheet.preferments().isEmpty();
    return single && flours.get(0).line().protein().isEmpty()
        ? Optional.of(flours.get(0).line())
        : Optional.empty();
  }

  /** The line with the protein of its flour stated, percent. */
  public static FormulaLine withProtein(FormulaLine line, double protein) {
    return new FormulaLine(
        line.where(),
        line.written(),
        line.ingredient(),
        line.amount(),
        line.alsoGiven(),
        line.size(),
        line.notes(),
        OptionalDouble.of(protein),
        line.hydration(),
        line.fallingNumber());
  }

  private static boolean open(Level level) {
    return level.high() - level.low() > FIRM * level.value();
  }

  /** The line with one weight. How it was measured stays known, for rules ask about that. */
  public static FormulaLine weighing(FormulaLine line, double grams) {
    Quantity weight =
        new Quantity(
            BigDecimal.valueOf(grams).round(FOUR_FIGURES).toPlainString() + " g",
            Unit.GRAM,
            grams,
            grams,
            grams);
    boolean weighed =
        line.amount().map(amount -> amount.unit().dimension() == weight.dimension()).orElse(false);
    return new FormulaLine(
        line.where(),
        line.written(),
        line.ingredient(),
        weighed ? Optional.of(weight) : line.amount(),
        weighed ? line.alsoGiven() : Optional.of(weight),
        line.size(),
        line.notes(),
        line.protein(),
        line.hydration(),
        line.fallingNumber());
  }
}
