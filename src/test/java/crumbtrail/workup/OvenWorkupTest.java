package crumbtrail.workup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.oven.Boiling;
import org.junit.jupiter.api.Test;

class OvenWorkupTest {
  private static final String STAGES =
      "'stages': [{'time': '15 min', 'oven': '230 C'}, {'time': '20 min', 'oven': '200 C'}]";

  @Test
  void the_first_stage_the_mean_over_time_and_the_whole_time_are_told_apart() {
    Workup workup = Bakes.tinLoaf("'baking': {" + STAGES + "}");

    assertThat(Bakes.value(workup, "oven temperature")).isEqualTo(230);
    // (15 × 230 + 20 × 200) / 35
    assertThat(Bakes.value(workup, "oven mean")).isCloseTo(7450 / 35.0, within(1e-9));
    assertThat(Bakes.value(workup, "bake time")).isEqualTo(35);
  }

  @Test
  void the_usual_bake_of_the_usual_loaf_is_all_it_wants_and_half_of_it_half() {
    var oven = Bakes.CATALOGUE.style("white-tin-loaf").orElseThrow().habits().oven();
    double grams =
        Bakes.CATALOGUE.style("white-tin-loaf").orElseThrow().habits().value("piece weight").get();
    String bake =
        "'shaping': {'pieceWeight': '%s g'}, 'baking': {'stages': [{'time': '%s min', 'oven': '%s C'}]}";

    Workup usual = Bakes.tinLoaf(bake.formatted(grams, oven.minutes(), oven.celsius()));
    Workup half = Bakes.tinLoaf(bake.formatted(grams, oven.minutes() / 2, oven.celsius()));
    Workup heavy = Bakes.tinLoaf(bake.formatted(grams * 2, oven.minutes(), oven.celsius()));
    Workup cool = Bakes.tinLoaf(bake.formatted(grams, oven.minutes(), oven.celsius() - 40));

    assertThat(Bakes.value(usual, "bake share")).isCloseTo(100, within(0.01));
    assertThat(Bakes.value(half, "bake share")).isCloseTo(50, within(0.01));
    assertThat(Bakes.value(heavy, "bake share")).isLessThan(85);
    assertThat(Bakes.value(cool, "bake share")).isLessThan(85);
  }

  @Test
  void a_pizza_oven_is_beyond_the_rule_for_bake_times() {
    Workup workup = Bakes.tinLoaf("'baking': {'stages': [{'time': '2 min', 'oven': '450 C'}]}");

    assertThat(Bakes.reading(workup, "bake share")).isEmpty();
    assertThat(Bakes.value(workup, "bake time")).isEqualTo(2);
  }

  @Test
  void at_the_sea_the_core_is_held_against_what_the_bread_usually_reaches() {
    double usual = baguetteCore();

    assertThat(margin(93, "")).isCloseTo(93 - usual, within(1e-9));
    assertThat(margin(usual, "")).isCloseTo(0, within(1e-9));
  }

  /**
   * Up a mountain the core is capped two degrees below boiling: water boils at 94.95 °C at 5000 ft,
   * 1524 m (Colorado State University Extension table: 203 °F), so 93 °C is done there and not at
   * the sea.
   */
  @Test
  void up_a_mountain_the_core_need_not_pass_what_boiling_allows() {
    double usual = baguetteCore();
    double capped = Boiling.at(1524) - 2;
    assertThat(capped).isCloseTo(92.95, within(0.05)).isLessThan(usual);

    assertThat(margin(93, ", 'altitude': '1524 m'")).isCloseTo(93 - capped, within(1e-6));
    assertThat(margin(93, ", 'altitude': '5000 ft'")).isCloseTo(93 - capped, within(1e-6));
    assertThat(margin(93, ", 'altitude': '1524 m'")).isPositive();
    assertThat(margin(93, "")).isNegative();
    assertThat(margin(90, ", 'altitude': '1524 m'")).isNegative();
  }

  @Test
  void a_little_height_changes_nothing_while_boiling_is_out_of_reach() {
    assertThat(margin(93, ", 'altitude': '100 m'")).isEqualTo(margin(93, ""));
  }

  @Test
  void without_a_core_or_a_usual_core_there_is_no_margin() {
    assertThat(Bakes.reading(Bakes.tinLoaf("'altitude': '1600 m'"), "core margin")).isEmpty();
  }

  @Test
  void cooling_and_keeping_come_in_minutes_and_days() {
    Workup workup = Bakes.tinLoaf("'cooling': {'time': '1 1/2 h'}, 'storage': {'time': '36 h'}");

    assertThat(Bakes.value(workup, "cooling time")).isEqualTo(90);
    assertThat(Bakes.value(workup, "storage time")).isCloseTo(1.5, within(1e-9));
  }

  private static double baguetteCore() {
    return Bakes.CATALOGUE
        .style("baguette")
        .orElseThrow()
        .range("core temperature")
        .orElseThrow()
        .low();
  }

  private static double margin(double core, String more) {
    return Bakes.value(
        Bakes.work(
            "{'style': 'baguette', 'formula': ['500 g flour'], 'process': {'baking': {'coreTemperature': '%s C'}%s}}"
                .formatted(core, more)),
        "core margin");
  }
}
