package crumbtrail.formula;

import static crumbtrail.formula.Doughs.part;
import static crumbtrail.formula.Doughs.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.pantry.Composition;
import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Pantry;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked examples in print, each to the rounding of its source. */
class PublishedFormulasTest {

  /** Gisslen, Professional Baking: 20 % sugar on 5000 g flour is 1000 g. */
  @Test
  void sugarOfATextbookExample() {
    Formula formula = Doughs.of("5000 g bread flour", "20 % sugar");
    assertThat(formula.percentByIngredient().get("granulated sugar").value())
        .isCloseTo(20, within(1e-9));
    assertThat(formula.doughGrams().value()).isCloseTo(6000, within(1e-9));
  }

  /** The Sourdough Framework, table of a straight dough; starter not split: 60, 10 and 2 %. */
  @Test
  void sourdoughWithItsStarterSplit() {
    Formula formula =
        Doughs.of(
            "1000 g bread flour", "600 g water", "100 g starter (100 % hydration)", "20 g salt");
    // Split, as worked out from the same weights: (600 + 50) / (1000 + 50) and 20 / 1050.
    assertThat(value(formula, "hydration")).isCloseTo(61.9, within(0.05));
    assertThat(value(formula, "salt")).isCloseTo(1.905, within(0.0005));
    assertThat(formula.doughGrams().value()).isEqualTo(1720);
    assertThat(value(formula, "prefermented flour")).isCloseTo(50 / 10.5, within(0.01));
    assertThat(value(formula, "starter")).isCloseTo(100 / 10.5, within(0.01));
  }

  /** Wild Yeast 2008, poolish baguette: overall formula from the weights, 2340 g of dough. */
  @Test
  void poolishBaguetteWithThePoolishNamedTwice() {
    Formula formula =
        Doughs.with(
            List.of(part("poolish", "468 g bread flour", "468 g water", "0.3 g instant yeast")),
            "900 g bread flour",
            "468 g water",
            "9 g instant yeast",
            "27 g salt",
            "936 g poolish");
    assertThat(formula.flourGrams().value()).isCloseTo(1368, within(0.5));
    assertThat(formula.percentByKind().get("water").value()).isCloseTo(68.42, within(0.005));
    assertThat(value(formula, "hydration")).isCloseTo(68.42, within(0.005));
    assertThat(value(formula, "salt")).isCloseTo(1.97, within(0.005));
    assertThat(value(formula, "yeast")).isCloseTo(0.68, within(0.005));
    assertThat(value(formula, "prefermented flour")).isCloseTo(34.2, within(0.05));
    // Printed without the 0.3 g of yeast in the poolish.
    assertThat(formula.doughGrams().value()).isCloseTo(2340, within(0.5));
    Formula.Part poolish = formula.parts().get(0);
    assertThat(poolish.percentByIngredient().get("instant yeast").value())
        .isCloseTo(0.06, within(0.005));
    assertThat(poolish.hydration().orElseThrow().value()).isCloseTo(100, within(1e-9));
    assertThat(formula.contradictions()).isEmpty();
  }

  /** The same without the pointing line: the poolish counts once either way. */
  @Test
  void poolishBaguetteWithThePoolishNamedOnce() {
    Formula formula =
        Doughs.with(
            List.of(part("poolish", "468 g bread flour", "468 g water", "0.3 g instant yeast")),
            "900 g bread flour",
            "468 g water",
            "9 g instant yeast",
            "27 g salt");
    assertThat(value(formula, "hydration")).isCloseTo(68.42, within(0.005));
    assertThat(formula.doughGrams().value()).isCloseTo(2340, within(0.5));
  }

