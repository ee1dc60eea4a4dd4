package crumbtrail.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Stage;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** A dough fitted to the times of its baker. */
class ScheduleTest extends AdviceKitchen {
  private static final BakeSheet YEASTED =
      sheet(
          """
          {"style": "white tin loaf",
           "formula": ["500 g bread flour", "310 g water", "5 g instant yeast", "10 g salt"],
           "process": {"room": "23 C", "mixing": {"doughTemperature": "25 C"},
             "bulk": [{"time": "90 min", "temperature": "25 C", "folds": 2, "covered": true}],
             "proof": [{"time": "60 min", "temperature": "28 C"}]}}
          """);

  private static final BakeSheet SOUR =
      sheet(
          """
          {"style": "sourdough country loaf",
           "formula": ["450 g bread flour", "310 g water", "100 g starter", "10 g salt"],
           "process": {"room": "24 C", "mixing": {"doughTemperature": "25 C"},
             "bulk": [{"time": "5 h", "temperature": "25 C"}],
             "proof": [{"time": "90 min", "temperature": "24 C"}]}}
          """);

  private final Schedule schedule = new Schedule(REASONING, RULES.catalogue(), RULES.pantry());

  @Test
  void a_first_rise_of_two_hours_is_just_ripe_then_and_so_is_the_proof() {
    BakeSheet fitted = schedule.fitted(YEASTED, wish(120, 0, 0));
    assertThat(reading(fitted, "bulk time")).isEqualTo(120);
    assertThat(reading(fitted, "bulk ripeness")).isCloseTo(1, within(0.05));
    assertThat(reading(fitted, "proof ripeness")).isCloseTo(1, within(0.05));
    assertThat(schedule.notes())
        .hasSize(2)
        .allMatch(note -> note.startsWith("For these times the "))
        .anyMatch(note -> note.matches("For these times the yeast becomes .* g instant yeast .*"))
        .anyMatch(
            note -> note.matches("For these times the time of the final proof becomes .*min\\."));
  }

  @Test
  void both_times_told_leave_the_proof_as_it_was_wished() {
    BakeSheet fitted = schedule.fitted(YEASTED, wish(120, 75, 0));
    assertThat(reading(fitted, "proof time")).isEqualTo(75);
    assertThat(reading(fitted, "bulk ripeness")).isCloseTo(1, within(0.05));
    assertThat(schedule.notes()).hasSize(1);
  }

  @Test
  void a_proof_alone_is_what_the_yeast_is_fitted_to() {
    BakeSheet fitted = schedule.fitted(YEASTED, wish(0, 90, 0));
    assertThat(reading(fitted, "bulk time")).isEqualTo(90);
    assertThat(reading(fitted, "proof time")).isEqualTo(90);
    assertThat(reading(fitted, "proof ripeness")).isCloseTo(1, within(0.05));
    assertThat(reading(fitted, "yeast")).isLessThan(reading(YEASTED, "yeast"));
  }

  @Test
  void a_night_in_the_cold_begins_with_half_an_hour_in_the_warm() {
    List<Stage> bulk = schedule.fitted(YEASTED, wish(0, 0, 10)).process().bulk();
    assertThat(bulk).hasSize(2);
    assertThat(bulk.get(0).time().orElseThrow().value()).isEqualTo(30);
    assertThat(bulk.get(0).temperature().orElseThrow().value()).isEqualTo(25);
    assertThat(bulk.get(0).folds()).isEqualTo(YEASTED.process().bulk().get(0).folds()).isPresent();
    assertThat(bulk.get(0).covered()).contains(true);
    assertThat(bulk.get(1).time().orElseThrow().value()).isEqualTo(600);
    assertThat(bulk.get(1).temperature().orElseThrow().value()).isEqualTo(4);
    assertThat(bulk.get(1).covered()).contains(true);
    assertThat(bulk.get(1).folds()).isEmpty();
  }

  @Test
  void a_night_is_put_in_where_no_first_rise_was_told() {
    BakeSheet silent =
        sheet(
            "{\"style\": \"white tin loaf\", \"formula\": [\"500 g bread flour\","
                + " \"310 g water\", \"5 g instant yeast\", \"10 g salt\"]}");
    List<Stage> bulk = schedule.fitted(silent, wish(0, 0, 12)).process().bulk();
    assertThat(bulk).hasSize(2);
    assertThat(bulk.get(0).temperature()).isEmpty();
    assertThat(bulk.get(1).time().orElseThrow().value()).isEqualTo(720);
  }

  @Test
  void a_sourdough_is_fitted_by_its_starter_and_a_sourdough_with_yeast_by_that() {
    BakeSheet slow = schedule.fitted(SOUR, wish(420, 0, 0));
    // A starter is weighed to the percent of the flour.
    assertThat(reading(slow, "bulk ripeness")).isCloseTo(1, within(0.1));
    assertThat(grams(slow, "starter")).isLessThan(grams(SOUR, "starter"));
    assertThat(schedule.notes()).anyMatch(note -> note.contains("the ripe starter becomes"));

    BakeSheet helped =
        sheet(
            """
            {"style": "sourdough country loaf",
             "formula": ["450 g bread flour", "310 g water", "100 g starter", "10 g salt",
                         "2 g instant yeast"],
             "process": {"room": "24 C", "mixing": {"doughTemperature": "25 C"},
               "bulk": [{"time": "3 h", "temperature": "25 C"}]}}
            """);
    BakeSheet fitted = schedule.fitted(helped, wish(75, 0, 0));
    assertThat(grams(fitted, "starter")).isEqualTo(grams(helped, "starter"));
    assertThat(reading(fitted, "yeast")).isNotEqualTo(reading(helped, "yeast"));
  }

  @Test
  void hours_that_no_yeast_can_meet_are_told_with_how_far_the_dough_comes() {
    BakeSheet hasty = schedule.fitted(YEASTED, wish(3, 60, 0));
    assertThat(reading(hasty, "yeast")).isEqualTo(reading(YEASTED, "yeast"));
    assertThat(schedule.notes())
        .singleElement()
        .asString()
        .matches(
            "No setting of the yeast makes the dough just ripe in these hours; it comes to"
                + " 0(\\.\\d+)? times ready\\.");
  }

  @Test
  void a_dough_that_is_ripe_as_it_stands_is_left_alone_without_a_word() {
    BakeSheet fitted = schedule.fitted(YEASTED, wish(120, 75, 0));
    Schedule again = new Schedule(REASONING, RULES.catalogue(), RULES.pantry());
    assertThat(again.fitted(fitted, wish(120, 75, 0))).isEqualTo(fitted);
    assertThat(again.notes()).isEmpty();
  }

  private static double grams(BakeSheet sheet, String knob) {
    return new Knobs(RULES.catalogue(), RULES.pantry())
        .named(knob)
        .orElseThrow()
        .grams(sheet)
        .orElseThrow();
  }

  private static Wish wish(double bulk, double proof, double overnight) {
    return new Wish(
        Optional.empty(),
        Optional.empty(),
        told(bulk),
        told(proof),
        told(overnight),
        OptionalDouble.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        List.of(),
        false);
  }

  private static OptionalDouble told(double amount) {
    return amount > 0 ? OptionalDouble.of(amount) : OptionalDouble.empty();
  }
}
