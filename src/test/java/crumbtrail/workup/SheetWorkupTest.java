package crumbtrail.workup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.workup.Reading.Known;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetWorkupTest {

  @Test
  void each_reading_stands_beside_the_usual_range_of_the_style() {
    Workup workup = Bakes.tinLoaf("'room': '20 C'");

    assertThat(workup.style().key()).isEqualTo("white-tin-loaf");
    assertThat(Bakes.value(workup, "hydration")).isCloseTo(62, within(0.01));
    assertThat(Bakes.value(workup, "salt")).isCloseTo(2, within(0.01));
    assertThat(Bakes.reading(workup, "salt").orElseThrow().usual())
        .isEqualTo(Bakes.CATALOGUE.style("white-tin-loaf").orElseThrow().range("salt"))
        .isPresent();
    assertThat(workup.assumptions()).noneMatch(said -> said.contains("No style"));
  }

  @Test
  void no_reading_stands_twice_and_all_are_in_the_catalogue() {
    Workup workup = Bakes.tinLoaf("'room': '20 C', 'mixing': {'doughTemperature': '25 C'}");

    assertThat(workup.readings()).extracting(Reading::name).doesNotHaveDuplicates();
    assertThat(workup.readings())
        .allSatisfy(
            reading -> {
              assertThat(Bakes.CATALOGUE.reading(reading.name())).isPresent();
              assertThat(reading.low()).isLessThanOrEqualTo(reading.value());
              assertThat(reading.high()).isGreaterThanOrEqualTo(reading.value());
              assertThat(reading.trust()).isBetween(0.0, 1.0);
            });
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "bread", "My loaf", "homemade bread", "yeasted bread"})
  void a_bare_bread_is_any_bread_and_nothing_was_misunderstood(String style) {
    Workup workup = Bakes.work("{'style': '" + style + "', 'formula': ['500 g bread flour']}");

    assertThat(workup.heard().notUnderstood()).isEmpty();
    assertThat(workup.style().key()).isEqualTo(StyleFinder.ANY_BREAD);
  }

  @Test
  void a_style_that_is_not_known_comes_back_word_for_word_and_the_ranges_are_named() {
    Workup workup =
        Bakes.work("{'style': 'gravel cake of the outer isles', 'formula': ['500 g bread flour']}");

    assertThat(workup.heard().notUnderstood()).containsExactly("gravel cake of the outer isles");
    assertThat(workup.assumptions()).anyMatch(said -> said.contains(workup.style().name()));
  }

  @Test
  void the_title_names_the_style_where_the_style_is_silent() {
    assertThat(
            Bakes.work("{'title': 'Sunday baguettes', 'formula': ['500 g bread flour']}")
                .style()
                .key())
        .isEqualTo("baguette");
  }

  @Test
  void a_formula_with_starter_alone_suggests_a_sourdough() {
    Workup workup =
        Bakes.work("{'formula': ['400 g flour', '250 g water', '100 g sourdough starter']}");

    assertThat(workup.style().key()).isEqualTo("sourdough-loaf");
  }

  @Test
  void a_measured_dough_temperature_beats_the_reckoning_from_its_parts() {
    String parts = "'room': '20 C', 'temperatures': {'liquid': '38 C'}";
    Workup measured = Bakes.tinLoaf(parts + ", 'mixing': {'doughTemperature': '29 C'}");
    Workup reckoned = Bakes.tinLoaf(parts);

    assertThat(Bakes.value(measured, "dough temperature")).isEqualTo(29);
    assertThat(Bakes.reading(measured, "dough temperature").orElseThrow().known())
        .isEqualTo(Known.MEASURED);
    assertThat(Bakes.value(reckoned, "dough temperature")).isBetween(20.0, 38.0);
    assertThat(Bakes.reading(reckoned, "dough temperature").orElseThrow().known())
        .isEqualTo(Known.WORKED_OUT);
    assertThat(Bakes.reading(Bakes.tinLoaf("'altitude': '10 m'"), "dough temperature")).isEmpty();
  }

  @Test
  void height_above_the_sea_is_told_in_metres() {
    assertThat(Bakes.value(Bakes.tinLoaf("'altitude': '5000 ft'"), "altitude"))
        .isCloseTo(1524, within(0.1));
  }

  @Test
  void what_an_unknown_ingredient_leaves_open_is_said() {
    Workup workup =
        Bakes.work("{'formula': ['500 g bread flour', '300 g water', '50 g ground moon rock']}");

    assertThat(workup.heard().notUnderstood()).containsExactly("50 g ground moon rock");
    assertThat(workup.assumptions())
        .anyMatch(said -> said.startsWith("\"50 g ground moon rock\": ") && said.contains("open"));
  }
}
