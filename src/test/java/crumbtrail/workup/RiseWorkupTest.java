package crumbtrail.workup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.workup.Reading.Known;
import org.junit.jupiter.api.Test;

class RiseWorkupTest {

  /**
   * Common practice: 1 % instant yeast and 2 % salt, bulk about an hour and proof about an hour
   * slightly warmer.
   */
  @Test
  void the_usual_dough_is_ready_after_the_usual_hours() {
    Workup workup =
        Bakes.tinLoaf(
            """
            'mixing': {'doughTemperature': '26 C'},
            'bulk': [{'time': '60 min', 'temperature': '26 C'}],
            'proof': [{'time': '60 min', 'temperature': '29 C'}]
            """);

    assertThat(Bakes.value(workup, "bulk ripeness")).isCloseTo(1, within(0.15));
    assertThat(Bakes.value(workup, "proof ripeness")).isCloseTo(1, within(0.2));
    assertThat(Bakes.value(workup, "whole rise")).isCloseTo(1, within(0.15));
    assertThat(Bakes.reading(workup, "bulk ripeness").orElseThrow().known())
        .isEqualTo(Known.WORKED_OUT);
  }

  @Test
  void twice_the_time_is_twice_as_ripe_and_a_cold_place_is_less() {
    double once = bulk("'time': '60 min', 'temperature': '26 C'");
    double twice = bulk("'time': '120 min', 'temperature': '26 C'");
    double cool = bulk("'time': '120 min', 'temperature': '16 C'");
    double cold = bulk("'time': '120 min', 'temperature': '4 C'");

    // Dry yeast wakes during the first hour, so that the second does a little more.
    assertThat(twice / once).isBetween(2.0, 2.3);
    assertThat(cool).isBetween(cold, twice);
    assertThat(cold).isLessThan(cool);
  }

  @Test
  void stages_add_up_and_the_cold_ones_are_told_apart() {
    Workup workup =
        Bakes.tinLoaf(
            """
            'bulk': [{'time': '1 h', 'temperature': '24 C'}, {'time': '14 h', 'temperature': '4 C'}],
            'proof': [{'time': '30 min', 'temperature': '21 C'},
                      {'time': '90 min', 'temperature': '28 C', 'humidity': '80 %'}]
            """);

    assertThat(Bakes.value(workup, "bulk time")).isEqualTo(15 * 60);
    assertThat(Bakes.value(workup, "bulk temperature")).isEqualTo(24);
    assertThat(Bakes.value(workup, "fridge time")).isEqualTo(14);
    assertThat(Bakes.value(workup, "fridge temperature")).isEqualTo(4);
    assertThat(Bakes.value(workup, "proof time")).isEqualTo(120);
    assertThat(Bakes.value(workup, "proof temperature")).isEqualTo(28);
    assertThat(Bakes.value(workup, "proof humidity")).isEqualTo(80);
  }

  @Test
  void a_place_without_a_temperature_is_the_room_and_without_a_room_a_guess() {
    Workup told = Bakes.tinLoaf("'room': '20 C', 'bulk': [{'time': '60 min'}]");
    Workup same =
        Bakes.tinLoaf("'room': '20 C', 'bulk': [{'time': '60 min', 'temperature': '20 C'}]");
    Workup silent = Bakes.tinLoaf("'bulk': [{'time': '60 min'}]");

    assertThat(Bakes.value(told, "bulk ripeness")).isEqualTo(Bakes.value(same, "bulk ripeness"));
    assertThat(Bakes.reading(told, "bulk ripeness").orElseThrow().known())
        .isEqualTo(Known.WORKED_OUT);
    assertThat(Bakes.reading(silent, "bulk ripeness").orElseThrow().known())
        .isEqualTo(Known.ASSUMED);
  }

  @Test
  void without_times_nothing_is_known_of_the_rise() {
    Workup workup = Bakes.tinLoaf("'room': '20 C', 'bulk': [{'temperature': '24 C'}]");

    assertThat(Bakes.reading(workup, "bulk time")).isEmpty();
    assertThat(Bakes.reading(workup, "bulk ripeness")).isEmpty();
    assertThat(Bakes.reading(workup, "proof ripeness")).isEmpty();
    assertThat(Bakes.reading(workup, "whole rise")).isEmpty();
  }

  @Test
  void a_rest_on_the_bench_raises_the_dough_before_the_proof() {
    String proof = "'room': '24 C', 'proof': [{'time': '60 min', 'temperature': '28 C'}]";
    double without = Bakes.value(Bakes.tinLoaf(proof), "proof ripeness");
    Workup rested = Bakes.tinLoaf(proof + ", 'shaping': {'benchRest': '20 min'}");

    assertThat(Bakes.value(rested, "bench rest")).isEqualTo(20);
    assertThat(Bakes.value(rested, "proof ripeness")).isGreaterThan(without * 1.1);
    assertThat(Bakes.value(rested, "proof time")).isEqualTo(60);
  }

  /** Yeast dies at 55 to 60 °C (Figoni 2003; Hamelman 2004). */
  @Test
  void of_a_dough_made_with_scalding_liquid_no_ripeness_is_reckoned() {
    String bulk = ", 'bulk': [{'time': '60 min', 'temperature': '26 C'}]";

    assertThat(
            Bakes.reading(
                Bakes.tinLoaf("'temperatures': {'liquid': '60 C'}" + bulk), "bulk ripeness"))
        .isEmpty();
    assertThat(
            Bakes.reading(
                Bakes.tinLoaf("'temperatures': {'liquid': '45 C'}" + bulk), "bulk ripeness"))
        .isPresent();
  }

  private static double bulk(String stage) {
    return Bakes.value(
        Bakes.tinLoaf("'mixing': {'doughTemperature': '26 C'}, 'bulk': [{" + stage + "}]"),
        "bulk ripeness");
  }
}
