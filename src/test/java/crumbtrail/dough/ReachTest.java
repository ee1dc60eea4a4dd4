package crumbtrail.dough;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.dough.Fermentation.Stay;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How far each model reaches: a report says so where a bake lies outside, so both sides of every
 * end count. And laws that hold within.
 */
class ReachTest {

  @ParameterizedTest
  @CsvSource({
    "5, 0, 62, 2, 0, true",
    "5.1, 0, 62, 2, 0, false",
    "0, 60, 62, 2, 0, true",
    "0, 61, 62, 2, 0, false",
    "1, 0, 40, 2, 0, true",
    "1, 0, 39, 2, 0, false",
    "1, 0, 110, 2, 0, true",
    "1, 0, 111, 2, 0, false",
    "1, 0, 62, 4, 0, true",
    "1, 0, 62, 4.1, 0, false",
    "1, 0, 62, 2, 35, true",
    "1, 0, 62, 2, 36, false"
  })
  void fermentation_reaches_so_far(
      double yeast, double starter, double water, double salt, double sugar, boolean covered) {
    DoughMix mix = DoughMix.plain(new Leaven(yeast, starter, false, 1)).with(salt, sugar, water);
    assertThat(Fermentation.covers(mix)).isEqualTo(covered);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 60, true",
    "-1, 60, false",
    "42, 60, true",
    "43, 60, false",
    "24, 4320, true",
    "24, 4321, false"
  })
  void places_reach_so_far(double celsius, double minutes, boolean covered) {
    assertThat(Fermentation.covers(new Stay(minutes, celsius, 60))).isEqualTo(covered);
  }

  @ParameterizedTest
  @CsvSource({
    "-5, 8, true",
    "-6, 8, false",
    "60, 8, true",
    "61, 8, false",
    "20, 2, true",
    "20, 1.9, false",
    "20, 50, true",
    "20, 51, false"
  })
  void air_around_a_dough_reaches_so_far(double celsius, double transfer, boolean covered) {
    Surroundings place = new Surroundings(60, celsius, transfer);
    assertThat(place.covered()).isEqualTo(covered);
    assertThat(place.lasting(5).covered()).isEqualTo(covered);
    assertThat(place.lasting(5).minutes()).isEqualTo(5);
  }

  @ParameterizedTest
  @CsvSource({
    "16, 600, true",
    "15.9, 600, false",
    "31, 600, true",
    "31.1, 600, false",
    // Half an hour anywhere does not count.
    "4, 30, true",
    "4, 31, false"
  })
  void preferments_reach_so_far(double celsius, double minutes, boolean covered) {
    List<Stretch> schedule = List.of(new Stretch(600, 20), new Stretch(minutes, celsius));
    assertThat(PrefermentRipeness.covers(schedule)).isEqualTo(covered);
  }

  @Test
  void growth_and_acidity_reach_so_far() {
    assertThat(CardinalGrowth.covers(0)).isTrue();
    assertThat(CardinalGrowth.covers(-1)).isFalse();
    assertThat(CardinalGrowth.covers(46)).isTrue();
    assertThat(CardinalGrowth.covers(47)).isFalse();
    assertThat(SourdoughGrowth.covers(10)).isTrue();
    assertThat(SourdoughGrowth.covers(9)).isFalse();
    assertThat(SourdoughGrowth.covers(40)).isTrue();
    assertThat(SourdoughGrowth.covers(41)).isFalse();
    assertThat(Acidity.covers(4, 10)).isTrue();
    assertThat(Acidity.covers(3, 10)).isFalse();
    assertThat(Acidity.covers(32, 10)).isTrue();
    assertThat(Acidity.covers(33, 10)).isFalse();
    assertThat(Acidity.covers(24, 1)).isTrue();
    assertThat(Acidity.covers(24, 0.5)).isFalse();
    assertThat(Acidity.covers(24, 30)).isTrue();
    assertThat(Acidity.covers(24, 31)).isFalse();
    assertThat(DoughBody.covers(20)).isTrue();
    assertThat(DoughBody.covers(19)).isFalse();
    assertThat(DoughBody.covers(50_000)).isTrue();
    assertThat(DoughBody.covers(50_001)).isFalse();
    assertThat(DoughTemperature.covers(0)).isFalse();
    assertThat(DoughTemperature.covers(1)).isTrue();
    assertThat(DoughTemperature.covers(60)).isFalse();
  }

  @Test
  void nothing_grows_at_the_ends_of_its_range() {
    assertThat(CardinalGrowth.at(CardinalGrowth.LEAST)).isZero();
    assertThat(CardinalGrowth.at(CardinalGrowth.MOST)).isZero();
    assertThat(CardinalGrowth.at(CardinalGrowth.BEST)).isCloseTo(1, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"1, 0, 1, true", "0, 20, 1, true", "0, 0, 1, false", "1, 20, 0, false"})
  void a_dough_rises_by_living_yeast_or_starter(
      double yeast, double starter, double vigour, boolean raises) {
    assertThat(new Leaven(yeast, starter, false, vigour).raises()).isEqualTo(raises);
  }

  /** A tenth of a per cent of yeast beside 20 % of starter does less than half of the work. */
  @Test
  void who_does_most_of_the_work() {
    assertThat(mostlyStarter(0, 20)).isTrue();
    assertThat(mostlyStarter(0.02, 20)).isTrue();
    assertThat(mostlyStarter(1, 0)).isFalse();
    assertThat(mostlyStarter(2, 5)).isFalse();
  }

  private static boolean mostlyStarter(double yeast, double starter) {
    return new Fermentation(DoughMix.plain(new Leaven(yeast, starter, false, 1))).mostlyStarter();
  }

  /** By hand: 165 g with 1 % less salt, 10 % sugar and 8 % more water are 182 g. */
  @Test
  void another_recipe_has_another_weight() {
    DoughMix mix = Doughs.plain(1).with(1, 10, 70);

    assertThat(mix.total()).isCloseTo(182, within(1e-9));
    assertThat(mix.volume()).isCloseTo(182 / 1.2, within(1e-9));
    assertThat(mix.with(0, 0, 62).total()).isCloseTo(163, within(1e-9));
  }

  /** By weight: 100 g flour of 1.7 and 50 g water of 4.186 kJ/(kg K). */
  @Test
  void a_preferment_holds_the_heat_of_its_flour_and_its_water() {
    DoughTemperature.Part part = DoughTemperature.Part.preferment(100, 50, 20);
    assertThat(part.grams()).isEqualTo(150);
    assertThat(part.heat()).isCloseTo((170 + 209.3) / 150, within(1e-6));
    assertThat(DoughTemperature.Part.preferment(0, 0, 20).grams()).isZero();
  }

  /**
   * The bran cuts films and rye has no gluten: either holds less gas than white flour, by share.
   */
  @Test
  void bran_and_rye_hold_less_gas_in_proportion() {
    double white = loaf(0, 0);
    assertThat(loaf(50, 0)).isLessThan(white);
    assertThat(white - loaf(100, 0)).isCloseTo(2 * (white - loaf(50, 0)), within(1e-9));
    assertThat(loaf(0, 50)).isLessThan(white);
    assertThat(white - loaf(0, 100)).isCloseTo(2 * (white - loaf(0, 50)), within(1e-9));
    // A share of more than all is all.
    assertThat(loaf(150, 0)).isEqualTo(loaf(100, 0));
  }

  private static double loaf(double wholeGrain, double rye) {
    return GasHold.bestLoaf(
        new DoughMix(Leaven.ofYeast(1), 62, 2, 0, 0, 12, wholeGrain, rye, 1, 165));
  }

  /**
   * Size increase by protein (Sourdough Framework): 9 % by a quarter, 11 % by half, 13.5 % double.
   */
  @ParameterizedTest
  @CsvSource({"9, 1.25", "10, 1.375", "11, 1.5", "13.5, 2", "20, 2.2", "5, 1.2"})
  void a_sourdough_rises_by_what_its_protein_bears(double protein, double rise) {
    assertThat(Readiness.sourdoughRise(mix(protein, 0))).isCloseTo(rise, within(1e-9));
    // Of whole grain a third less.
    assertThat(Readiness.sourdoughRise(mix(protein, 100)) - 1)
        .isCloseTo((rise - 1) * 2 / 3, within(0.02));
  }

  private static DoughMix mix(double protein, double wholeGrain) {
    return new DoughMix(Leaven.ofStarter(20), 70, 2, 0, 0, protein, wholeGrain, 0, 1, 192);
  }

  @Test
  void a_stay_has_a_time_and_a_transfer() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Surroundings(-1, 20, 8));
    assertThatIllegalArgumentException().isThrownBy(() -> new Surroundings(1, 20, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Surroundings(1, Double.NaN, 8));
    assertThat(new Surroundings(0, 20, 8).minutes()).isZero();
  }
}
