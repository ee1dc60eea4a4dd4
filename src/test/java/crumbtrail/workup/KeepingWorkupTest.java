package crumbtrail.workup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.workup.Reading.Known;
import org.junit.jupiter.api.Test;

class KeepingWorkupTest {
  @Test
  void a_day_in_the_refrigerator_is_worth_two_in_a_room() {
    Workup cold = Bakes.tinLoaf("'storage': {'place': 'refrigerator', 'time': '1 d'}");
    Workup room = Bakes.tinLoaf("'room': '21 C', 'storage': {'place': 'cupboard', 'time': '1 d'}");
    assertThat(Bakes.value(cold, "staleness")).isCloseTo(2.1, within(0.1));
    assertThat(Bakes.value(room, "staleness")).isCloseTo(1, within(0.01));
  }

  @Test
  void a_month_in_the_freezer_is_nothing() {
    Workup workup = Bakes.tinLoaf("'storage': {'place': 'freezer', 'time': '30 d'}");
    assertThat(Bakes.value(workup, "staleness")).isLessThan(1);
    assertThat(Bakes.value(workup, "mould hazard")).isLessThan(1);
  }

  @Test
  void warm_days_invite_mould_and_rope() {
    Workup workup =
        Bakes.tinLoaf("'room': '30 C', 'storage': {'place': 'bread bin', 'time': '5 d'}");
    assertThat(Bakes.value(workup, "mould hazard")).isGreaterThan(50);
    assertThat(Bakes.value(workup, "rope hazard")).isGreaterThan(50);
  }

  @Test
  void without_a_time_nothing_is_given_and_without_a_place_it_is_assumed() {
    assertThat(Bakes.reading(Bakes.tinLoaf("'room': '21 C'"), "staleness")).isEmpty();
    Workup workup = Bakes.tinLoaf("'storage': {'time': '3 d'}");
    assertThat(Bakes.reading(workup, "staleness").orElseThrow().known()).isEqualTo(Known.ASSUMED);
  }
}
