package crumbtrail.formula;

import static crumbtrail.formula.Doughs.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Checks that rest on common practice: nobody published them, every teacher says them. */
class CommonPracticeTest {

  /** Common practice: a white tin loaf is safe near 60 % of all water, eggs and milk counted. */
  @Test
  void aPlainTinLoafIsNeitherStiffNorSlack() {
    Formula formula =
        Doughs.of("600 g bread flour", "365 g water", "12 g salt", "6 g instant yeast");
    assertThat(value(formula, "water balance")).isBetween(-3.0, 3.0);
    assertThat(value(formula, "yeast")).isCloseTo(1, within(1e-9));
    assertThat(value(formula, "salt")).isCloseTo(2, within(0.005));
    // About 1 kg of dough for a two-pound tin.
    assertThat(value(formula, "dough weight")).isBetween(950.0, 1050.0);
  }

  /** Common practice: eggs and milk count towards the water of the dough. */
  @Test
  void eggsAndMilkAreWater() {
    Formula formula = Doughs.of("500 g bread flour", "200 g milk", "2 large eggs", "30 g butter");
    assertThat(value(formula, "hydration")).isCloseTo(40, within(1e-9));
    assertThat(value(formula, "total water")).isCloseTo((176.26 + 76.15) / 5, within(0.01));
    assertThat(formula.allWater().orElseThrow().value())
        .isGreaterThan(value(formula, "total water"));
  }

  /**
   * Common practice: wholemeal and rye take more water, so the same water makes a stiffer dough.
   */
  @Test
  void branIsThirsty() {
    double white = value(Doughs.of("500 g bread flour", "325 g water"), "water balance");
    double brown = value(Doughs.of("500 g wholemeal flour", "325 g water"), "water balance");
    double rye = value(Doughs.of("500 g medium rye flour", "325 g water"), "water balance");
    assertThat(brown).isLessThan(white - 5);
    assertThat(rye).isLessThan(white - 4);
  }

  /** Common practice: all-purpose for bread flour leaves the same water too much. */
  @Test
  void weakerFlourTakesLessWater() {
    Formula strong = Doughs.of("500 g bread flour", "325 g water");
    Formula plain = Doughs.of("500 g all-purpose flour", "325 g water");
    assertThat(value(plain, "water balance")).isGreaterThan(value(strong, "water balance") + 1.5);
    assertThat(value(plain, "flour protein")).isLessThan(value(strong, "flour protein") - 1);
  }

  /** Common practice: one small egg for two changes the dough enough to be flagged. */
  @Test
  void oneSmallEggForTwoIsADifference() {
    Formula two = Doughs.of("300 g bread flour", "100 g water", "2 large eggs");
    Formula one = Doughs.of("300 g bread flour", "100 g water", "1 small egg");
    assertThat(value(two, "total water") - value(one, "total water")).isGreaterThan(10);
  }

  /** Common practice: a tablespoon of coarse salt weighs less than one of table salt. */
  @Test
  void coarseSaltByTheSpoonIsLessSalt() {
    Formula coarse = Doughs.of("500 g bread flour", "325 g water", "1 tbsp coarse salt");
    Formula fine = Doughs.of("500 g bread flour", "325 g water", "1 tbsp table salt");
    assertThat(value(coarse, "salt")).isLessThan(0.75 * value(fine, "salt"));
    assertThat(coarse.reading("salt").orElseThrow().vague()).isTrue();
  }

  /** Common practice: cups say nothing about a formula until weighed. */
  @Test
  void cupsAreVagueAndScalesAreNot() {
    assertThat(Doughs.of("3 cups bread flour", "270 g water").reading("hydration"))
        .hasValueSatisfying(level -> assertThat(level.vague()).isTrue());
    assertThat(Doughs.of("411 g bread flour", "270 g water").reading("hydration"))
        .hasValueSatisfying(level -> assertThat(level.vague()).isFalse());
  }
}
