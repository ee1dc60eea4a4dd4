package crumbtrail.dough;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DoughTemperatureTest {

  /**
   * Wihlfahrt, A Treatise on Baking: flour 67 °F and water 82 °F in a shop of 85 °F mean a dough of
   * 78 °F. The rule averages three temperatures; the heat balance has no shop in it, so it may
   * differ by some 2 °C.
   */
  @Test
  void heat_balance_agrees_with_the_bakers_rule_within_two_degrees() {
    double dough = DoughTemperature.mixed(100, celsius(67), 60, celsius(82), 0);

    assertThat(dough).isCloseTo(celsius(78), within(2.0));
  }

  @Test
  void equal_temperatures_stay() {
    assertThat(DoughTemperature.mixed(500, 20, 300, 20, 0)).isCloseTo(20, within(1e-9));
  }

  @Test
  void a_dough_comes_to_the_temperature_of_its_place() {
    double lag = DoughTemperature.timeConstant(900);

    assertThat(DoughTemperature.after(26, 4, lag, lag)).isCloseTo(4 + 22 / Math.E, within(1e-9));
    assertThat(DoughTemperature.after(26, 4, 100 * lag, lag)).isCloseTo(4, within(1e-6));
  }

  private static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }
}
