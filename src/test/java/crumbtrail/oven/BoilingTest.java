package crumbtrail.oven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoilingTest {

  /**
   * Boiling water by height: Colorado State University Extension (0, 2000, 5000, 7500 ft, whole
   * degrees) and Public Service of Colorado / NMSU E-215 (the rest, tenths). The tables are rounded
   * to whole degrees or follow local pressure, hence 0.6 °F. The Colorado guide's 193 °F at 10 000
   * ft is left out: it lies 1 °F below the other table's 194.0.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 212",
    "2000, 208",
    "5000, 203",
    "7500, 198",
    "3000, 206.4",
    "5500, 201.9",
    "7000, 199.2",
    "8000, 197.5",
    "10000, 194.0"
  })
  void boils_as_the_published_tables_say(double feet, double fahrenheit) {
    double celsius = Boiling.at(feet * 0.3048);

    assertThat(celsius * 9 / 5 + 32).isCloseTo(fahrenheit, within(0.6));
  }
}
