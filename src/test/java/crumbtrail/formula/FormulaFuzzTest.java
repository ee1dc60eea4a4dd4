package crumbtrail.formula;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.quantity.Quantity;
import crumbtrail.quantity.Unit;
import crumbtrail.sheet.BakeSheet.Preferment;
import crumbtrail.sheet.FormulaLine;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** No sheet makes the worker fail, whatever its units, amounts and loops of parts. */
class FormulaFuzzTest {
  private static final List<String> NAMES =
      List.of(
          "bread flour",
          "water",
          "levain",
          "poolish",
          "starter",
          "salt",
          "eggs",
          "hydration",
          "dilithium",
          "",
          "soaker",
          "rice flour",
          "potato starch",
          "first",
          "butter",
          "honey");

  @Provide
  Arbitrary<FormulaLine> lines() {
    Arbitrary<Unit> units = Arbitraries.of(Unit.class);
    Arbitrary<Double> amounts = Arbitraries.of(0.0, 1e-9, 0.5, 1.0, 65.0, 100.0, 500.0, 1e9);
    Arbitrary<OptionalDouble> hydrations =
        Arbitraries.of(
            OptionalDouble.empty(),
            OptionalDouble.of(0),
            OptionalDouble.of(100),
            OptionalDouble.of(500));
    return Combinators.combine(Arbitraries.of(NAMES), units, amounts, hydrations)
        .as(
            (name, unit, amount, hydration) ->
                new FormulaLine(
                    "formula[0]",
                    name,
                    name,
                    amount == 0.5
                        ? Optional.empty()
                        : Optional.of(new Quantity("", unit, amount, amount, amount)),
                    Optional.empty(),
                    "",
                    List.of(),
                    OptionalDouble.empty(),
                    hydration));
  }

  @Provide
  Arbitrary<Preferment> parts() {
    return Combinators.combine(
            Arbitraries.of("levain", "poolish", "soaker", "first", ""), lines().list().ofMaxSize(4))
        .as((name, lines) -> new Preferment(name, lines, List.of()));
  }

  @Provide
  Arbitrary<List<FormulaLine>> doughs() {
    return lines().list().ofMaxSize(6);
  }

  @Provide
  Arbitrary<List<Preferment>> partLists() {
    return parts().list().ofMaxSize(3);
  }

  @Property(tries = 1000)
  void nothingMakesItFail(
      @ForAll("doughs") List<FormulaLine> dough, @ForAll("partLists") List<Preferment> parts) {
    Formula formula = FormulaWorker.work(Doughs.sheetOf(parts, List.of(), dough), Doughs.PANTRY);
    assertThat(formula.readings().values())
        .allSatisfy(
            level -> {
              assertThat(level.value()).isFinite();
              assertThat(level.low()).isFinite();
              assertThat(level.high()).isFinite();
            });
    assertThat(formula.doughGrams().value()).isFinite();
  }
}
