package crumbtrail.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Whatever is in the bowl: nothing is lost, nothing counted twice, and size does not matter. */
class MassBalanceTest {
  private static final List<String> NAMES =
      List.of(
          "bread flour",
          "whole wheat flour",
          "rye flour",
          "water",
          "milk",
          "eggs",
          "honey",
          "butter",
          "salt",
          "instant yeast",
          "fresh yeast",
          "sourdough starter (80 % hydration)",
          "old dough",
          "raisins",
          "potato flakes",
          "dilithium");

  record Amount(String name, double grams) {}

  @Provide
  Arbitrary<List<Amount>> bowls() {
    Arbitrary<Amount> one =
        Combinators.combine(
                Arbitraries.of(NAMES), Arbitraries.doubles().between(0.5, 900).ofScale(1))
            .as(Amount::new);
    return one.list().ofMinSize(1).ofMaxSize(8);
  }

  private static Formula formula(List<Amount> bowl, double factor) {
    List<String> lines = new ArrayList<>();
    lines.add(line(new Amount("bread flour", 500), factor));
    bowl.forEach(amount -> lines.add(line(amount, factor)));
    return Doughs.of(lines.toArray(String[]::new));
  }

  private static String line(Amount amount, double factor) {
    return String.format(Locale.ROOT, "%.4f g %s", amount.grams * factor, amount.name);
  }

  @Property(tries = 150)
  void theDoughIsTheSumOfItsParts(@ForAll("bowls") List<Amount> bowl) {
    Formula formula = formula(bowl, 1);
    double sum = 500 + bowl.stream().mapToDouble(Amount::grams).sum();
    assertThat(formula.doughGrams().value()).isCloseTo(sum, within(1e-6 * sum));
    double percents =
        formula.percentByIngredient().values().stream().mapToDouble(Level::value).sum();
    assertThat(percents).isCloseTo(formula.totalPercent(), within(1e-6 * percents));
    double kinds = formula.percentByKind().values().stream().mapToDouble(Level::value).sum();
    assertThat(kinds).isCloseTo(formula.totalPercent(), within(1e-6 * kinds));
    assertThat(formula.percentByKind().get("flour").value()).isCloseTo(100, within(1e-6));
  }

  @Property(tries = 150)
  void aDoughTwiceTheSizeIsTheSameDough(
      @ForAll("bowls") List<Amount> bowl, @ForAll @DoubleRange(min = 0.2, max = 20) double factor) {
    Formula one = formula(bowl, 1);
    Formula other = formula(bowl, factor);
    assertThat(other.readings().keySet()).isEqualTo(one.readings().keySet());
    one.readings()
        .forEach(
            (name, level) -> {
              if (!name.equals("dough weight")) {
                assertThat(other.readings().get(name).value())
                    .as(name)
                    .isCloseTo(level.value(), within(0.01 + 0.001 * Math.abs(level.value())));
              }
            });
  }

  @Property(tries = 150)
  void theOrderOfLinesDoesNotMatter(@ForAll("bowls") List<Amount> bowl) {
    List<Amount> turned = new ArrayList<>(bowl);
    java.util.Collections.reverse(turned);
    Formula one = formula(bowl, 1);
    Formula other = formula(turned, 1);
    one.readings()
        .forEach(
            (name, level) ->
                assertThat(other.readings().get(name).value())
                    .as(name)
                    .isCloseTo(level.value(), within(1e-6 + 1e-9 * Math.abs(level.value()))));
  }

  @Property(tries = 150)
  void waterOfADoughIsNeverMoreThanTheDough(@ForAll("bowls") List<Amount> bowl) {
    Formula formula = formula(bowl, 1);
    formula
        .allWater()
        .ifPresent(
            water -> assertThat(water.value()).isLessThan(formula.totalPercent() - 100 + 1e-6));
    assertThat(formula.readings().values())
        .allSatisfy(level -> assertThat(level.value()).isBetween(level.low(), level.high()));
  }
}
