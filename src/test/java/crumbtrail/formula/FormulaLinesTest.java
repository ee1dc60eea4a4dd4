package crumbtrail.formula;

import static crumbtrail.formula.Doughs.part;
import static crumbtrail.formula.Doughs.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What lines of every form come to, and what is said about the ones that are not plain. */
class FormulaLinesTest {

  @Test
  void weightWinsOverVolumeAndAgreesWithIt() {
    Formula formula = Doughs.of("3 1/2 cups (440 g) bread flour", "290 g water");
    assertThat(formula.flourGrams().value()).isEqualTo(440);
    assertThat(formula.flourGrams().vague()).isFalse();
    assertThat(formula.contradictions()).isEmpty();
  }

  @Test
  void aContradictionIsReported() {
    Formula formula = Doughs.of("3 1/2 cups (600 g) bread flour", "290 g water");
    assertThat(formula.flourGrams().value()).isEqualTo(600);
    assertThat(formula.contradictions())
        .singleElement()
        .satisfies(
            c -> {
              assertThat(c.where()).isEqualTo("formula[0]");
              assertThat(c.what()).contains("600 g").contains("the weight was used");
            });
  }

  @Test
  void anUnknownIngredientStaysByWeight() {
    Formula formula = Doughs.of("500 g bread flour", "300 g water", "50 g dilithium", "10 g salt");
    assertThat(formula.doughGrams().value()).isEqualTo(860);
    assertThat(formula.percentByIngredient().get("dilithium").value()).isEqualTo(10);
    assertThat(formula.notUnderstood())
        .singleElement()
        .satisfies(
            n -> {
              assertThat(n.written()).isEqualTo("50 g dilithium");
              assertThat(n.where()).isEqualTo("formula[2]");
              assertThat(n.uncertain()).contains("50 g");
            });
    Level water = formula.reading("total water").orElseThrow();
    assertThat(water.value()).isEqualTo(60);
    assertThat(water.high()).isCloseTo(70, within(0.01));
  }

  @Test
  void anUnknownIngredientWithoutWeightIsLeftOutAndSaid() {
    Formula formula = Doughs.of("500 g bread flour", "300 g water", "2 cups dilithium");
    assertThat(formula.doughGrams().value()).isEqualTo(800);
    assertThat(formula.notUnderstood()).hasSize(1);
  }

  @Test
  void bareNamesAreSaidToBeGuesses() {
    Formula formula = Doughs.of("500 g flour", "300 g water", "1 tsp salt", "2 packets yeast");
    assertThat(formula.assumptions())
        .anySatisfy(a -> assertThat(a).contains("flour").contains("all-purpose flour"))
        .anySatisfy(a -> assertThat(a).contains("active dry yeast"));
    // Two packets of 7 g at 0.825 as instant.
    assertThat(value(formula, "yeast")).isCloseTo(2 * 7 * 0.825 / 5, within(0.001));
    assertThat(value(formula, "salt")).isCloseTo(1.2, within(0.001));
  }

  @Test
  void saltToTasteLeavesTheSaltOpen() {
    Formula formula = Doughs.of("500 g bread flour", "300 g water", "salt to taste");
    assertThat(formula.reading("salt")).isEmpty();
    assertThat(formula.circumstances()).doesNotContain("no-salt-line");
    assertThat(formula.assumptions()).anyMatch(a -> a.contains("salt to taste"));
  }

  @Test
  void saltLeftOutIsNone() {
    Formula formula = Doughs.of("500 g bread flour", "300 g water", "5 g instant yeast");
    assertThat(value(formula, "salt")).isZero();
    assertThat(formula.circumstances()).contains("no-salt-line").doesNotContain("no-yeast-line");
  }

  @Test
  void flourForTheBenchAndButterForTheTinStayOut() {
    Formula formula =
        Doughs.of(
            "500 g bread flour",
            "300 g water",
            "30 g flour for dusting",
            "20 g butter, for the tin");
    assertThat(formula.flourGrams().value()).isEqualTo(500);
    assertThat(value(formula, "fat")).isZero();
  }

  @Test
  void flourWithExtraForTheBenchIsFlourOfTheDough() {
    Formula formula =
        Doughs.of(
            "500 g bread flour, plus extra for dusting", "30 g olive oil, plus more for the pan");
    assertThat(formula.flourGrams().value()).isEqualTo(500);
    assertThat(value(formula, "fat")).isCloseTo(6, within(1e-9));
  }

