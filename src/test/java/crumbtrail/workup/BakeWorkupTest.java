package crumbtrail.workup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.workup.Reading.Known;
import org.junit.jupiter.api.Test;

class BakeWorkupTest {
  private static final String TIN =
      "'shaping': {'pieceWeight': '900 g'},"
          + "'vessel': {'kind': 'tin', 'size': '23 x 13 x 7 cm'},";

  @Test
  void a_usual_bake_is_done_and_loses_a_tenth_at_most() {
    Workup workup =
        Bakes.tinLoaf(TIN + "'baking': {'stages': [{'time': '38 min', 'oven': '215 C'}]}");

    assertThat(Bakes.value(workup, "core reached")).isGreaterThan(93);
    assertThat(Bakes.value(workup, "set after")).isBetween(15.0, 38.0);
    assertThat(Bakes.value(workup, "bake loss")).isBetween(5.0, 11.5);
    assertThat(Bakes.reading(workup, "core reached").orElseThrow().known())
        .isEqualTo(Known.WORKED_OUT);
    assertThat(workup.bake()).isPresent();
  }

  @Test
  void half_the_time_leaves_the_middle_raw_and_unset() {
    Workup workup =
        Bakes.tinLoaf(TIN + "'baking': {'stages': [{'time': '15 min', 'oven': '215 C'}]}");

    assertThat(Bakes.value(workup, "core reached")).isLessThan(85);
    assertThat(Bakes.reading(workup, "set after")).isEmpty();
  }

  /** Water boils at 94.7 °C at 1600 m (CSU Extension tables), and no middle passes that. */
  @Test
  void on_a_mountain_no_middle_passes_the_local_boiling_point() {
    Workup workup =
        Bakes.tinLoaf(
            TIN
                + "'altitude': '1600 m', 'baking': {'stages': [{'time': '80 min', 'oven': '215 C'}]}");

    assertThat(Bakes.value(workup, "core reached")).isLessThanOrEqualTo(94.8);
    assertThat(workup.bake().orElseThrow().wantedCore()).isLessThan(93);
  }

  @Test
  void a_loaf_cut_at_once_is_hot_and_after_three_hours_cool() {
    String bake =
        TIN + "'room': '21 C', 'baking': {'stages': [{'time': '38 min', 'oven': '215 C'}]},";
    Workup hot = Bakes.tinLoaf(bake + "'cooling': {'time': '10 min'}");
    Workup cool = Bakes.tinLoaf(bake + "'cooling': {'time': '3 h'}");

    assertThat(Bakes.value(hot, "core at the cut")).isGreaterThan(70);
    assertThat(Bakes.value(cool, "core at the cut")).isLessThan(36);
  }

  @Test
  void without_oven_or_time_nothing_is_known_of_the_bake() {
    Workup workup = Bakes.tinLoaf("'baking': {'stages': [{'time': '38 min'}]}");

    assertThat(Bakes.reading(workup, "core reached")).isEmpty();
    assertThat(workup.bake()).isEmpty();
  }

  /** Beyond 300 °C the oven model was held against nothing. */
  @Test
  void an_oven_beyond_the_models_range_is_marked() {
    Workup workup =
        Bakes.tinLoaf(TIN + "'baking': {'stages': [{'time': '10 min', 'oven': '400 C'}]}");

    assertThat(Bakes.reading(workup, "core reached").orElseThrow().known())
        .isEqualTo(Known.EXTRAPOLATED);
    assertThat(Bakes.reading(workup, "core reached").orElseThrow().trust()).isLessThan(0.6);
  }

  @Test
  void glass_and_dark_tins_heat_sooner_than_bright_ones() {
    double bright = set("tin");
    assertThat(set("dark tin")).isLessThan(bright);
    assertThat(set("glass loaf pan")).isCloseTo(set("dark tin"), within(0.5));
  }

  private static double set(String kind) {
    return Bakes.value(
        Bakes.tinLoaf(
            "'shaping': {'pieceWeight': '900 g'},"
                + "'vessel': {'kind': '%s', 'size': '23 x 13 x 7 cm'},".formatted(kind)
                + "'baking': {'stages': [{'time': '38 min', 'oven': '190 C'}]}"),
        "set after");
  }
}
