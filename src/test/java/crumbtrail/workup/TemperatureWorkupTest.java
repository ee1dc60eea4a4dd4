package crumbtrail.workup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.workup.Reading.Known;
import org.junit.jupiter.api.Test;

class TemperatureWorkupTest {
  private static final String MIXER = "'mixing': {'method': 'stand mixer', 'time': '10 min'}";

  @Test
  void liquid_as_wanted_gives_the_dough_that_is_usual() {
    String start = "'room': '20 C', 'temperatures': {'liquid': '";
    double wanted = Bakes.value(Bakes.tinLoaf("'room': '20 C', " + MIXER), "liquid wanted");
    Workup with = Bakes.tinLoaf(start + wanted + " C'}, " + MIXER);

    assertThat(wanted).isBetween(20.0, 30.0);
    assertThat(Bakes.value(with, "dough temperature")).isCloseTo(25, within(0.1));
  }

  /** The rule of three gives 3 x 25 - 20 - 20 - 11.1 = 23.9 °C for this dough. */
  @Test
  void liquid_wanted_is_near_the_bakers_rule() {
    assertThat(Bakes.value(Bakes.tinLoaf("'room': '20 C', " + MIXER), "liquid wanted"))
        .isCloseTo(23.9, within(2.0));
  }

  @Test
  void a_cold_preferment_cools_the_dough() {
    String sheet =
        """
        {'style': 'baguette',
         'formula': ['300 g bread flour', '130 g water', '4 g instant yeast', '10 g salt'],
         'preferments': [{'name': 'poolish',
           'formula': ['200 g bread flour', '200 g water', '0.2 g instant yeast']}],
         'process': {'room': '22 C', 'temperatures': {'liquid': '25 C', 'preferment': '%s C'}}}
        """;
    double cold = Bakes.value(Bakes.work(sheet.formatted("5")), "dough temperature");
    double warm = Bakes.value(Bakes.work(sheet.formatted("22")), "dough temperature");

    assertThat(warm - cold).isBetween(6.0, 12.0);
  }

  /**
   * 4 kg of ice in 40 kg of water from a tap of 20 °C is water of 10 °C, by both trade formulas.
   */
  @Test
  void a_tenth_of_ice_cools_tap_water_by_ten_degrees() {
    String sheet =
        """
        {'formula': ['1000 g bread flour', '%s', '5 g instant yeast'],
         'process': {'room': '22 C', 'temperatures': {'liquid': '%s'}}}
        """;
    double iced =
        Bakes.value(
            Bakes.work(sheet.formatted("540 g water', '60 g ice", "20 C")), "dough temperature");
    double cold =
        Bakes.value(Bakes.work(sheet.formatted("600 g water", "10 C")), "dough temperature");

    assertThat(iced).isCloseTo(cold, within(0.05));
  }

  @Test
  void nothing_is_said_of_the_liquid_where_neither_room_nor_flour_is_known() {
    assertThat(Bakes.reading(Bakes.tinLoaf(MIXER), "liquid wanted")).isEmpty();
    assertThat(
            Bakes.reading(Bakes.tinLoaf("'room': '40 C', " + MIXER), "liquid wanted")
                .orElseThrow()
                .known())
        .isIn(Known.EXTRAPOLATED, Known.WORKED_OUT);
  }
}
