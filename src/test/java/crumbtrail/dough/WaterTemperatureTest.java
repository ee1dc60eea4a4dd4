package crumbtrail.dough;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.dough.DoughTemperature.Part;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class WaterTemperatureTest {

  @Property
  void water_by_balance_gives_the_dough_that_was_wanted(
      @ForAll @DoubleRange(min = 15, max = 35) double wanted,
      @ForAll @DoubleRange(min = -18, max = 40) double flour,
      @ForAll @DoubleRange(min = 100, max = 900) double grams) {
    List<Part> others = List.of(Part.flour(1000, flour), Part.preferment(100, 100, 22));

    double water = WaterTemperature.byBalance(wanted, others, grams, 4);

    assertThat(
            DoughTemperature.mixed(
                List.of(others.get(0), others.get(1), Part.water(grams, water)), 4))
        .isCloseTo(wanted, within(1e-9));
  }

  @Property
  void ice_and_tap_water_together_hold_the_heat_of_the_water_wanted(
      @ForAll @DoubleRange(min = 0.5, max = 35) double tap,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    double wanted = tap * share;
    double ice = WaterTemperature.ice(1000, tap, wanted);

    assertThat(DoughTemperature.mixed(List.of(Part.ice(ice), Part.water(1000 - ice, tap)), 0))
        .isCloseTo(wanted, within(1e-9));
  }

  @Property
  void the_trade_formula_for_ice_stays_within_two_percent_of_the_balance(
      @ForAll @DoubleRange(min = 5, max = 35) double tap,
      @ForAll @DoubleRange(min = 0, max = 0.95) double share) {
    double wanted = tap * share;
    double exact = WaterTemperature.ice(1000, tap, wanted);
    double trade = WaterTemperature.iceByTradeFormula(1000, tap * 1.8 + 32, wanted * 1.8 + 32);

    assertThat(trade).isCloseTo(exact, within(exact * 0.02));
  }

  @Test
  void water_that_is_cold_enough_takes_no_ice() {
    assertThat(WaterTemperature.ice(1000, 10, 12)).isZero();
    assertThat(WaterTemperature.iceByTradeFormula(10, 50, 60)).isZero();
  }

  /** 60 % water and a room near the dough: the two ways agree. Cold flour in a hot room: not. */
  @Test
  void rule_and_balance_part_for_unusual_doughs() {
    assertThat(WaterTemperature.plan(26, 22, 22, 12, 62).apart()).isFalse();
    assertThat(WaterTemperature.plan(26, 5, 30, 12, 45).apart()).isTrue();
    assertThat(WaterTemperature.plan(18, 35, 35, 12, 50).possible()).isFalse();
  }

  @Test
  void parts_and_factors_that_cannot_be_are_refused() {
    assertThatThrownBy(() -> Part.flour(-1, 20)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> DoughTemperature.mixed(List.of(), 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> WaterTemperature.byBalance(25, List.of(), 0, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> WaterTemperature.ice(100, -1, -2))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> WaterTemperature.warming(20, 2))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(DoughTemperature.covers(25)).isTrue();
    assertThat(DoughTemperature.covers(-3)).isFalse();
  }
}
