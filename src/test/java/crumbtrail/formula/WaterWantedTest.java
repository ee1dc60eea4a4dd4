package crumbtrail.formula;

import static crumbtrail.formula.Doughs.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What each good adds to the water that a dough wants, as the sources of the balance tell it. */
class WaterWantedTest {
  private static final String FLOUR = "500 g bread flour, 12 % protein";

  private static double balance(String... more) {
    List<String> lines = new java.util.ArrayList<>(List.of(FLOUR, "310 g water"));
    lines.addAll(List.of(more));
    return value(Doughs.of(lines.toArray(String[]::new)), "water balance");
  }

  /** Middle of the 60 to 65 of white tin bread (grain-craft): no more, no less. */
  @Test
  void a_white_dough_of_62_percent_is_in_balance() {
    assertThat(balance()).isCloseTo(0, within(1e-9));
    assertThat(value(Doughs.of(FLOUR, "335 g water"), "water balance")).isCloseTo(5, within(1e-9));
  }

  /** Points of water to 1 % of each on the flour, above or below what it brings itself. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // Dry gluten takes 1.5 times its weight (cauvain-young).
        "10 g vital wheat gluten | -3",
        // Up to 7 % sugar and 4 % fat nothing changes; above, the dough is softer.
        "35 g sugar | 0",
        "85 g sugar | 6",
        "20 g lard | 0",
        "70 g lard | 1.5",
        // Three times their weight (from memory of the packet).
        "10 g potato flakes | -6",
        // Salt and yeast take none.
        "10 g fine salt | 0",
        "5 g instant yeast | 0",
      })
  void each_good_takes_its_own(String line, double points) {
    assertThat(balance(line)).isCloseTo(points, within(0.15));
  }

  /** Middle of 5 to 10 points, common practice, for the whole of the flour. */
  @Test
  void whole_grain_and_rye_are_thirstier_by_their_share() {
    for (String flour : List.of("whole wheat flour", "medium rye flour")) {
      double half =
          value(
              Doughs.of(
                  "250 g bread flour, 12 % protein",
                  "250 g " + flour + ", 12 % protein", "310 g water"),
              "water balance");
      assertThat(half).as(flour).isCloseTo(-3.75, within(1e-6));
    }
  }

  /** Milk solids take their own weight (0.58 to 1.20 measured, dairy-1951). */
  @Test
  void dry_milk_takes_its_own_weight() {
    double points = balance("10 g nonfat dry milk");
    assertThat(points).isBetween(-2.4, -1.16);
  }

  @Test
  void the_figures_stand_from_8_to_18_percent_protein() {
    assertThat(Absorption.white(8).covered()).isTrue();
    assertThat(Absorption.white(18).covered()).isTrue();
    assertThat(Absorption.white(7.99).covered()).isFalse();
    assertThat(Absorption.white(18.01).covered()).isFalse();
  }

  /** Damaged starch takes 2 to 3 times the 0.4 of sound starch (asbe): 0.42 points a per cent. */
  @Test
  void damaged_starch_above_the_usual_takes_more_water_and_below_it_less() {
    assertThat(Absorption.forDamagedStarch(9)).isZero();
    assertThat(Absorption.forDamagedStarch(10)).isCloseTo(0.7 * 0.4 * 1.5, within(1e-9));
    assertThat(Absorption.forDamagedStarch(8)).isCloseTo(-0.42, within(1e-9));
  }

  /** Bands as published: 150, 220, 300, 400 s are their ends (baking dictionary). */
  @Test
  void bands_of_falling_numbers_meet_at_the_published_ends() {
    assertThat(Enzymes.activity(149)).isEqualTo(Enzymes.Activity.EXCESSIVE);
    assertThat(Enzymes.activity(150)).isEqualTo(Enzymes.Activity.HIGH);
    assertThat(Enzymes.activity(220)).isEqualTo(Enzymes.Activity.NORMAL);
    assertThat(Enzymes.activity(300)).isEqualTo(Enzymes.Activity.NORMAL);
    assertThat(Enzymes.activity(301)).isEqualTo(Enzymes.Activity.LOW);
    assertThat(Enzymes.activity(400)).isEqualTo(Enzymes.Activity.LOW);
    assertThat(Enzymes.covers(Enzymes.LOWEST)).isTrue();
    assertThat(Enzymes.covers(Enzymes.HIGHEST)).isTrue();
    assertThat(Enzymes.covers(501)).isFalse();
  }

