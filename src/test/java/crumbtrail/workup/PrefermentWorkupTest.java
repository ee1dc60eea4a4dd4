package crumbtrail.workup;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.workup.Reading.Known;
import org.junit.jupiter.api.Test;

class PrefermentWorkupTest {
  private static Workup poolish(String yeast, String stages) {
    return Bakes.work(
        """
        {'style': 'baguette',
         'formula': ['700 g bread flour', '380 g water', '4 g instant yeast', '20 g salt'],
         'preferments': [{'name': 'poolish',
           'formula': ['300 g bread flour', '300 g water', '%s'], 'stages': [%s]}]}
        """
            .formatted(yeast, stages));
  }

  private static Workup levain(String stages) {
    return Bakes.work(
        """
        {'style': 'sourdough loaf',
         'formula': ['450 g bread flour', '320 g water', '10 g salt'],
         'preferments': [{'name': 'levain',
           'formula': ['50 g bread flour', '50 g water', '10 g sourdough starter'],
           'stages': [%s]}]}
        """
            .formatted(stages));
  }

  @Test
  void an_overnight_poolish_is_ripe() {
    Workup workup = poolish("0.24 g instant yeast", "{'time': '14 h', 'temperature': '20 C'}");
    assertThat(Bakes.value(workup, "preferment ripeness")).isBetween(0.8, 1.2);
  }

  @Test
  void fresh_yeast_counts_a_third() {
    Workup workup = poolish("0.72 g fresh yeast", "{'time': '14 h', 'temperature': '20 C'}");
    assertThat(Bakes.value(workup, "preferment ripeness")).isBetween(0.8, 1.2);
  }

  @Test
  void a_levain_of_three_hours_is_young_and_of_a_day_is_old() {
    assertThat(Bakes.value(levain("{'time': '3 h', 'temperature': '24 C'}"), "preferment ripeness"))
        .isLessThan(0.5);
    assertThat(
            Bakes.value(levain("{'time': '24 h', 'temperature': '25 C'}"), "preferment ripeness"))
        .isGreaterThan(3);
  }

  @Test
  void a_place_of_unknown_warmth_is_assumed_and_no_stage_gives_no_reading() {
    assertThat(
            Bakes.reading(levain("{'time': '8 h'}"), "preferment ripeness").orElseThrow().known())
        .isEqualTo(Known.ASSUMED);
    assertThat(Bakes.reading(levain(""), "preferment ripeness")).isEmpty();
  }
}
