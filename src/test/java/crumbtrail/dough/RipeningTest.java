package crumbtrail.dough;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.dough.Ripening.Spell;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class RipeningTest {
  private static final Leaven USUAL = new Leaven(1, 0, 2, 0, 0, false);

  /** Common practice: 1 % instant yeast, 2 % salt, 25 to 26 °C doubles in about an hour. */
  @Test
  void the_usual_dough_is_ready_in_about_an_hour() {
    assertThat(ripeness(USUAL, 26, new Spell(60, 26))).isCloseTo(1, within(0.1));
  }

  /**
   * Sourdough Framework (CC BY-SA book): at 25 °C, 20 % starter takes about 5 h and 10 % about 8 h.
   * The power of the dose is fitted to these two, so this shows the arithmetic and no more.
   */
  @Test
  void sourdough_is_ready_when_the_book_says() {
    assertThat(ripeness(new Leaven(0, 20, 2, 0, 0, false), 25, new Spell(5 * 60, 25)))
        .isCloseTo(1, within(0.02));
    assertThat(ripeness(new Leaven(0, 10, 2, 0, 0, false), 25, new Spell(8 * 60, 25)))
        .isCloseTo(1, within(0.02));
  }

  /**
   * Grain Craft, straight dough sheet: 0.94 % instant yeast, 1.9 % salt, 3.75 % sugar, 95 min at 27
   * to 29 °C with punches. Two risings and more: between one and three times ready.
   */
  @Test
  void the_mill_sheet_dough_is_risen_and_punched() {
    double ripeness = ripeness(new Leaven(0.94, 0, 1.875, 3.75, 0, false), 27, new Spell(95, 28));

    assertThat(ripeness).isBetween(1.0, 3.0);
  }

  @Property
  void a_schedule_split_in_two_equals_the_whole(
      @ForAll @DoubleRange(min = 0, max = 40) double place,
      @ForAll @DoubleRange(min = 1, max = 600) double minutes,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double cut) {
    double whole = ripeness(USUAL, 25, new Spell(minutes, place));
    double parts =
        ripeness(USUAL, 25, new Spell(minutes * cut, place), new Spell(minutes * (1 - cut), place));

    assertThat(parts).isCloseTo(whole, within(1e-3 * Math.max(1, whole)));
  }

  @Property
  void more_yeast_never_ripens_slower(
      @ForAll @DoubleRange(min = 0.05, max = 3) double yeast,
      @ForAll @DoubleRange(min = 0.05, max = 3) double more) {
    Leaven little = new Leaven(yeast, 0, 2, 0, 0, false);
    Leaven much = new Leaven(yeast + more, 0, 2, 0, 0, false);

    assertThat(much.ratePerMinute()).isGreaterThan(little.ratePerMinute());
  }

  @Property
  void warmer_below_the_optimum_never_ripens_slower(
      @ForAll @DoubleRange(min = 2, max = 34) double celsius,
      @ForAll @DoubleRange(min = 0.1, max = 3) double warmer) {
    double cool = ripeness(USUAL, celsius, new Spell(60, celsius));
    double warm = ripeness(USUAL, celsius + warmer, new Spell(60, celsius + warmer));

    assertThat(warm).isGreaterThanOrEqualTo(cool);
  }

  private static double ripeness(Leaven leaven, double start, Spell... spells) {
    return Ripening.through(leaven, start, 900, List.of(spells)).ripeness();
  }
}