  @Test
  void twoThingsOnALineAreNotTakenForOne() {
    Formula formula = Doughs.of("500 g bread flour", "1 large egg + 1 yolk");
    assertThat(value(formula, "egg")).isCloseTo(10, within(1e-9));
    assertThat(formula.notUnderstood()).extracting(n -> n.where()).containsExactly("formula[1]");
  }

  @Test
  void percentagesAloneHaveNoWeight() {
    Formula formula = Doughs.of("76.5 % water", "2 % salt");
    assertThat(formula.scaleKnown()).isFalse();
    assertThat(value(formula, "hydration")).isCloseTo(76.5, within(1e-9));
    assertThat(value(formula, "salt")).isCloseTo(2, within(1e-9));
    assertThat(formula.reading("yeast")).as("not stated, so not known").isEmpty();
    assertThat(formula.reading("dough weight")).isEmpty();
    assertThat(formula.reading("water balance")).as("no flour is named").isEmpty();
  }

  @Test
  void hydrationStatedInARemark() {
    Formula formula =
        FormulaWorker.work(
            Doughs.sheet(List.of(), List.of("Hydration 75 %, 22 % levain, cold room")),
            Doughs.PANTRY);
    assertThat(value(formula, "hydration")).isCloseTo(75, within(0.01));
    assertThat(value(formula, "starter")).isCloseTo(22 / 1.11, within(0.01));
    assertThat(formula.circumstances()).doesNotContain("no-salt-line");
  }

  @Test
  void theHydrationOfAStarterIsNotThatOfTheDough() {
    Formula formula =
        FormulaWorker.work(
            Doughs.sheet(List.of(), List.of("starter at 100 % hydration"), "500 g bread flour"),
            Doughs.PANTRY);
    assertThat(formula.reading("hydration")).isEmpty();
  }

  /** By hand: 130 g at 50 % holds 86.67 g flour and 43.33 g water. */
  @Test
  void stiffStarterIsSplitAtItsStatedHydration() {
    Formula formula = Doughs.of("426 g bread flour", "150 g milk", "130 g levain (50% hydration)");
    assertThat(formula.flourGrams().value()).isCloseTo(426 + 86.667, within(0.01));
    assertThat(value(formula, "hydration"))
        .isCloseTo((150 + 43.333) / (426 + 86.667) * 100, within(0.01));
  }

  /** By hand: 200 g of rye levain at 100 % is 100 g of rye in 600 g of flour. */
  @Test
  void ryeInTheStarterCountsAsRye() {
    Formula formula = Doughs.of("500 g flour", "275 g water", "200 g rye levain (100% hydration)");
    assertThat(value(formula, "rye")).isCloseTo(100 / 6.0, within(0.01));
    assertThat(value(formula, "prefermented flour")).isCloseTo(100 / 6.0, within(0.01));
    assertThat(value(formula, "starter")).isCloseTo(200 / 6.0, within(0.01));
  }

  @Test
  void onlyWhatGoesIntoTheDoughCountsOfALargerLevain() {
    Formula formula =
        Doughs.with(
            List.of(part("levain", "50 g ripe starter", "100 g bread flour", "100 g water")),
            "450 g bread flour",
            "300 g water",
            "100 g levain",
            "10 g salt");
    assertThat(formula.flourGrams().value()).isCloseTo(500, within(0.01));
    assertThat(value(formula, "hydration")).isCloseTo(70, within(0.01));
    assertThat(value(formula, "starter")).isCloseTo(20, within(0.01));
    assertThat(formula.doughGrams().value()).isCloseTo(860, within(0.01));
    assertThat(formula.assumptions()).anyMatch(a -> a.contains("levain"));
  }

  @Test
  void aStarterLineBesideAPoolishIsItsOwn() {
    Formula formula =
        Doughs.with(
            List.of(part("poolish", "100 g bread flour", "100 g water", "0.1 g instant yeast")),
            "350 g bread flour",
            "200 g water",
            "100 g sourdough starter (100 % hydration)");
    assertThat(formula.flourGrams().value()).isCloseTo(500, within(0.01));
    assertThat(value(formula, "prefermented flour")).isCloseTo(30, within(0.01));
  }

