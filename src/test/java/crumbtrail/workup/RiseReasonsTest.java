package crumbtrail.workup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Hours, warmth and leavening are told apart, and together make the whole rise. */
class RiseReasonsTest {
  private static final String HOURS =
      "'mixing': {'doughTemperature': '%s C'}, 'bulk': [{'time': '%s min', 'temperature': '%s C'}],"
          + " 'proof': [{'time': '%s min', 'temperature': '%s C'}]";

  @Test
  void the_three_shares_multiply_to_the_whole() {
    Workup workup = Bakes.tinLoaf(HOURS.formatted(21, 70, 19, 60, 22));
    double product =
        Bakes.value(workup, "rise by the clock")
            * Bakes.value(workup, "rise by warmth")
            * Bakes.value(workup, "rise by leavening");

    assertThat(product).isCloseTo(Bakes.value(workup, "whole rise"), within(1e-6));
  }

  @Test
  void a_cold_kitchen_shows_in_the_warmth_alone() {
    Workup usual = Bakes.tinLoaf(HOURS.formatted(25, 70, 25, 60, 27));
    Workup cold = Bakes.tinLoaf(HOURS.formatted(15, 70, 15, 60, 16));

    assertThat(Bakes.value(cold, "rise by warmth"))
        .isLessThan(0.5 * Bakes.value(usual, "rise by warmth"));
    // What a proof wants depends on the gas that shaping leaves, so the clock moves a little.
    assertThat(Bakes.value(cold, "rise by the clock") / Bakes.value(usual, "rise by the clock"))
        .isCloseTo(1, within(0.15));
  }

  @Test
  void half_the_hours_show_in_the_clock() {
    Workup whole = Bakes.tinLoaf(HOURS.formatted(25, 80, 25, 80, 27));
    Workup half = Bakes.tinLoaf(HOURS.formatted(25, 40, 25, 40, 27));

    assertThat(Bakes.value(half, "rise by the clock"))
        .isBetween(
            0.3 * Bakes.value(whole, "rise by the clock"),
            0.6 * Bakes.value(whole, "rise by the clock"));
    assertThat(Bakes.value(half, "rise by warmth"))
        .isCloseTo(Bakes.value(whole, "rise by warmth"), within(0.1));
  }

  @Test
  void a_fifth_of_the_yeast_shows_in_the_leavening() {
    Workup little =
        Bakes.work(
            """
            {'style': 'white tin loaf',
             'formula': ['500 g bread flour', '310 g water', '1 g instant yeast', '10 g salt'],
             'process': {%s}}
            """
                .formatted(HOURS.formatted(25, 70, 25, 60, 27)));

    assertThat(Bakes.value(little, "rise by leavening")).isLessThan(0.3);
    assertThat(Bakes.value(little, "rise by warmth")).isCloseTo(1, within(0.15));
  }

  @Test
  void a_sourdough_has_a_ph_and_a_yeast_loaf_has_none() {
    Workup sour =
        Bakes.work(
            """
            {'style': 'sourdough loaf',
             'formula': ['500 g bread flour', '350 g water', '100 g ripe starter', '10 g salt'],
             'process': {'bulk': [{'time': '6 h', 'temperature': '25 C'}],
                         'proof': [{'time': '2 h', 'temperature': '25 C'}]}}
            """);
    Workup yeast = Bakes.tinLoaf(HOURS.formatted(25, 70, 25, 60, 27));

    assertThat(Bakes.value(sour, "acidity")).isBetween(3.6, 4.6);
    assertThat(Bakes.reading(yeast, "acidity")).isEmpty();
  }

  @Test
  void a_tin_of_known_lengths_tells_how_high_the_dough_stands() {
    Workup workup =
        Bakes.tinLoaf(
            "'shaping': {'pieceWeight': '800 g'},"
                + "'vessel': {'kind': 'tin', 'size': '23 x 13 x 7 cm'}, "
                + HOURS.formatted(25, 70, 25, 75, 28));

    assertThat(Bakes.value(workup, "over-run height"))
        .isGreaterThan(Bakes.value(workup, "proof height"));
    assertThat(Bakes.value(workup, "proof height")).isBetween(-4.0, 4.0);
  }
}
