package crumbtrail.oven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.oven.Cooling.Lying;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cooling by its balances, on a loaf that is baked anew for each test. */
class CoolingRunTest {
  private final HotLoaf hot =
      Bake.of(Loaf.hearth(300), 25, List.of(OvenStage.still(30, 220)), 0, Constants.USUAL).end();

  /** The table of docs/science/oven.md: a 60 g roll at 24 °C has 46 °C after a quarter. */
  @Test
  void a_roll_cools_as_the_page_says() {
    Loaf roll = Loaf.roll(60);
    double minutes = BakeTime.minutes(roll, OvenStage.still(0, 204), 0);
    HotLoaf end =
        Bake.of(roll, 25, List.of(OvenStage.still(minutes, 204)), 0, Constants.USUAL).end();

    assertThat(Cooling.coreAfter(end, 15, 24, Lying.RACK)).isCloseTo(46, within(3.0));
    assertThat(Cooling.minutesUntil(end, 40, 24, Lying.RACK).orElseThrow())
        .isCloseTo(19, within(2.0));
    assertThat(Cooling.lossAfter(end, 120, 24, Lying.RACK)).isCloseTo(3.1, within(0.5));
  }

  @Test
  void weight_is_lost_as_long_as_it_lies_and_the_less_the_more_it_is_covered() {
    double rack = Cooling.lossAfter(hot, 30, 22, Lying.RACK);
    double tin = Cooling.lossAfter(hot, 30, 22, Lying.TIN);
    double wrapped = Cooling.lossAfter(hot, 30, 22, Lying.WRAPPED);

    assertThat(Cooling.lossAfter(hot, 0, 22, Lying.RACK)).isZero();
    assertThat(wrapped).isPositive().isLessThan(tin);
    assertThat(tin).isLessThan(rack);
    assertThat(Cooling.lossAfter(hot, 60, 22, Lying.RACK)).isGreaterThan(rack);
    // All the heat of the loaf, 2.8 kJ/(kg K) by less than 78 K, could evaporate so much.
    assertThat(rack).isLessThan(100 * 2.8 * 78 / 2260);
  }

  @Test
  void covered_it_stays_warm() {
    double rack = Cooling.coreAfter(hot, 40, 22, Lying.RACK);
    double tin = Cooling.coreAfter(hot, 40, 22, Lying.TIN);

    assertThat(rack).isGreaterThan(22).isLessThan(tin - 1);
    assertThat(Cooling.coreAfter(hot, 40, 22, Lying.WRAPPED)).isGreaterThan(tin + 1);
  }

  @Test
  void the_minutes_until_it_is_so_cool_are_read_between_whole_ones() {
    double minutes = Cooling.minutesUntil(hot, 45, 22, Lying.RACK).orElseThrow();

    assertThat(Cooling.coreAfter(hot, minutes, 22, Lying.RACK)).isCloseTo(45, within(0.02));
    assertThat(Cooling.coreAfter(hot, Math.floor(minutes), 22, Lying.RACK)).isGreaterThan(45);
    assertThat(Cooling.coreAfter(hot, Math.ceil(minutes), 22, Lying.RACK)).isLessThan(45);
    assertThat(minutes % 1).isNotZero();
  }

  @Test
  void what_is_so_cool_already_waits_no_longer_and_no_room_cools_below_itself() {
    double core = Cooling.coreAfter(hot, 0, 22, Lying.RACK);

    assertThat(Cooling.minutesUntil(hot, core, 22, Lying.RACK)).hasValue(0);
    assertThat(Cooling.minutesUntil(hot, core + 1, 22, Lying.RACK)).hasValue(0);
    assertThat(Cooling.minutesUntil(hot, 22, 22, Lying.RACK)).isEmpty();
    assertThat(Cooling.minutesUntil(hot, 21, 22, Lying.RACK)).isEmpty();
  }

  @Test
  void in_the_end_it_is_as_cool_as_the_room_but_for_what_its_vapour_takes() {
    assertThat(Cooling.coreAfter(hot, 24 * 60, 22, Lying.WRAPPED)).isCloseTo(22, within(1.0));
  }

  @ParameterizedTest
  @CsvSource({"-30, true", "60, true", "-30.1, false", "60.1, false"})
  void rooms_are_between_a_freezer_and_a_proofer(double room, boolean taken) {
    if (taken) {
      assertThat(Cooling.coreAfter(hot, 1, room, Lying.RACK)).isGreaterThan(room);
    } else {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> Cooling.coreAfter(hot, 1, room, Lying.RACK));
      assertThatIllegalArgumentException()
          .isThrownBy(() -> Cooling.lossAfter(hot, 1, room, Lying.RACK));
      assertThatIllegalArgumentException()
          .isThrownBy(() -> Cooling.minutesUntil(hot, 50, room, Lying.RACK));
    }
  }

  @Test
  void nobody_waits_longer_than_a_day() {
    assertThat(Cooling.lossAfter(hot, 1440, 22, Lying.WRAPPED)).isPositive();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Cooling.lossAfter(hot, 1440.1, 22, Lying.RACK));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Cooling.coreAfter(hot, 1440.1, 22, Lying.RACK));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Cooling.lossAfter(hot, -0.1, 22, Lying.RACK));
  }

  /** One minute by hand: the flow of heat in the same surroundings, step by step. */
  @ParameterizedTest
  @CsvSource({"0", "2500"})
  void a_minute_of_cooling_is_a_minute_of_the_balances(double metres) {
    HotLoaf hot =
        Bake.of(Loaf.hearth(300), 25, List.of(OvenStage.still(30, 220)), metres, Constants.USUAL)
            .end();
    Surroundings rack = new Surroundings(22, 5, 0.9, 1, 0.5 * Crumb.density(22));
    CoolingRun run = new CoolingRun(hot, rack);
    Loaf loaf = hot.loaf();
    HeatFlow flow =
        new HeatFlow(
            loaf,
            new Crumb(loaf.density(), Boiling.at(metres), Constants.USUAL.transport()),
            Constants.USUAL.skin());
    flow.surround(rack);
    double[] state = hot.state();
    double water = Arrays.stream(state, state.length / 2 - 1, state.length - 2).sum();
    int steps = (int) Math.ceil(60 / flow.step(state));
    for (int step = 0; step < steps; step++) {
      flow.advance(state, 60.0 / steps);
      flow.boil(state, Boiling.at(metres));
    }
    double left = Arrays.stream(state, state.length / 2 - 1, state.length - 2).sum();

    run.advance(1);

    assertThat(run.minute()).isEqualTo(1);
    assertThat(run.core()).isCloseTo(flow.temperature(state, 0), within(1e-9));
    assertThat(run.loss()).isCloseTo(100 * (water - left) / 0.3, within(1e-9));
    assertThat(Cooling.coreAfter(hot, 1, 22, Lying.RACK)).isEqualTo(run.core());
    assertThat(Cooling.lossAfter(hot, 1, 22, Lying.RACK)).isEqualTo(run.loss());
  }

  @Test
  void the_last_stretch_is_as_short_as_it_is_told() {
    CoolingRun run = new CoolingRun(hot, new Surroundings(22, 5, 0.9, 1, 0.5 * Crumb.density(22)));
    run.advance(1);
    run.advance(1);
    run.advance(0.25);

    assertThat(Cooling.coreAfter(hot, 2.25, 22, Lying.RACK)).isEqualTo(run.core());
    assertThat(Cooling.lossAfter(hot, 2.25, 22, Lying.RACK)).isEqualTo(run.loss());
  }
}
