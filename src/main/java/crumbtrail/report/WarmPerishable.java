package crumbtrail.report;

import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Kind;
import crumbtrail.pantry.Pantry;
import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.FormulaLine;
import crumbtrail.sheet.Stage;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Egg, milk, cream or fresh cheese in a dough that stood warm for longer than the usual rule for
 * perishable food allows: two hours in all, one above 32 °C (90 F). Only what the sheet tells is
 * counted; dried egg and milk powder are left out (our choice), as is butter, which holds little
 * water.
 */
final class WarmPerishable {
  private static final double TWO_HOURS = 120;
  private static final double ONE_HOUR = 60;
  private static final double HOT = 32;

  /**
   * The rule begins at 5 °C; household refrigerators and some food laws go to 8 °C, and a dough in
   * the refrigerator is to raise no alarm (our choice).
   */
  private static final double COLD = 8;

  /**
   * A longer stage of which no temperature is told may have been in the refrigerator: not judged.
   */
  private static final double SURELY_OUT = 240;

  private static final double ROOM = 21;

  private final Pantry pantry;
  private final BakeSheet sheet;

  private WarmPerishable(Pantry pantry, BakeSheet sheet) {
    this.pantry = pantry;
    this.sheet = sheet;
  }

  /** What is wrong, in words without a full stop; empty if nothing is. */
  static Optional<String> of(Pantry pantry, BakeSheet sheet) {
    return new WarmPerishable(pantry, sheet).told();
  }

  private Optional<String> told() {
    Set<String> perishable = perishable(Allergens.lines(sheet));
    if (perishable.isEmpty()) {
      return Optional.empty();
    }
    double warm = minutes(COLD);
    double hot = minutes(HOT);
    String holds = "This dough holds " + String.join(" and ", perishable);
    if (hot > ONE_HOUR) {
      return Optional.of(holds + " and stood above 32 °C for " + CourseWords.time(hot));
    }
    return warm > TWO_HOURS
        ? Optional.of(holds + " and stood in the warmth for " + CourseWords.time(warm) + " in all")
        : Optional.empty();
  }

  private Set<String> perishable(Stream<FormulaLine> lines) {
    Set<String> found = new TreeSet<>();
    lines
        .flatMap(line -> pantry.lookup(line.ingredient()).stream())
        .filter(one -> !one.has("powder") && !one.has("dried"))
        .map(Ingredient::kind)
        .forEach(
            kind -> {
              if (kind == Kind.EGG) {
                found.add("egg");
              } else if (kind == Kind.DAIRY) {
                found.add("milk or its like");
              }
            });
    return found;
  }

  // In the dough, and before that in the preferment that held it.
  private double minutes(double above) {
    double before =
        sheet.preferments().stream()
            .filter(part -> !perishable(part.formula().stream()).isEmpty())
            .mapToDouble(part -> minutes(part.stages(), above))
            .max()
            .orElse(0);
    double bench =
        place(Optional.empty()) > above
            ? sheet.process().shaping().benchRest().map(Quantity::value).orElse(0.0)
            : 0;
    return before
        + minutes(sheet.process().bulk(), above)
        + bench
        + minutes(sheet.process().proof(), above);
  }

  private double minutes(List<Stage> stages, double above) {
    return stages.stream()
        .filter(
            stage ->
                stage.temperature().isPresent()
                    || stage.time().map(Quantity::value).orElse(0.0) <= SURELY_OUT)
        .filter(stage -> place(stage.temperature()) > above)
        .mapToDouble(stage -> stage.time().map(Quantity::value).orElse(0.0))
        .sum();
  }

  private double place(Optional<Quantity> told) {
    return told.or(() -> sheet.process().room()).map(Quantity::value).orElse(ROOM);
  }
}
