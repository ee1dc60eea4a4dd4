package crumbtrail.dough;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class YeastActivityTest {

  /**
   * Published: about 10 % per degree (bakemag.com, The science of fermentation); asked for: 8 to 12
   * % near 26 °C.
   */
  @Test
  void a_degree_near_26_speeds_yeast_by_8_to_12_percent() {
    assertThat(YeastActivity.at(26.5) / YeastActivity.at(25.5)).isBetween(1.08, 1.12);
  }

  /** Q10 of 2.0 to 2.6 over 20 to 35 °C: the span of the published per-degree figures. */
  @Test
  void ten_degrees_between_20_and_35_speed_yeast_two_to_two_point_six_times() {
    assertThat(YeastActivity.at(30) / YeastActivity.at(20)).isBetween(2.0, 2.6);
    assertThat(YeastActivity.at(35) / YeastActivity.at(25)).isBetween(2.0, 2.6);
  }

  /**
   * Gas production is best at 32 to 38 °C (yeast maker AB Mauri), activity at 32 to 40 °C
   * (bakemag.com).
   */
  @Test
  void the_optimum_lies_where_yeast_makers_put_it() {
    double best = 0;
    for (double celsius = 0; celsius < 50; celsius += 0.1) {
      if (YeastActivity.at(celsius) > YeastActivity.at(best)) {
        best = celsius;
      }
    }
    assertThat(best).isBetween(32.0, 40.0);
  }

  /**
   * A retarder at 1.7 to 4.4 °C stops dough all but wholly (bakingbusiness dictionary; Reinhart
   * 1991).
   */
  @Test
  void dough_is_nearly_still_in_the_refrigerator() {
    assertThat(YeastActivity.at(4)).isLessThan(0.03);
  }
}