  /** Bake magazine 10807, French bread with poolish: 67, 2, 1.1 and 170.1 %, 17.010 kg. */
  @Test
  void frenchBreadWithPoolish() {
    Formula formula =
        Doughs.with(
            List.of(
                part("Poolish", "3.300 kg bread flour", "3.300 kg water", "0.007 kg fresh yeast")),
            "6.700 kg bread flour",
            "3.400 kg water",
            "0.200 kg salt",
            "0.103 kg fresh yeast",
            "6.607 kg poolish");
    assertThat(formula.flourGrams().value()).isCloseTo(10000, within(1e-6));
    assertThat(formula.percentByKind().get("water").value()).isCloseTo(67, within(0.005));
    assertThat(formula.percentByKind().get("salt").value()).isCloseTo(2, within(0.005));
    assertThat(formula.percentByKind().get("yeast").value()).isCloseTo(1.1, within(0.005));
    assertThat(formula.totalPercent()).isCloseTo(170.1, within(0.005));
    assertThat(formula.doughGrams().value()).isCloseTo(17010, within(0.5));
    // The source prints "20 %" yeast for the poolish; 0.007 on 3.3 is 0.21 %.
    assertThat(formula.parts().get(0).percentByIngredient().get("fresh yeast").value())
        .isCloseTo(0.21, within(0.005));
  }

  /** Bake magazine 10546, honey buns: the 18 % of water holds the water of the honey (18.6 %). */
  @Test
  void honeyBunsWithTheWaterOfTheHoney() {
    Formula formula =
        FormulaWorker.work(
            Doughs.sheet(
                List.of(
                    part(
                        "sponge",
                        "70 g bread flour",
                        "2 g fresh yeast",
                        "0.5 g yeast food",
                        "42 g water")),
                List.of(),
                "30 g bread flour",
                "7 g granulated sugar",
                "3 g whole egg powder",
                "3 g nonfat dry milk",
                "2 g salt",
                "0.125 g calcium propionate",
                "0.25 g emulsifier",
                "10 g honey",
                "5 g unsalted butter",
                "16.14 g water"),
            withHoneyWater(18.6));
    assertThat(formula.totalPercent()).isCloseTo(191.0, within(0.05));
    assertThat(value(formula, "total water")).isCloseTo(60.0, within(0.05));
    // With the water of the butter, 15.9 to 17.9 %: 60.8 to 60.9.
    assertThat(formula.allWater().orElseThrow().value()).isBetween(60.75, 60.95);
    assertThat(formula.percentByKind().get("water").value() / formula.totalPercent() * 100)
        .as("printed 21.99 for the sponge and 8.45 for the dough")
        .isCloseTo(21.99 + 8.45, within(0.01));
  }

  /** Class notes 2009, croissant dough: 171.7 %, scaled to 15 000 g; factor 87.36. */
  @Test
  void croissantDoughScaledByTotalPercent() {
    Formula formula =
        Doughs.of(
            "100 % bread flour",
            "38 % water",
            "23 % milk",
            "3 % sugar",
            "2 % salt",
            "1.2 % instant yeast",
            "0.5 % malt",
            "4 % butter");
    assertThat(formula.scaleKnown()).isFalse();
    assertThat(formula.totalPercent()).isCloseTo(171.7, within(0.005));
    var grams = formula.scaledTo(15_000);
    assertThat(grams.get("bread flour")).isCloseTo(8736, within(0.5));
    assertThat(grams.get("water")).isCloseTo(3319.7, within(0.2));
    assertThat(grams.get("whole milk")).isCloseTo(2009.3, within(0.1));
    assertThat(grams.get("granulated sugar")).isCloseTo(262, within(0.5));
    assertThat(grams.get("table salt")).isCloseTo(174.7, within(0.05));
    assertThat(grams.get("instant yeast")).isCloseTo(104.8, within(0.05));
    assertThat(grams.get("unsalted butter")).isCloseTo(349.4, within(0.1));
  }

  /** Manual for Army Bakers 1916, sponge and dough; US gallon of water 8.34 lb. */
  @Test
  void armyBreadOf1916() {
    Formula formula =
        Doughs.with(
            List.of(part("sponge", "50 lb bread flour", "33.36 lb water", "10 oz fresh yeast")),
            "50 lb bread flour",
            "1.25 lb sugar",
            "1.25 lb salt",
            "1.25 lb lard",
            "22.935 lb water");
    assertThat(value(formula, "hydration")).isCloseTo(56.3, within(0.05));
    assertThat(formula.parts().get(0).hydration().orElseThrow().value())
        .isCloseTo(66.8, within(0.1));
    assertThat(value(formula, "prefermented flour")).isCloseTo(50, within(0.05));
    assertThat(formula.percentByKind().get("yeast").value()).isCloseTo(0.625, within(0.0005));
    assertThat(value(formula, "salt")).isCloseTo(1.25, within(0.005));
  }

