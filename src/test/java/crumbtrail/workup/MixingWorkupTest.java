package crumbtrail.workup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.workup.Reading.Known;
import org.junit.jupiter.api.Test;

/** The exchange rates are common practice, as the class says; these tests show the arithmetic. */
class MixingWorkupTest {
  private static final double WANTED =
      Bakes.CATALOGUE.style("white-tin-loaf").orElseThrow().habits().value("mixing time").get();

  @Test
  void the_kneading_that_the_style_wants_is_a_hundred_percent() {
    assertThat(development(mixing("stand mixer", "medium"))).isCloseTo(100, within(1e-6));
  }

  @Test
  void hands_and_low_speed_do_less_and_high_speed_does_more() {
    assertThat(development(mixing("by hand", "medium"))).isCloseTo(70, within(1e-6));
    assertThat(development(mixing("stand mixer", "low"))).isCloseTo(63, within(1e-6));
    assertThat(development(mixing("stand mixer", "low then medium"))).isCloseTo(81.5, within(1e-6));
    assertThat(development(mixing("stand mixer", "high"))).isCloseTo(142, within(1e-6));
  }

  @Test
  void a_rest_of_twenty_minutes_is_worth_near_a_quarter_and_a_minute_less_hardly_differs() {
    double twenty = development(mixing("stand mixer", "medium', 'rest': '20 min"));
    assertThat(twenty).isBetween(120.0, 126.0);
    assertThat(development(mixing("stand mixer", "medium', 'rest': '19 min")))
        .isCloseTo(twenty, within(0.6));
  }

  @Test
  void fat_from_the_start_holds_a_rich_dough_back() {
    String rich =
        """
        {'style': 'white tin loaf',
         'formula': ['500 g bread flour', '310 g water', '150 g butter', '5 g instant yeast'],
         'process': {'mixing': {'method': 'stand mixer', 'time': '10 min', 'fat': '%s'}}}
        """;
    double late = Bakes.value(Bakes.work(rich.formatted("after kneading")), "development");

    assertThat(Bakes.value(Bakes.work(rich.formatted("at the start")), "development"))
        .isLessThan(0.75 * late);
  }

  @Test
  void long_machine_work_on_weak_flour_passes_what_it_stands() {
    String weak =
        """
        {'style': 'white tin loaf', 'formula': ['500 g %s flour', '300 g water', '5 g yeast'],
         'process': {'mixing': {'method': 'stand mixer', 'time': '18 min', 'speed': 'high'}}}
        """;

    assertThat(Bakes.value(Bakes.work(weak.formatted("cake")), "overwork")).isGreaterThan(100);
    assertThat(
            Bakes.value(
                Bakes.tinLoaf("'mixing': {'method': 'by hand', 'time': '15 min'}"), "overwork"))
        .isLessThan(50);
  }

  @Test
  void folds_are_counted_over_all_stages() {
    Workup workup =
        Bakes.tinLoaf(
            mixing("stand mixer", "medium")
                + ", 'bulk': [{'temperature': '24 C', 'folds': 2}, {'folds': 1}]");

    assertThat(Bakes.value(workup, "folds")).isEqualTo(3);
    assertThat(Bakes.value(workup, "development")).isCloseTo(136, within(1e-6));
  }

  @Test
  void a_bread_machine_kneads_enough_and_that_is_assumed() {
    Reading development =
        Bakes.reading(Bakes.tinLoaf("'mixing': {'method': 'bread machine'}"), "development")
            .orElseThrow();

    assertThat(development.value()).isEqualTo(100);
    assertThat(development.known()).isEqualTo(Known.ASSUMED);
  }

  @Test
  void a_dough_not_kneaded_develops_with_time_and_one_of_which_nothing_is_told_is_left_open() {
    assertThat(development("'mixing': {'method': 'no-knead'}, 'bulk': [{'time': '12 h'}]"))
        .isCloseTo(60.5, within(0.1));
    assertThat(Bakes.reading(Bakes.tinLoaf("'mixing': {'method': 'by hand'}"), "development"))
        .isEmpty();
  }

  private static String mixing(String method, String speed) {
    return "'mixing': {'method': '%s', 'time': '%s min', 'speed': '%s'}"
        .formatted(method, WANTED, speed);
  }

  private static double development(String process) {
    return Bakes.value(Bakes.tinLoaf(process), "development");
  }
}
