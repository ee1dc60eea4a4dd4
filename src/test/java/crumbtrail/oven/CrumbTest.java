package crumbtrail.oven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Crumb and kinetics against steam tables and the equations of docs/science/oven.md. */
class CrumbTest {

  /** Saturated steam: pressure in kPa and density in kg/m³, from steam tables. */
  @ParameterizedTest
  @CsvSource({"25, 3.17, 0.0231", "50, 12.35, 0.0831", "80, 47.4, 0.2934", "100, 101.4, 0.5977"})
  void vapour_is_as_dense_as_the_steam_tables_say(double celsius, double kpa, double density) {
    assertThat(Crumb.saturation(celsius) / 1000).isCloseTo(kpa, Percentage.withPercentage(1));
    assertThat(Crumb.vapour(celsius)).isCloseTo(density, Percentage.withPercentage(2));
    assertThat(Crumb.density(celsius)).isCloseTo(density, Percentage.withPercentage(2));
  }

  @Test
  void the_table_is_read_between_degrees_and_ends_at_both_ends() {
    assertThat(Crumb.vapour(60.25)).isCloseTo(Crumb.density(60.25), within(2e-5));
    assertThat(Crumb.vapour(60.75)).isCloseTo(Crumb.density(60.75), within(2e-5));
    assertThat(Crumb.vapour(-5)).isEqualTo(Crumb.vapour(0));
    assertThat(Crumb.vapour(0)).isCloseTo(Crumb.density(0), within(1e-9));
    assertThat(Crumb.vapour(300)).isCloseTo(Crumb.density(109), Percentage.withPercentage(0.1));
    assertThat(Crumb.vapour(108.5)).isLessThan(Crumb.vapour(300));
  }

  /** Zanoni's lines: exp(0.01 e - 15.25) ρ c with e = (979 - ρ)/9.9 percent, from 0 to 90. */
  @ParameterizedTest
  @CsvSource({"301, 68.4848", "979, 0", "1200, 0", "484, 50", "60, 90"})
  void without_vapour_the_web_conducts_as_published(double density, double porosity) {
    double web = Math.exp(0.01 * porosity - 15.25) * density * 2800;
    Crumb crumb = new Crumb(density, 100, 0);

    assertThat(crumb.conduction(20)).isCloseTo(web, Percentage.withPercentage(0.01));
    assertThat(crumb.conduction(95)).isCloseTo(web, Percentage.withPercentage(0.01));
  }

  /**
   * f e D L (dρ/dT) p/(p - p_v), with the slope of the steam tables: from 0.0655 at 45 to 0.1045
   * kg/m³ at 55 °C, and from 0.4236 at 90 to 0.5977 at 100 °C, where the last factor is at its cap.
   */
  @ParameterizedTest
  @CsvSource({"50, 0.00390, 1.139", "95, 0.01741, 3"})
  void vapour_carries_heat_as_the_slope_of_the_steam_tables(
      double celsius, double slope, double drift) {
    double diffusion = 2.2e-5 * Math.pow((celsius + 273.15) / 273.15, 1.81);
    double porosity = 1 - 300 / 1250.0;
    double whole = porosity * diffusion * 2.26e6 * slope * drift;
    double web = new Crumb(300, 100, 0).conduction(celsius);

    assertThat(new Crumb(300, 100, 1).conduction(celsius) - web)
        .isCloseTo(whole, Percentage.withPercentage(3));
    assertThat(new Crumb(300, 100, 0.5).conduction(celsius) - web)
        .isCloseTo(whole / 2, Percentage.withPercentage(3));
  }

  /** Thinner air carries vapour farther: at 90 °C of boiling, 70.1 kPa, 1.45 times as far. */
  @Test
  void up_a_mountain_vapour_carries_more() {
    double web = new Crumb(300, 100, 0).conduction(30);
    double sea = new Crumb(300, 100, 1).conduction(30) - web;
    double high = new Crumb(300, 90, 1).conduction(30) - web;

    // At 30 °C with 4.25 kPa of vapour: (101.3/97.1) at the sea, (70.1/65.9) up there.
    assertThat(high / sea).isCloseTo(101.3 / 70.1 * (70.1 / 65.9) / (101.3 / 97.1), within(0.01));
  }

  @Test
  void dough_without_gas_carries_none_by_vapour() {
    assertThat(new Crumb(1300, 100, 1).conduction(60))
        .isEqualTo(new Crumb(1300, 100, 0).conduction(60));
  }

  @ParameterizedTest
  @CsvSource({"150", "200.5", "249.75"})
  void a_crust_browns_as_arrhenius_says(double celsius) {
    double rate = 42_000 * Math.exp(-64_151 / (8.314 * (celsius + 273.15)));

    assertThat(Kinetics.browning(celsius)).isCloseTo(rate, Percentage.withPercentage(0.1));
    assertThat(Kinetics.browningHalfTime(celsius))
        .isCloseTo(0.693147 / rate / 60, Percentage.withPercentage(0.1));
  }

  @ParameterizedTest
  @CsvSource({"60", "75.5", "90.25"})
  void starch_swells_as_arrhenius_says(double celsius) {
    double rate = 2.8e18 * Math.exp(-138_000 / (8.314 * (celsius + 273.15)));

    assertThat(Kinetics.starch(celsius)).isCloseTo(rate, Percentage.withPercentage(0.3));
  }

  @Test
  void beyond_the_tables_their_ends_stand() {
    assertThat(Kinetics.browning(-20)).isEqualTo(Kinetics.browning(0)).isPositive();
    assertThat(Kinetics.browning(900)).isGreaterThan(Kinetics.browning(399.5));
    assertThat(Kinetics.starch(500)).isCloseTo(Kinetics.starch(109.999), within(1e-3));
    assertThat(1 - Math.exp(-Kinetics.SET)).isCloseTo(0.97, within(1e-9));
  }
}