  /** Grain Craft, straight dough sheet; percentages worked out from its weights. */
  @Test
  void straightDoughOfAMillSheet() {
    Formula formula =
        Doughs.of(
            "10 lb bread flour",
            "6 oz sugar",
            "5 oz shortening",
            "4 oz nonfat dry milk",
            "3 oz salt",
            "1.5 oz instant yeast",
            "6.25 lb water");
    assertThat(value(formula, "sugar")).isCloseTo(3.75, within(0.005));
    assertThat(value(formula, "fat")).isCloseTo(3.125 + 0.02, within(0.01));
    assertThat(value(formula, "milk solids")).isCloseTo(2.5 * 0.96, within(0.01));
    assertThat(formula.percentByKind().get("dairy").value()).isCloseTo(2.5, within(0.005));
    assertThat(value(formula, "salt")).isCloseTo(1.875, within(0.0005));
    assertThat(value(formula, "yeast")).isCloseTo(0.94, within(0.005));
    assertThat(value(formula, "hydration")).isCloseTo(62.5, within(0.005));
    // The same sheet with 4.5 oz of fresh yeast instead: 2.81 %, ratio 3.0.
    Formula fresh = Doughs.of("10 lb bread flour", "6.5 lb water", "4.5 oz fresh yeast");
    assertThat(fresh.percentByKind().get("yeast").value()).isCloseTo(2.81, within(0.005));
    assertThat(value(fresh, "yeast")).isCloseTo(0.94, within(0.02));
    assertThat(value(fresh, "hydration")).isCloseTo(65, within(0.005));
  }

  /** Western Wheat Quality Laboratory, test loaf on 100 g of flour. */
  @Test
  void standardTestLoaf() {
    Formula formula =
        Doughs.of(
            "100 g bread flour",
            "1.5 g salt",
            "6 g sugar",
            "0.3 g malt extract powder",
            "1.8 g instant yeast",
            "4 g nonfat dry milk",
            "3 g shortening",
            "62 g water");
    assertThat(value(formula, "salt")).isCloseTo(1.5, within(0.005));
    assertThat(formula.percentByKind().get("malt").value()).isCloseTo(0.3, within(0.005));
    assertThat(value(formula, "yeast")).isCloseTo(1.8, within(0.005));
    assertThat(formula.percentByKind().get("sweetener").value()).isCloseTo(6, within(0.005));
  }

  /** Gisslen 2008, brioche: 252 %; 68.3 % of all water, 55.7 % without that of the butter. */
  @Test
  void brioche() {
    Formula formula =
        Doughs.of(
            "60 g milk",
            "15 g fresh yeast",
            "60 g bread flour",
            "240 g bread flour",
            "150 g eggs",
            "15 g sugar",
            "6 g salt",
            "210 g unsalted butter");
    assertThat(formula.totalPercent()).isCloseTo(252, within(0.005));
    assertThat(formula.allWater().orElseThrow().value()).isCloseTo(68.3, within(0.05));
    assertThat(value(formula, "total water")).isCloseTo(55.7, within(0.05));
    assertThat(value(formula, "egg")).isCloseTo(50, within(0.005));
    assertThat(value(formula, "milk")).isCloseTo(20, within(0.005));
    assertThat(value(formula, "hydration")).isCloseTo(20, within(0.005));
    assertThat(formula.percentByKind().get("fat").value()).isCloseTo(70, within(0.005));
  }

  /** Reinhart, The Bread Baker's Apprentice, middle-class brioche: 236.2 %. */
  @Test
  void briocheWithSponge() {
    Formula formula =
        Doughs.with(
            List.of(part("sponge", "14.1 g bread flour", "1.4 g instant yeast", "25 g milk")),
            "51.6 g eggs",
            "85.9 g bread flour",
            "6.3 g sugar",
            "1.9 g salt",
            "50 g butter");
    assertThat(formula.doughGrams().value()).isCloseTo(236.2, within(0.05));
    assertThat(value(formula, "prefermented flour")).isCloseTo(14.1, within(0.05));
  }