  /** Two parts more gluten want three parts more water (lehmann-absorption). */
  @Test
  void gluten_brings_half_as_much_again_in_water() {
    GlutenNeed need = GlutenNeed.of(1000, 10, 12, 75);
    // By hand: 1000 (12 - 10) / (75 - 12) = 31.7 g; in place of flour 1000 x 2 / 65 = 30.8 g.
    assertThat(need.addGrams()).isCloseTo(31.746, within(0.001));
    assertThat(need.addWaterGrams()).isCloseTo(47.619, within(0.001));
    assertThat(need.percentOfFlour()).isCloseTo(3.1746, within(0.0001));
    assertThat(need.swapGrams()).isCloseTo(30.769, within(0.001));
    // The water of the flour that went, 62 %, is spared.
    assertThat(need.swapWaterGrams()).isCloseTo(30.769 * 0.88, within(0.001));
  }

  /** Weights are firm, cups are open: the spread of the balance is no less than of its water. */
  @Test
  void the_spread_of_the_balance_holds_that_of_its_water_and_flour() {
    Level firm = Doughs.of(FLOUR, "310 g water").reading("water balance").orElseThrow();
    assertThat(firm.high() - firm.value()).isCloseTo(2, within(1e-9));
    assertThat(firm.value() - firm.low()).isCloseTo(2, within(1e-9));

    Level open = Doughs.of(FLOUR, "280 to 340 g water").reading("water balance").orElseThrow();
    // 6 points of water and 2 of formulas at right angles.
    assertThat(open.high() - open.value()).isCloseTo(Math.hypot(6, 2), within(1e-6));
    assertThat(open.value() - open.low()).isCloseTo(Math.hypot(6, 2), within(1e-6));

    Level flour =
        Doughs.of("500 g bread flour", "310 g water").reading("water balance").orElseThrow();
    // A point of protein either way moves the water wanted by 1.25.
    assertThat(flour.high() - flour.value()).isCloseTo(Math.hypot(2, 1.25), within(1e-6));
  }

  @Test
  void what_is_there_is_read_and_what_is_not_is_nought() {
    Formula formula =
        Doughs.of(
            FLOUR,
            "310 g water",
            "9 g salt",
            "5 g instant yeast",
            "50 g raisins",
            "5 g malt",
            "100 g whole wheat flour",
            "120 g milk",
            "2 eggs");

    assertThat(value(formula, "inclusions")).isCloseTo(50 / 6.0, within(1e-6));
    assertThat(value(formula, "whole grain")).isCloseTo(100 / 6.0, within(1e-6));
    assertThat(value(formula, "egg")).isCloseTo(100 / 6.0, within(1e-6));
    assertThat(value(formula, "milk")).isCloseTo(120 / 6.0, within(1e-6));
    // Milk is 88.13 % water and 3.25 % fat (usda-sr26 01077).
    assertThat(value(formula, "milk solids"))
        .isCloseTo(120 * (1 - 0.8813 - 0.0325) / 6, within(0.001));
    assertThat(value(formula, "gluten added")).isZero();
    assertThat(value(formula, "rye")).isZero();
  }

  @Test
  void levels_add_and_divide_as_spreads_do() {
    Level sum = Level.of(1, 2, 4).plus(Level.of(10, 20, 30));
    assertThat(sum).isEqualTo(Level.of(11, 22, 34));
    // Half the width over three percent of the value is vague; no more is firm.
    assertThat(Level.of(97, 100, 103).vague()).isFalse();
    assertThat(Level.of(96.9, 100, 103.2).vague()).isTrue();
    assertThat(Level.of(98, 100, 105).vague()).isTrue();
    assertThat(Level.of(10, 20, 30).widened(1, 2)).isEqualTo(Level.of(9, 20, 32));
    assertThat(Level.exact(30).percentOf(Level.exact(60))).isEqualTo(Level.exact(50));
    // A ratio's logarithmic spreads stand at right angles: 2 and 2 make 2 to the root of 2.
    Level ratio = Level.of(25, 50, 100).percentOf(Level.of(50, 100, 200));
    assertThat(ratio.high()).isCloseTo(50 * Math.pow(2, Math.sqrt(2)), within(1e-9));
    assertThat(ratio.low()).isCloseTo(50 / Math.pow(2, Math.sqrt(2)), within(1e-9));
    assertThat(Level.of(25, 50, 100).shareOf(Level.of(50, 100, 200)).high()).isEqualTo(100);
  }
}
