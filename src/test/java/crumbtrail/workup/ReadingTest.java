package crumbtrail.workup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.knowledge.Style.Range;
import crumbtrail.workup.Reading.Known;
import crumbtrail.workup.Reading.Place;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingTest {

  /**
   * Far is beyond the range by more than half its width or a quarter of the nearer edge, whichever
   * is more. 1.6 to 2.2: 0.4 below and 0.55 above. 20 to 40: 10 either way. -5 to 5: 5 either way.
   */
  @ParameterizedTest(name = "{2} against {0} to {1} is {3}")
  @CsvSource({
    "1.6, 2.2, 1.19, FAR_TOO_LOW",
    "1.6, 2.2, 1.21, LOW",
    "1.6, 2.2, 1.59, LOW",
    "1.6, 2.2, 1.6, USUAL",
    "1.6, 2.2, 2.2, USUAL",
    "1.6, 2.2, 2.21, HIGH",
    "1.6, 2.2, 2.74, HIGH",
    "1.6, 2.2, 2.76, FAR_TOO_HIGH",
    "20, 40, 9.9, FAR_TOO_LOW",
    "20, 40, 10.1, LOW",
    "20, 40, 49.9, HIGH",
    "20, 40, 50.1, FAR_TOO_HIGH",
    "-5, 5, -10.1, FAR_TOO_LOW",
    "-5, 5, -9.9, LOW",
    "-5, 5, 0, USUAL",
    "-5, 5, 9.9, HIGH",
    "-5, 5, 10.1, FAR_TOO_HIGH",
    "0, 8, 0, USUAL",
    "0, 8, 8.01, HIGH",
  })
  void a_value_has_its_place_against_the_usual_range(
      double low, double high, double value, Place place) {
    Reading reading = reading(value, Optional.of(new Range(low, high, "common practice")));

    assertThat(reading.place()).isEqualTo(place);
    assertThat(reading.belowUsual()).isEqualTo(place == Place.LOW || place == Place.FAR_TOO_LOW);
    assertThat(reading.farBelowUsual()).isEqualTo(place == Place.FAR_TOO_LOW);
    assertThat(reading.withinUsual()).isEqualTo(place == Place.USUAL);
    assertThat(reading.aboveUsual()).isEqualTo(place == Place.HIGH || place == Place.FAR_TOO_HIGH);
    assertThat(reading.farAboveUsual()).isEqualTo(place == Place.FAR_TOO_HIGH);
  }

  @Test
  void a_sum_that_misses_the_edge_by_rounding_alone_is_usual() {
    Optional<Range> usual = Optional.of(new Range(0.3, 2.2, "common practice"));

    assertThat(reading(0.1 + 0.2, usual).place()).isEqualTo(Place.USUAL);
    assertThat(reading(Math.nextDown(0.3), usual).place()).isEqualTo(Place.USUAL);
    assertThat(reading(Math.nextUp(2.2), usual).place()).isEqualTo(Place.USUAL);
  }

  // Four degrees above 24 to 28 are far for a dough, whatever a quarter of 28 is.
  @Test
  void far_is_nearer_on_a_thermometer_than_on_a_scale() {
    Optional<Range> usual = Optional.of(new Range(24, 28, "common practice"));
    Reading dough =
        Reading.of("dough temperature", 32, 32, 32, Known.MEASURED, usual, Reading.Scale.DEGREES);
    Reading amount = Reading.of("egg", 32, 32, 32, Known.MEASURED, usual, Reading.Scale.AMOUNT);

    assertThat(dough.place()).isEqualTo(Place.FAR_TOO_HIGH);
    assertThat(amount.place()).isEqualTo(Place.HIGH);
  }

  @Test
  void without_a_usual_range_nothing_is_said_of_it() {
    Reading reading = reading(3, Optional.empty());

    assertThat(reading.place()).isEqualTo(Place.UNKNOWN);
    assertThat(reading.belowUsual()).isFalse();
    assertThat(reading.withinUsual()).isFalse();
    assertThat(reading.aboveUsual()).isFalse();
  }

  @Test
  void an_exact_measurement_is_trusted_in_full() {
    assertThat(trust(3, 3, 3, Known.MEASURED, false)).isEqualTo(1);
    assertThat(trust(0, 0, 0, Known.WORKED_OUT, false)).isEqualTo(1);
  }

  @Test
  void a_spread_of_a_third_halves_the_trust_and_an_assumption_halves_it_again() {
    assertThat(trust(3, 2, 4, Known.WORKED_OUT, false)).isCloseTo(0.5, within(1e-9));
    assertThat(trust(3, 2, 4, Known.ASSUMED, false)).isCloseTo(0.25, within(1e-9));
    assertThat(trust(3, 3, 3, Known.ASSUMED, false)).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void the_widest_spread_leaves_a_quarter() {
    assertThat(trust(3, 0, 100, Known.MEASURED, false)).isCloseTo(0.25, within(1e-9));
    assertThat(trust(0, 0, 1, Known.MEASURED, false)).isCloseTo(0.25, within(1e-9));
  }

  /** Two points either way of a difference of nought: 2 on 10 is a fifth, 1 - 1.5 / 5 is 0.7. */
  @Test
  void the_spread_of_a_difference_is_held_against_ten_units() {
    assertThat(trust(0, -2, 2, Known.MEASURED, true)).isCloseTo(0.7, within(1e-9));
    assertThat(trust(50, 48, 52, Known.MEASURED, true)).isCloseTo(0.7, within(1e-9));
  }

  private static Reading reading(double value, Optional<Range> usual) {
    return Reading.of("salt", value, value, value, Known.MEASURED, usual, Reading.Scale.AMOUNT);
  }

  private static double trust(
      double value, double low, double high, Known known, boolean difference) {
    return Reading.of(
            "salt",
            value,
            low,
            high,
            known,
            Optional.empty(),
            difference ? Reading.Scale.DIFFERENCE : Reading.Scale.AMOUNT)
        .trust();
  }
}
