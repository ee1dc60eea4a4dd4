package crumbtrail.keeping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.keeping.Spoilage.Damp;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class KeepingPropertyTest {
  @Property
  void above_freezing_colder_stales_faster(
      @ForAll @DoubleRange(min = -1, max = 32) double one,
      @ForAll @DoubleRange(min = -1, max = 32) double other) {
    assertThat(Staling.at(Math.min(one, other)))
        .isGreaterThanOrEqualTo(Staling.at(Math.max(one, other)));
  }

  @Property
  void the_limits_hold_the_value(@ForAll @DoubleRange(min = -30, max = 45) double celsius) {
    Staling.Rate rate = Staling.rate(celsius);
    assertThat(rate.value())
        .isBetween(rate.low() - 1e-9, rate.high() + 1e-9)
        .isCloseTo(Staling.at(celsius), within(1e-12));
  }

  @Property
  void hazards_grow_with_time_and_stay_between_none_and_all(
      @ForAll @DoubleRange(min = 0, max = 30) double days,
      @ForAll @DoubleRange(min = 0, max = 30) double more,
      @ForAll @DoubleRange(min = -20, max = 60) double celsius,
      @ForAll @DoubleRange(min = 3, max = 7) double pH,
      @ForAll Damp damp) {
    assertThat(Spoilage.mould(days, celsius, damp, pH)).isBetween(0.0, 1.0);
    assertThat(Spoilage.rope(days, celsius, pH)).isBetween(0.0, 1.0);
    assertThat(Spoilage.mould(days + more, celsius, damp, pH))
        .isGreaterThanOrEqualTo(Spoilage.mould(days, celsius, damp, pH));
    assertThat(Spoilage.rope(days + more, celsius, pH))
        .isGreaterThanOrEqualTo(Spoilage.rope(days, celsius, pH));
  }

  @Property
  void acid_and_dry_crust_protect(
      @ForAll @DoubleRange(min = 0, max = 30) double days,
      @ForAll @DoubleRange(min = 0, max = 40) double celsius) {
    assertThat(Spoilage.mould(days, celsius, Damp.OPEN, 5.4))
        .isLessThanOrEqualTo(Spoilage.mould(days, celsius, Damp.SWEATED, 5.4));
    assertThat(Spoilage.mould(days, celsius, Damp.ORDINARY, 4))
        .isLessThanOrEqualTo(Spoilage.mould(days, celsius, Damp.ORDINARY, 5.4));
    assertThat(Spoilage.rope(days, celsius, 4.8))
        .isLessThanOrEqualTo(Spoilage.rope(days, celsius, 5.4));
  }
}
