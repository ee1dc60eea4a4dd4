package crumbtrail.oven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.oven.Cooling.Lying;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class CoolingTest {
  private static HotLoaf hot(double grams) {
    return Bake.of(Loaf.hearth(grams), 25, List.of(OvenStage.still(45, 220)), 0).end();
  }

  @Test
  void at_once_the_core_is_as_it_left_the_oven() {
    BakeCourse course = Bake.of(Loaf.hearth(800), 25, List.of(OvenStage.still(25, 220)), 0);

    assertThat(Cooling.coreAfter(course.end(), 0, 22, Lying.RACK)).isEqualTo(course.core());
    assertThat(Cooling.minutesUntil(course.end(), 100, 22, Lying.RACK)).hasValue(0);
  }

  @Test
  void a_loaf_cut_after_a_quarter_of_an_hour_is_still_hot_and_the_next_day_it_is_not() {
    assertThat(Cooling.coreAfter(hot(800), 15, 22, Lying.RACK)).isGreaterThan(70);
    assertThat(Cooling.coreAfter(hot(800), 12 * 60, 22, Lying.RACK)).isCloseTo(22, within(1.5));
  }

  @Test
  void a_warm_room_never_cools_it_that_far() {
    assertThat(Cooling.minutesUntil(hot(500), 30, 32, Lying.RACK)).isEmpty();
  }

  @Test
  void nonsense_is_refused() {
    HotLoaf hot = hot(500);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Cooling.coreAfter(hot, -1, 22, Lying.RACK));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Cooling.coreAfter(hot, 10, Double.NaN, Lying.RACK));
  }

  @Property(tries = 60)
  void longer_is_cooler_and_cover_keeps_warm(
      @ForAll @DoubleRange(min = 100, max = 1500) double grams,
      @ForAll @DoubleRange(min = 5, max = 90) double minutes) {
    HotLoaf hot = hot(grams);
    double rack = Cooling.coreAfter(hot, minutes, 22, Lying.RACK);

    // The model's middle may still gain a little in the first minutes.
    assertThat(Cooling.coreAfter(hot, minutes + 5, 22, Lying.RACK)).isLessThanOrEqualTo(rack + 0.1);
    assertThat(Cooling.coreAfter(hot, minutes, 22, Lying.TIN)).isGreaterThanOrEqualTo(rack - 0.1);
    assertThat(Cooling.coreAfter(hot, minutes, 22, Lying.WRAPPED))
        .isGreaterThanOrEqualTo(Cooling.coreAfter(hot, minutes, 22, Lying.TIN) - 0.1);
  }

  @Property(tries = 60)
  void the_core_is_at_the_wanted_warmth_when_it_is_said_to_be(
      @ForAll @DoubleRange(min = 100, max = 1500) double grams,
      @ForAll @DoubleRange(min = 30, max = 80) double wanted) {
    HotLoaf hot = hot(grams);
    double minutes = Cooling.minutesUntil(hot, wanted, 22, Lying.RACK).orElseThrow();

    assertThat(Cooling.coreAfter(hot, minutes, 22, Lying.RACK)).isCloseTo(wanted, within(0.5));
  }
}