  @Test
  void aLevainBuiltInTwoStagesCountsOnce() {
    Formula formula =
        Doughs.with(
            List.of(
                part("first build", "20 g starter (100 % hydration)", "40 g flour", "40 g water"),
                part("levain", "100 g first build", "50 g flour", "50 g water")),
            "400 g bread flour",
            "250 g water",
            "200 g levain");
    assertThat(formula.flourGrams().value()).isCloseTo(500, within(0.01));
    assertThat(formula.doughGrams().value()).isCloseTo(850, within(0.01));
    assertThat(formula.parts()).hasSize(1);
  }

  @Test
  void soakersAndScaldsAreFlourButNotFermented() {
    Formula formula =
        Doughs.with(
            List.of(
                part("tangzhong", "25 g bread flour", "125 g water"),
                part("soaker", "50 g rolled oats", "50 g water")),
            "475 g bread flour",
            "200 g milk");
    assertThat(formula.flourGrams().value()).isEqualTo(500);
    assertThat(value(formula, "prefermented flour")).isZero();
    assertThat(value(formula, "hydration")).isCloseTo(75, within(0.01));
    assertThat(formula.circumstances()).contains("scald-used", "soaker-used");
    assertThat(formula.parts()).extracting(Formula.Part::kind).containsExactly("scald", "soaker");
  }

  @Test
  void percentagesOfAPartAreItsOwn() {
    Formula formula =
        Doughs.with(
            List.of(part("biga", "100 % bread flour", "55 % water", "0.2 % instant yeast")),
            "300 g bread flour",
            "230 g water",
            "310.4 g biga");
    assertThat(formula.flourGrams().value()).isCloseTo(500, within(0.01));
    assertThat(value(formula, "hydration")).isCloseTo(68, within(0.01));
  }

  @Test
  void statedProteinWins() {
    Formula formula = Doughs.of("500 g bread flour, 13.5 % protein", "320 g water");
    Level protein = formula.reading("flour protein").orElseThrow();
    assertThat(protein.value()).isCloseTo(13.5, within(1e-9));
    assertThat(protein.vague()).isFalse();
  }

  @Test
  void saltSubstituteAsAShareOfTheSalt() {
    Formula formula =
        Doughs.of("500 g bread flour", "300 g water", "7.5 g salt", "2.5 g potassium chloride");
    assertThat(value(formula, "salt")).isCloseTo(1.5, within(0.001));
    assertThat(value(formula, "salt substitute")).isCloseTo(25, within(0.1));
    assertThat(formula.circumstances()).contains("salt-substitute-used");
  }

  @Test
  void spoonsCupsAndEggsAreCircumstances() {
    Formula formula =
        Doughs.of(
            "3 cups flour", "1 cup water", "1 tbsp coarse salt", "2 eggs", "20 g fresh yeast");
    assertThat(formula.circumstances())
        .contains(
            "flour-by-volume",
            "salt-by-volume",
            "coarse-salt-by-volume",
            "eggs-by-count",
            "fresh-yeast");
  }

  @Test
  void howACupWasFilledNarrowsItsWeight() {
    double plain = Doughs.of("4 cups bread flour").flourGrams().value();
    assertThat(Doughs.of("4 cups bread flour, spooned").flourGrams().high()).isEqualTo(plain);
    assertThat(Doughs.of("4 cups bread flour, scooped").flourGrams().low()).isEqualTo(plain);
  }

  @Test
  void starchIsFlourOnlyWithoutGluten() {
    Formula free =
        Doughs.of("200 g rice flour", "200 g potato starch", "10 g psyllium", "400 g water");
    assertThat(free.flourGrams().value()).isEqualTo(400);
    assertThat(free.reading("water balance")).isEmpty();
    Formula wheat = Doughs.of("400 g bread flour", "40 g potato starch", "260 g water");
    assertThat(wheat.flourGrams().value()).isEqualTo(400);
  }

  @Test
  void anEmptySheetHasNoReadings() {
    Formula formula = Doughs.of();
    assertThat(formula.readings()).isEmpty();
    assertThat(formula.flourGrams().value()).isZero();
    assertThat(formula.circumstances()).isEmpty();
  }

  @Test
  void saltAloneHasNoPercentage() {
    Formula formula = Doughs.of("1 1/2 tbsp kosher salt");
    assertThat(formula.readings()).isEmpty();
    assertThat(formula.circumstances()).contains("coarse-salt-by-volume");
  }
}
