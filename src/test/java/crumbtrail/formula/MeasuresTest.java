package crumbtrail.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.pantry.Ingredient;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Spoons, cups and pieces, by the weights that the pantry cites. */
class MeasuresTest {

  /** US sizes: a large egg is 50 g, medium 44, extra large 56 (usda-sr26, reinhart-2001). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // A size that is not told may be the one below or the one above.
        "2 eggs | 88 | 100 | 112",
        // A size that is told is one of 47 g or 50 g: six percent.
        "2 large eggs | 94 | 100 | 106",
        "2 medium eggs | 82.72 | 88 | 93.28",
        "1 extra large egg | 52.64 | 56 | 59.36",
        "1 xl egg | 52.64 | 56 | 59.36",
        "3 small eggs | 107.16 | 114 | 120.84",
        "1 jumbo egg | 59.22 | 63 | 66.78",
        "2 to 3 eggs | 88 | 125 | 168",
        // A cake of fresh yeast is 17 g, a cube 42 (reinhart-2001, hamelman-2004).
        "1 cake fresh yeast | 17 | 17 | 17",
        "1 cube fresh yeast | 35.7 | 42 | 48.3",
        "2 packets instant yeast | 14 | 14 | 14",
        // A pinch is what two fingers hold: half or twice as much.
        "1 pinch coarse salt | 0.125 | 0.25 | 0.5",
        "2 cloves garlic | 5.1 | 6 | 6.9",
        "2 onions | 187 | 220 | 253",
        // One cup of bread flour is 137 g, spooned 120, scooped 160 (beranbaum-cups).
        "2 cups bread flour | 240 | 274 | 320",
        "1 tbsp coarse salt | 8.375 | 12 | 15",
        "1 tsp coarse salt | 2.792 | 4 | 5",
        "1 cup water | 232 | 236.6 | 242",
        // Nobody published how spoons of it differ: five percent.
        "1 tbsp fresh yeast | 9.975 | 10.5 | 11.025",
      })
  void a_measure_weighs_what_is_published(String line, double low, double grams, double high) {
    Level weight =
        LaidOut.of(
                Doughs.sheet(java.util.List.of(), java.util.List.of(), "500 g flour", line),
                Doughs.of("500 g flour", line),
                Doughs.PANTRY)
            .get(1)
            .grams()
            .orElseThrow();

    assertThat(weight.value()).isCloseTo(grams, within(0.001 * grams));
    assertThat(weight.low()).isCloseTo(low, within(0.001 * grams));
    assertThat(weight.high()).isCloseTo(high, within(0.001 * grams));
  }

  /** Twice the spoons weigh twice as much, and three teaspoons are a tablespoon. */
  @Test
  void spoons_add_up() {
    double one = grams("1 tbsp coarse salt");
    assertThat(grams("2 tbsp coarse salt")).isCloseTo(2 * one, within(1e-9));
    assertThat(grams("3 tsp coarse salt")).isCloseTo(one, within(1e-9));
    assertThat(grams("1/2 cup water")).isCloseTo(grams("1 cup water") / 2, within(1e-9));
  }

  /** What fills less than a quarter of a cup is told by the spoon, more by the cup. */
  @ParameterizedTest
  @CsvSource({
    "coarse-salt, 4, 4.93",
    "coarse-salt, 12, 14.79",
    "coarse-salt, 192, 236.6",
    "water, 473.2, 473.2",
    "bread-flour, 137, 236.6",
    "bread-flour, 8.6, 14.79"
  })
  void what_so_many_grams_fill(String key, double grams, double millilitres) {
    Ingredient known =
        Doughs.PANTRY.all().stream().filter(one -> one.key().equals(key)).findFirst().orElseThrow();

    assertThat(Measures.millilitres(known, grams).orElseThrow())
        .isCloseTo(millilitres, within(0.01 * millilitres));
  }

  @Test
  void what_nobody_measures_by_the_spoon_fills_nothing_known() {
    Ingredient flour = Doughs.PANTRY.lookup("malt extract").orElseThrow();
    Ingredient bare =
        new Ingredient(
            "bare",
            flour.names(),
            flour.assumedFor(),
            flour.kind(),
            flour.per100(),
            java.util.Map.of(),
            0,
            0,
            java.util.List.of(),
            "common practice");
    assertThat(Measures.millilitres(bare, 100)).isEmpty();
  }

  private static double grams(String line) {
    return Doughs.of("500 g bread flour", line).doughGrams().value() - 500;
  }
}
