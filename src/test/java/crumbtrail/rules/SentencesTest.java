package crumbtrail.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class SentencesTest {
  private static Sentences sentences;

  @BeforeAll
  static void read_the_sentence_file() throws IOException {
    sentences = new Sentences(Files.readString(TinyRules.SENTENCES));
  }

  @Test
  void a_limit_is_taken_apart_into_reading_number_and_unit() {
    assertThat(sentences.condition("The water balance is under -3.5 points"))
        .hasValue(Map.of("reading", "water balance", "limit", "-3.5", "unit", "points"));
  }

  @Test
  void a_stretch_may_name_the_unit_once_or_twice() {
    assertThat(sentences.condition("The salt is between 1 and 2 %"))
        .hasValue(Map.of("reading", "salt", "least", "1", "most", "2", "unit", "%"));
    assertThat(sentences.condition("The salt is between 1 % and 2 %"))
        .hasValue(Map.of("reading", "salt", "least", "1", "most", "2", "unit", "%", "unit2", "%"));
  }

  @Test
  void signs_in_a_row_are_told_apart() {
    assertThat(sentences.condition("The baker saw \"a b\" or \"c\" or \"d\""))
        .hasValue(Map.of("sign", "a b", "sign2", "c", "sign3", "d"));
  }

  @Test
  void far_too_low_is_not_taken_for_low() {
    assertThat(sentences.condition("The salt is far too low for this bread"))
        .hasValue(Map.of("reading", "salt"));
    assertThat(sentences.condition("The salt is low for this bread"))
        .hasValue(Map.of("reading", "salt"));
  }

  @Test
  void consequences_and_conditions_do_not_mix() {
    assertThat(sentences.consequence("Suspect \"salt too low\" plainly"))
        .hasValue(Map.of("cause", "salt too low"));
    assertThat(sentences.condition("Suspect \"salt too low\" plainly")).isEmpty();
    assertThat(sentences.consequence("The salt is low for this bread")).isEmpty();
  }

  @Test
  void a_sentence_must_be_whole() {
    assertThat(sentences.condition("If The salt is low for this bread")).isEmpty();
    assertThat(sentences.condition("The salt is low for this bread.")).isEmpty();
    assertThat(sentences.consequence("Suspect \"salt too low\" strongly")).isEmpty();
  }

  @Test
  void the_nearest_sentence_is_shown_with_gaps_for_what_varies() {
    assertThat(sentences.nearest("The salt is undr 1 %", true)).isEqualTo("The … is under … …");
    assertThat(sentences.nearest("Suspects \"x\" plainly", false))
        .isEqualTo("Suspect \"…\" plainly");
  }
}
