package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.quantity.Dimension;
import crumbtrail.quantity.Quantities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Expected numbers were worked out by hand from NIST SP 811: 28.35 g to the ounce, 25.4 mm to the
 * inch.
 */
class UnitsTest {

  @ParameterizedTest
  @CsvSource({
    "500, g, 500 g, 17.6 oz",
    "10, g, 10 g, 0.35 oz",
    "4.7, g, 4.7 g, 4.7 g",
    "1000, g, 1000 g, 2 lb 3 oz",
    "907.2, g, 907 g, 2 lb",
    "24, C, 24 °C, 75 °F",
    "4, C, 4 °C, 39 °F",
    "230, C, 230 °C, 445 °F",
    "-18, C, -18 °C, 0 °F",
    "2.54, cm, 2.54 cm, 1 in",
    "1600, m, 1600 m, 5250 ft",
    "5, ml, 5 ml, 1 tsp",
    "30, ml, 30 ml, 2 tbsp",
    "355, ml, 355 ml, 1½ cups",
    "59.2, ml, 59.2 ml, ¼ cup",
    "887, ml, 887 ml, 3¾ cups",
    "75, min, 75 min, 75 min",
    "62, %, 62 %, 62 %",
    "4.1, cm3/g, 4.1 cm³/g, 4.1 cm³/g"
  })
  void a_number_is_written_in_the_units_of_the_baker(
      double value, String unit, String metric, String us) {
    assertThat(Units.METRIC.quantity(value, unit)).isEqualTo(metric);
    assertThat(Units.US.quantity(value, unit)).isEqualTo(us);
  }

  @Test
  void a_difference_of_temperatures_does_not_begin_at_32() {
    assertThat(Units.US.difference(-5, "C")).isEqualTo("-9 °F");
    assertThat(Units.METRIC.difference(-5, "C")).isEqualTo("-5 °C");
    assertThat(Units.US.difference(10, "min")).isEqualTo("10 min");
  }

  @Test
  void both_ends_of_a_range_share_one_unit() {
    assertThat(Units.US.range(24, 26, "C")).isEqualTo("75–79 °F");
    assertThat(Units.US.range(450, 500, "g")).isEqualTo("15.9–17.6 oz");
    assertThat(Units.US.range(900, 1000, "g")).isEqualTo("2 lb to 2 lb 3 oz");
    assertThat(Units.US.spread(24, 26, "C")).isEqualTo("75–79");
    assertThat(Units.METRIC.range(24, 26, "C")).isEqualTo("24–26 °C");
  }

  @ParameterizedTest
  @CsvSource({
    "1 lb, MASS, 454 g, 16 oz",
    "75 F, TEMPERATURE, 23.9 °C, 75 °F",
    "1 cup, VOLUME, 237 ml, 1 cup",
    "9 in, LENGTH, 229 mm, 9 in",
    "2 h 30 min, TIME, 2 h 30 min, 2 h 30 min"
  })
  void a_quantity_as_written_can_be_told_in_either(
      String written, Dimension dimension, String metric, String us) {
    var quantity = Quantities.read(written, dimension).orElseThrow();
    assertThat(Units.METRIC.format(quantity)).isEqualTo(metric);
    assertThat(Units.US.format(quantity)).isEqualTo(us);
  }

  @Test
  void only_two_words_name_units() {
    assertThat(Units.read("us")).contains(Units.US);
    assertThat(Units.read("metric")).contains(Units.METRIC);
    assertThat(Units.read("US\r\nSet-Cookie: x")).isEmpty();
    assertThat(Units.read(null)).isEmpty();
  }
}
