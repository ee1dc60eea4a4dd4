package crumbtrail.lessons;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.knowledge.KnobKind;
import crumbtrail.rules.RuleBook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ranges as people type them. */
class TurnTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          salt | 0..3% | 0 | 3
          salt | 0-3 % | 0 | 3
          salt | 0,5 % to 2,5 % | 0.5 | 2.5
          salt | 1.5...2 | 1.5 | 2
          proof-time | 30 min..2 h | 30 | 120
          proof-time | 30-120 | 30 | 120
          proof-temperature | 68..86 F | 20 | 30
          proof-temperature | 20 C … 30 °C | 20 | 30
          fridge-time | 1 d..2 d | 24 | 48
          altitude | 0..3 km | 0 | 3000
          dough-weight | 0.5..1 kg | 500 | 1000
          tin | 1.5..3 cm3/g | 1.5 | 3
          """)
  void a_range_is_read(String knob, String text, double low, double high) {
    Turn.Reading reading = Turn.read(knob(knob), text);
    assertThat(reading.problems()).isEmpty();
    assertThat(reading.turn().orElseThrow().low()).isCloseTo(low, within(1e-9));
    assertThat(reading.turn().orElseThrow().high()).isCloseTo(high, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          salt | 2% | is no range
          salt | '' | is no range
          salt | a..b | no range of two numbers
          salt | 3..1% | does not rise
          salt | 0..90% | beyond what makes sense
          salt | 0..3 C | has a unit that salt has not
          proof-time | 0..1 g | has a unit
          """)
  void a_range_that_cannot_be_used_is_refused_with_what_would_do(
      String knob, String text, String says) {
    Turn.Reading reading = Turn.read(knob(knob), text == null ? "" : text);
    assertThat(reading.turn()).isEmpty();
    assertThat(reading.problems()).hasSize(1);
    assertThat(reading.problems().get(0).what()).contains(says);
    assertThat(reading.problems().get(0).remedy()).contains("like");
  }

  @Test
  void the_example_of_every_knob_is_a_range_of_it() {
    for (KnobKind knob : RuleBook.bundled().catalogue().knowledge().knobs()) {
      assertThat(Turn.read(knob, Turn.example(knob)).problems()).as(knob.key()).isEmpty();
    }
  }

  private static KnobKind knob(String key) {
    return RuleBook.bundled().catalogue().knowledge().knobs().stream()
        .filter(one -> one.key().equals(key))
        .findFirst()
        .orElseThrow();
  }
}
