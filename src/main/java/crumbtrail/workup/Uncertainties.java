package crumbtrail.workup;

import crumbtrail.formula.VagueLines;
import crumbtrail.knowledge.Style;
import crumbtrail.pantry.Pantry;
import crumbtrail.quantity.Dimension;
import crumbtrail.quantity.Quantity;
import crumbtrail.quantity.Unit;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.FormulaLine;
import crumbtrail.sheet.SheetQuantities;
import crumbtrail.sheet.Stage;
import crumbtrail.workup.Reading.Known;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * Finds what a sheet leaves open: amounts by cup, spoon and count, ranges and "about", and what had
 * to be assumed: the warmth of a place, of the dough, the strength of the flour.
 */
public final class Uncertainties {
  private final BakeSheet sheet;
  private final Workup workup;
  private final List<Uncertain> found = new ArrayList<>();

  private Uncertainties(BakeSheet sheet, Workup workup) {
    this.sheet = sheet;
    this.workup = workup;
  }

  /** Everything open on a sheet. */
  public static List<Uncertain> of(BakeSheet sheet, Workup workup, Pantry pantry) {
    Uncertainties open = new Uncertainties(sheet, workup);
    open.lines(pantry);
    SheetQuantities.changed(sheet, open::told);
    open.places();
    open.dough();
    open.flour(pantry);
    return List.copyOf(open.found);
  }

  private void lines(Pantry pantry) {
    for (VagueLines.Vague vague : VagueLines.of(sheet, pantry)) {
      FormulaLine line = vague.line();
      found.add(
          new Uncertain(
              line.written(),
              "Weigh the " + line.ingredient(),
              vague.measured() ? "your " + measure(line) : "\"" + line.written() + "\"",
              "g",
              vague.grams().low(),
              vague.grams().value(),
              vague.grams().high(),
              (altered, grams) ->
                  onLine(altered, line.where(), one -> VagueLines.weighing(one, grams))));
    }
  }

  private static String measure(FormulaLine line) {
    return line.amount()
        .map(
            amount ->
                switch (amount.unit()) {
                  case CUP -> "cup";
                  case TEASPOON, TABLESPOON -> "spoon";
                  case PIECE, PACKET, CAKE, STICK -> "count";
                  case PINCH, DASH -> "pinch";
                  default -> "measure";
                })
        .orElse("measure");
  }

  private static BakeSheet onLine(
      BakeSheet sheet, String where, UnaryOperator<FormulaLine> change) {
    return SheetQuantities.withLines(
        sheet, line -> line.where().equals(where) ? change.apply(line) : line);
  }

  private Quantity told(String where, Quantity quantity) {
    if (quantity.high() > quantity.low()) {
      String name = QuantityNames.of(where);
      boolean time = quantity.dimension() == Dimension.TIME;
      // Sheets keep lengths in millimetres; the only one here is the height above the sea.
      double scale = quantity.dimension() == Dimension.LENGTH ? 1000 : 1;
      found.add(
          new Uncertain(
              name + ", " + quantity.written(),
              (time ? "Time the " : "Measure the ") + name,
              "\"" + quantity.written() + "\"",
              QuantityNames.unit(quantity.dimension()),
              quantity.low() / scale,
              quantity.value() / scale,
              quantity.high() / scale,
              (altered, value) -> exact(altered, where, value * scale)));
    }
    return quantity;
  }

  private static BakeSheet exact(BakeSheet sheet, String where, double value) {
    return SheetQuantities.changed(
        sheet,
        (place, old) ->
            place.equals(where)
                ? new Quantity(old.written(), old.unit(), value, value, value)
                : old);
  }

  // One kitchen: where it is warmer than was assumed, both rises were.
  private void places() {
    BakeProcess process = sheet.process();
    Set<String> heard =
        workup.heard().circumstances().stream()
            .map(Heard.Circumstance::key)
            .collect(Collectors.toSet());
    Style.Habits habits = workup.style().habits();
    Optional<Double> bulk = RisePlan.assumed(process, heard, process.bulk(), habits.bulk());
    Optional<Double> proof = RisePlan.assumed(process, heard, process.proof(), habits.proof());
    if (bulk.isEmpty() && proof.isEmpty()) {
      return;
    }
    double assumed = bulk.or(() -> proof).orElseThrow();
    double later = proof.orElse(assumed) - assumed;
    found.add(
        new Uncertain(
            "warmth of the place where the dough rose",
            "Measure how warm it is where the dough rises",
            "that",
            "C",
            assumed - RiseSpread.GUESSED,
            assumed,
            assumed + RiseSpread.GUESSED,
            (altered, celsius) -> placed(altered, celsius, celsius + later)));
  }

  private static BakeSheet placed(BakeSheet sheet, double bulk, double proof) {
    BakeProcess old = sheet.process();
    return sheet.with(old.withBulk(at(old.bulk(), bulk)).withProof(at(old.proof(), proof)));
  }

  private static List<Stage> at(List<Stage> stages, double celsius) {
    return stages.stream()
        .map(
            stage ->
                stage.time().isPresent() && stage.temperature().isEmpty()
                    ? new Stage(
                        stage.time(),
                        Optional.of(celsius(celsius)),
                        stage.folds(),
                        stage.covered(),
                        stage.humidity())
                    : stage)
        .toList();
  }

  private void dough() {
    workup.readings().stream()
        .filter(reading -> reading.name().equals("dough temperature"))
        .filter(reading -> reading.known() == Known.ASSUMED && reading.high() > reading.low())
        .findFirst()
        .ifPresent(
            reading ->
                found.add(
                    new Uncertain(
                        "temperature of the dough after mixing",
                        "Measure the dough after kneading",
                        "that",
                        "C",
                        reading.low(),
                        reading.value(),
                        reading.high(),
                        Uncertainties::mixed)));
  }

  private static BakeSheet mixed(BakeSheet sheet, double celsius) {
    BakeProcess old = sheet.process();
    BakeProcess.Mixing mixing = old.mixing();
    return sheet.with(
        old.withMixing(
            new BakeProcess.Mixing(
                mixing.method(),
                mixing.time(),
                mixing.speed(),
                mixing.rest(),
                mixing.fat(),
                Optional.of(celsius(celsius)))));
  }

  private void flour(Pantry pantry) {
    Optional<Reading> protein =
        workup.readings().stream()
            .filter(reading -> reading.name().equals("flour protein"))
            .filter(reading -> reading.known() == Known.ASSUMED && reading.high() > reading.low())
            .findFirst();
    Optional<FormulaLine> flour =
        protein.flatMap(any -> VagueLines.flourOfUnknownStrength(sheet, pantry));
    if (flour.isPresent()) {
      String where = flour.get().where();
      found.add(
          new Uncertain(
              "strength of the flour",
              "Read the protein off the flour bag",
              "that",
              "%",
              protein.get().low(),
              protein.get().value(),
              protein.get().high(),
              (altered, percent) ->
                  onLine(altered, where, line -> VagueLines.withProtein(line, percent))));
    }
  }

  private static Quantity celsius(double celsius) {
    return new Quantity("", Unit.CELSIUS, celsius, celsius, celsius);
  }
}
