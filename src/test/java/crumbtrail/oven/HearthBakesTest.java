package crumbtrail.oven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is read between bakes is held against the bakes themselves. */
class HearthBakesTest {
  @ParameterizedTest
  @CsvSource({
    "122, 900",
    "131.5, 60",
    "158, 1999",
    "178.3, 451",
    "203, 30",
    "218, 170",
    "231, 755",
    "249.9, 1100",
    "266, 5000",
    "298, 260"
  })
  void lies_no_farther_from_the_bake_than_one_layer_more_or_less_makes(
      double celsius, double grams) {
    double baked = BakeTime.minutes(Loaf.hearth(grams), OvenStage.still(0, celsius), 0);

    assertThat(HearthBakes.minutes(celsius, grams)).isCloseTo(baked, within(0.03 * baked));
  }

  @ParameterizedTest
  @CsvSource({"110, 900", "320, 900", "220, 15", "220, 20000"})
  void beyond_its_reach_the_bake_itself_is_worked_out(double celsius, double grams) {
    double baked = BakeTime.minutes(Loaf.hearth(grams), OvenStage.still(0, celsius), 0);

    assertThat(HearthBakes.minutes(celsius, grams)).isEqualTo(baked);
  }
}
