package crumbtrail.dough;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.dough.Fermentation.Stay;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class FermentationTest {
  private static final DoughMix USUAL = Doughs.plain(1);

  /** Marek and Bushuk, Cereal Chem 44:300, 1967: sugar raises gas to 5 % and lowers it above. */
  @Test
  void sugar_helps_to_five_percent_and_hinders_above_ten() {
    double none = Doughs.gas(USUAL, 26, 60);
    double five = Doughs.gas(USUAL.with(2, 5, 62), 26, 60);
    double ten = Doughs.gas(USUAL.with(2, 10, 62), 26, 60);

    assertThat(five).isGreaterThan(none);
    assertThat(ten).isLessThan(five);
    assertThat(Doughs.gas(USUAL.with(2, 15, 62), 26, 60)).isLessThan(none);
    assertThat(Doughs.gas(USUAL.with(2, 20, 62), 26, 60)).isLessThan(0.8 * none);
  }

  /** Makers of yeast for sweet dough: it works where ordinary yeast is slowed. */
  @Test
  void yeast_for_sweet_dough_bears_sugar() {
    DoughMix sweet = USUAL.with(2, 20, 60);
    DoughMix tolerant = sweet.with(new Leaven(1, 0, true, 1));

    assertThat(Doughs.gas(tolerant, 26, 60)).isGreaterThan(1.3 * Doughs.gas(sweet, 26, 60));
  }

  /** Marek and Bushuk 1967: salt lowers both the gas made and the gas held. */
  @Test
  void salt_slows_and_holds_less() {
    DoughState none = Doughs.after(USUAL.with(0, 0, 62), 26, 90);
    DoughState usual = Doughs.after(USUAL, 26, 90);
    DoughState much = Doughs.after(USUAL.with(4, 0, 62), 26, 90);

    assertThat(none.made()).isGreaterThan(usual.made());
    assertThat(usual.made()).isGreaterThan(much.made());
    assertThat(none.held()).isGreaterThan(usual.held());
    assertThat(usual.held()).isGreaterThan(much.held());
  }

  /** bakemag.com, The science of fermentation: stiff doughs ferment slower. */
  @Test
  void a_stiffer_dough_is_slower() {
    assertThat(Doughs.gas(USUAL.with(2, 0, 50), 26, 60))
        .isLessThan(Doughs.gas(USUAL, 26, 60))
        .isLessThan(Doughs.gas(USUAL.with(2, 0, 80), 26, 60));
  }

  /** Marek and Bushuk 1967: strength of flour does not change the gas made, only the gas held. */
  @Test
  void strong_flour_holds_more_of_the_same_gas() {
    DoughMix weak = new DoughMix(Leaven.ofYeast(1), 62, 2, 0, 0, 9, 0, 0, 1, 165);
    DoughMix strong = new DoughMix(Leaven.ofYeast(1), 62, 2, 0, 0, 14, 0, 0, 1, 165);

    assertThat(Doughs.gas(strong, 26, 180)).isCloseTo(Doughs.gas(weak, 26, 180), within(1e-6));
    assertThat(Doughs.after(strong, 26, 180).held())
        .isGreaterThan(1.1 * Doughs.after(weak, 26, 180).held());
  }

  /** Marek and Bushuk 1967: more mixing makes no more gas and holds more of it. */
  @Test
  void a_kneaded_dough_holds_more_of_the_same_gas() {
    DoughMix kneaded = new DoughMix(Leaven.ofYeast(1), 62, 2, 0, 0, 12, 0, 0, 1, 165, 1);
    DoughMix stirred = new DoughMix(Leaven.ofYeast(1), 62, 2, 0, 0, 12, 0, 0, 1, 165, 0.3);

    assertThat(Doughs.gas(stirred, 26, 180)).isCloseTo(Doughs.gas(kneaded, 26, 180), within(1e-6));
    assertThat(Doughs.after(kneaded, 26, 180).held())
        .isGreaterThan(1.1 * Doughs.after(stirred, 26, 180).held());
  }

  @Test
  void a_forgotten_dough_sinks_while_its_gas_goes_on() {
    DoughState three = Doughs.after(USUAL, 28, 180);
    DoughState eight = Doughs.after(USUAL, 28, 480);

    assertThat(eight.held()).isLessThan(0.7 * three.held());
    assertThat(eight.made()).isGreaterThan(three.made());
  }

  /** Without enzymes a lean dough runs out of sugar, and its gas with it. */
  @Test
  void a_dough_without_enzymes_starves() {
    DoughMix dead = new DoughMix(Leaven.ofYeast(2), 62, 2, 0, 0, 12, 0, 0, 0, 165);
    DoughState end = Doughs.after(dead, 28, 600);

    assertThat(end.sugar()).isBetween(-1e-6, 0.05);
    assertThat(end.made()).isLessThan(0.6 * Doughs.gas(Doughs.plain(2), 28, 600));
  }

  /** A sheet may state anything; what comes out are numbers. */
  @Test
  void months_in_the_warm_end_in_a_spent_dough() {
    Fermentation fermentation =
        new Fermentation(DoughMix.plain(new Leaven(3, 60, false, 1)).with(0, 0, 200));
    DoughState end = fermentation.after(fermentation.start(12), new Stay(300_000, 25, 1));

    assertThat(end.made()).isBetween(500.0, 2000.0);
    assertThat(end.sugar()).isBetween(0.0, 0.1);
    assertThat(end.starter()).isFinite();
    assertThat(end.held()).isBetween(0.0, end.made());
  }

  @Property(tries = 100)
  void sugar_eaten_and_gas_made_are_one(
      @ForAll @DoubleRange(min = 0.1, max = 3) double yeast,
      @ForAll @DoubleRange(min = 0, max = 20) double sugar,
      @ForAll @DoubleRange(min = 5, max = 38) double celsius) {
    DoughMix mix = Doughs.plain(yeast).with(2, sugar, 62);
    Fermentation fermentation = new Fermentation(mix);
    DoughState begin = fermentation.start(celsius);
    DoughState end = fermentation.after(begin, new Stay(180, celsius, 60));
    double eaten = begin.sugar() + begin.starch() - end.sugar() - end.starch();

    // A hungry dough may overshoot the last trace of its sugar by a step: 0.005 % of flour.
    assertThat(eaten * 270).isCloseTo(end.made(), within(0.005 * 270));
  }

  @Property(tries = 200)
  void gas_held_is_part_of_the_gas_made(
      @ForAll @DoubleRange(min = 0.05, max = 4) double yeast,
      @ForAll @DoubleRange(min = 2, max = 40) double celsius,
      @ForAll @DoubleRange(min = 1, max = 1200) double minutes) {
    DoughState end = Doughs.after(Doughs.plain(yeast), celsius, minutes);

    assertThat(end.held()).isBetween(0.0, end.made());
  }

  @Property(tries = 200)
  void a_stay_split_in_two_equals_the_whole(
      @ForAll @DoubleRange(min = 0, max = 40) double place,
      @ForAll @DoubleRange(min = 2, max = 900) double minutes,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double cut) {
    Fermentation fermentation = new Fermentation(USUAL);
    DoughState begin = fermentation.start(25);
    DoughState whole = fermentation.after(begin, new Stay(minutes, place, 100));
    DoughState half = fermentation.after(begin, new Stay(minutes * cut, place, 100));
    DoughState parts = fermentation.after(half, new Stay(minutes * (1 - cut), place, 100));

    assertThat(parts.made()).isCloseTo(whole.made(), within(2e-3 * Math.max(1, whole.made())));
    assertThat(parts.held()).isCloseTo(whole.held(), within(5e-3 * Math.max(1, whole.held())));
    assertThat(parts.celsius()).isCloseTo(whole.celsius(), within(1e-9));
  }

  @Property(tries = 200)
  void more_yeast_never_ferments_slower(
      @ForAll @DoubleRange(min = 0.01, max = 3) double yeast,
      @ForAll @DoubleRange(min = 0.01, max = 2) double more,
      @ForAll @DoubleRange(min = 0, max = 38) double celsius) {
    assertThat(Doughs.gas(Doughs.plain(yeast + more), celsius, 90))
        .isGreaterThanOrEqualTo(Doughs.gas(Doughs.plain(yeast), celsius, 90));
  }

  @Property(tries = 200)
  void warmer_below_the_optimum_never_ferments_slower(
      @ForAll @DoubleRange(min = 0, max = 37) double celsius,
      @ForAll @DoubleRange(min = 0, max = 1) double more) {
    assertThat(Doughs.gas(USUAL, celsius + more, 90))
        .isGreaterThanOrEqualTo(Doughs.gas(USUAL, celsius, 90) * (1 - 1e-9));
  }

  @Property(tries = 200)
  void nothing_jumps_when_an_input_moves_a_little(
      @ForAll @DoubleRange(min = 0, max = 25) double sugar,
      @ForAll @DoubleRange(min = 0, max = 4) double salt,
      @ForAll @DoubleRange(min = 2, max = 42) double celsius,
      @ForAll @DoubleRange(min = 5, max = 600) double minutes) {
    double here = Doughs.gas(USUAL.with(salt, sugar, 62), celsius, minutes);
    double beside =
        Doughs.gas(
            USUAL.with(salt + 0.001, sugar + 0.001, 62.001), celsius + 0.001, minutes + 0.001);

    assertThat(beside).isCloseTo(here, within(0.005 * here + 0.01));
  }

  /** The same equations in steps of a minute. */
  @Property(tries = 300)
  void long_steps_end_where_short_ones_do(
      @ForAll @DoubleRange(min = 0.1, max = 3) double yeast,
      @ForAll @DoubleRange(min = 18, max = 32) double start,
      @ForAll @DoubleRange(min = 4, max = 35) double place,
      @ForAll @DoubleRange(min = 10, max = 160) double lag,
      @ForAll @DoubleRange(min = 20, max = 1200) double minutes) {
    Fermentation fermentation = new Fermentation(Doughs.plain(yeast));
    DoughState begin = fermentation.start(start);
    Stay stay = new Stay(minutes, place, lag);

    List<DoughState> fine = fermentation.through(begin, stay, 10_000);
    DoughState end = fine.get(fine.size() - 1);
    DoughState coarse = fermentation.after(begin, stay);

    assertThat(coarse.minute()).isEqualTo(end.minute());
    assertThat(coarse.made()).isCloseTo(end.made(), within(0.007 * Math.max(1, end.made())));
    assertThat(coarse.held()).isCloseTo(end.held(), within(0.007 * Math.max(1, end.held())));
    assertThat(coarse.sugar()).isCloseTo(end.sugar(), within(0.02));
  }

  @Test
  void readiness_is_found_within_a_stay_and_after_it() {
    Fermentation fermentation = new Fermentation(USUAL);
    double gas = Readiness.bulkGas(USUAL, 2, false);
    List<DoughState> longer = fermentation.through(fermentation.start(26), new Stay(90, 26, 60));
    List<DoughState> shorter = fermentation.through(fermentation.start(26), new Stay(30, 26, 60));
    DoughState end = shorter.get(shorter.size() - 1);

    double within = Readiness.within(longer, gas).orElseThrow();
    double later = Readiness.later(fermentation, end, 26, 60, gas - end.made()).orElseThrow();

    assertThat(within).isCloseTo(60, within(6.0));
    assertThat(30 + later).isCloseTo(within, within(1.0));
    assertThat(Readiness.within(shorter, gas)).isEmpty();
    assertThat(Readiness.later(fermentation, end, 0, 60, 1e6)).isEmpty();
  }

  @Test
  void a_hungry_dough_is_found_ready_as_soon_as_in_short_steps() {
    DoughMix mix = Doughs.plain(4);
    Fermentation fermentation = new Fermentation(mix);
    DoughState begin = fermentation.start(34);
    double gas = Readiness.bulkGas(mix, 2.5, true);

    double fine =
        Readiness.within(fermentation.through(begin, new Stay(240, 34, 60), 2_000), gas)
            .orElseThrow();

    assertThat(Readiness.later(fermentation, begin, 34, 60, gas).orElseThrow())
        .isCloseTo(fine, within(0.02 * fine));
  }

  /** Sourdough Framework, table of dough size increase: 25, 50, 100 % by protein of the flour. */
  @Test
  void stronger_flour_wants_a_larger_rise_by_starter() {
    assertThat(wantedRise(9)).isCloseTo(1.25, within(1e-9));
    assertThat(wantedRise(11)).isCloseTo(1.5, within(1e-9));
    assertThat(wantedRise(13.5)).isCloseTo(2, within(1e-9));
    assertThat(wantedRise(16)).isGreaterThan(2);
  }

  private static double wantedRise(double protein) {
    return Readiness.sourdoughRise(
        new DoughMix(Leaven.ofStarter(20), 70, 2, 0, 0, protein, 0, 0, 1, 190));
  }
}