  /** Hamelman 2004, rye at 65 %: 13 lb rye, 7 lb bread flour, 14.8 lb water, 0.36 lb salt. */
  @Test
  void ryeOf65Percent() {
    Formula formula =
        Doughs.of("13 lb medium rye flour", "7 lb bread flour", "14.8 lb water", "0.36 lb salt");
    assertThat(value(formula, "rye")).isCloseTo(65, within(0.5));
    assertThat(value(formula, "hydration")).isCloseTo(74, within(0.5));
    assertThat(value(formula, "salt")).isCloseTo(1.8, within(0.05));
  }

  /** Mass balance of gluten of 75 % in 500 g of flour: 12.7 to 14 % (knowledge checks, worked). */
  @Test
  void glutenBlends() {
    assertThat(ProteinBlend.toAdd(500, 12.7, 14, 75)).isCloseTo(10.66, within(0.005));
    assertThat(ProteinBlend.toSwap(500, 12.7, 14, 75)).isCloseTo(10.43, within(0.005));
    assertThat(ProteinBlend.toAdd(500, 10.5, 13, 75.16)).isCloseTo(20.1, within(0.05));
    assertThat(ProteinBlend.toSwap(500, 10.5, 13, 75.16)).isCloseTo(19.3, within(0.05));
    assertThat(ProteinBlend.toAdd(1000, 11.5, 13, 75)).isCloseTo(24.2, within(0.05));
    assertThat(ProteinBlend.toSwap(1000, 11.5, 13, 75)).isCloseTo(23.6, within(0.05));
  }

  /** The same through the formula: 20.1 g of gluten in 500 g of 10.5 % makes 13 %. */
  @Test
  void glutenInAFormula() {
    Formula formula =
        Doughs.of("500 g flour, 10.5 % protein", "20.1 g vital wheat gluten", "310 g water");
    assertThat(formula.flourAloneProtein().orElseThrow().value()).isCloseTo(10.5, within(1e-9));
    assertThat(value(formula, "flour protein")).isCloseTo(13, within(0.005));
    assertThat(value(formula, "gluten added")).isCloseTo(4.02, within(0.005));
  }

  /** USDA: one large egg brings 38.1 g of water. */
  @Test
  void oneLargeEgg() {
    Formula formula = Doughs.of("100 g bread flour", "1 large egg");
    assertThat(value(formula, "total water")).isCloseTo(38.1, within(0.05));
    assertThat(value(formula, "egg")).isCloseTo(50, within(0.005));
  }

  /** USDA sodium: salted butter brings 1.63 g of salt in 100 g. */
  @Test
  void saltOfSaltedButter() {
    Formula formula = Doughs.of("100 g bread flour", "60 g water", "100 g salted butter");
    assertThat(value(formula, "salt")).isCloseTo(1.63, within(0.005));
  }

  /**
   * Cup spread in print: 4 cups of flour are 456 g (sifted) to 640 g (scooped), so that 325 g of
   * water makes 71 down to 51 %.
   */
  @Test
  void cupsOfFlourLeaveTheHydrationOpen() {
    Formula formula = Doughs.of("4 cups all-purpose flour", "325 g water");
    assertThat(formula.flourGrams().low()).isCloseTo(456, within(0.5));
    assertThat(formula.flourGrams().high()).isCloseTo(640, within(0.5));
    Level hydration = formula.reading("hydration").orElseThrow();
    assertThat(hydration.low()).isCloseTo(51, within(0.5));
    assertThat(hydration.high()).isCloseTo(71, within(0.5));
    assertThat(hydration.vague()).isTrue();
  }

  private static Pantry withHoneyWater(double water) {
    List<Ingredient> all = new ArrayList<>();
    for (Ingredient i : Doughs.PANTRY.all()) {
      all.add(
          i.key().equals("honey")
              ? new Ingredient(
                  i.key(),
                  i.names(),
                  i.assumedFor(),
                  i.kind(),
                  new Composition(water, 0, 100 - water, 0, 0, 0),
                  i.measures(),
                  0,
                  0,
                  i.flags(),
                  "bakemag-buns")
              : i);
    }
    return Pantry.of(all);
  }
}
