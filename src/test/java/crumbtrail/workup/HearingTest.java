package crumbtrail.workup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.KnowledgeFolder;
import crumbtrail.rules.TinyRules;
import crumbtrail.sheet.BakeSheet.Degree;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HearingTest {
  @TempDir static Path folder;

  @Test
  void a_question_says_nothing_of_what_was_done() {
    Heard heard =
        hear(
            "{'formula': ['500 g flour'], 'process': {'remarks': ['should I use less yeast?', 'is it my oven?']}}");

    assertThat(heard.circumstances())
        .extracting(Heard.Circumstance::key)
        .doesNotContain("yeast-dose-cut");
    assertThat(heard.notUnderstood()).isEmpty();
  }

  private static Hearing hearing;

  @BeforeAll
  static void read_the_tiny_folder() throws Exception {
    hearing = new Hearing(new Catalogue(KnowledgeFolder.read(TinyRules.write(folder))));
  }

  @Test
  void a_phrase_is_taken_for_its_sign_in_the_words_of_the_baker() {
    assertThat(hear("{'seen': ['it was heavy inside']}").signs())
        .singleElement()
        .satisfies(
            sign -> {
              assertThat(sign.key()).isEqualTo("dense-crumb");
              assertThat(sign.seen()).isTrue();
              assertThat(sign.degree()).isEqualTo(Degree.PLAIN);
              assertThat(sign.words()).contains("heavy inside");
            });
  }

  @Test
  void a_key_will_do_with_hyphens_with_spaces_and_in_capitals() {
    for (String key : new String[] {"pale-crust", "pale crust", "Pale-Crust", " PALE CRUST "}) {
      assertThat(hear("{'seen': ['" + key + "']}").signs())
          .extracting(Heard.Sign::key)
          .containsExactly("pale-crust");
    }
  }

  @Test
  void a_key_is_quoted_by_the_name_of_its_sign_and_words_as_they_are() {
    assertThat(hear("{'seen': ['pale-crust'], 'notSeen': ['dense-crumb']}").signs())
        .allSatisfy(sign -> assertThat(sign.words()).isNotBlank().doesNotContain("-"));
    assertThat(hear("{'seen': ['pale crust']}").signs())
        .singleElement()
        .satisfies(sign -> assertThat(sign.words()).isEqualTo("pale crust"));
  }

  @Test
  void a_denied_sign_is_a_sign_looked_for_and_not_seen() {
    assertThat(hear("{'seen': ['it was not sour']}").signs())
        .extracting(Heard.Sign::key, Heard.Sign::seen)
        .containsExactly(tuple("sour-smell", false));
    assertThat(
            hear("{'formula': ['500 g flour'], 'notSeen': ['sour smell', 'a flat top']}").signs())
        .extracting(Heard.Sign::key, Heard.Sign::seen)
        .containsExactlyInAnyOrder(tuple("sour-smell", false), tuple("flat-top", false));
  }

  @Test
  void how_marked_a_sign_was_comes_from_the_field_or_from_the_words() {
    assertThat(degree("{'seen': ['slightly sour']}")).isEqualTo(Degree.SLIGHT);
    assertThat(degree("{'seen': ['sour']}")).isEqualTo(Degree.PLAIN);
    assertThat(degree("{'seen': ['extremely sour']}")).isEqualTo(Degree.MARKED);
    assertThat(degree("{'seen': [{'sign': 'pale-crust', 'degree': 'marked'}]}"))
        .isEqualTo(Degree.MARKED);
    assertThat(degree("{'seen': [{'sign': 'slightly sour', 'degree': 'marked'}]}"))
        .isEqualTo(Degree.MARKED);
  }

  @Test
  void of_two_sightings_the_more_marked_counts() {
    assertThat(degree("{'seen': ['slightly sour', 'extremely sour']}")).isEqualTo(Degree.MARKED);
    assertThat(degree("{'seen': ['extremely sour', 'slightly sour']}")).isEqualTo(Degree.MARKED);
  }

  @Test
  void what_was_seen_once_was_seen() {
    assertThat(hear("{'seen': ['sour'], 'notSeen': ['sour']}").signs())
        .extracting(Heard.Sign::seen)
        .containsExactly(true);
    assertThat(hear("{'seen': ['not sour', 'sour']}").signs())
        .extracting(Heard.Sign::seen)
        .containsExactly(true);
  }

  @Test
  void one_sentence_may_hold_several_signs() {
    assertThat(hear("{'seen': ['flat top, pale crust and a heavy crumb']}").signs())
        .extracting(Heard.Sign::key)
        .containsExactlyInAnyOrder("flat-top", "pale-crust", "dense-crumb");
  }

  @Test
  void remarks_and_sightings_both_tell_of_circumstances_and_signs() {
    Heard heard =
        hear("{'seen': ['old yeast'], 'process': {'remarks': ['cut warm', 'a flat top']}}");

    assertThat(heard.circumstances())
        .extracting(Heard.Circumstance::key)
        .containsExactlyInAnyOrder("yeast-old", "cut-warm");
    assertThat(heard.signs()).extracting(Heard.Sign::key).containsExactly("flat-top");
    assertThat(heard.notUnderstood()).isEmpty();
  }

  @Test
  void a_denied_circumstance_did_not_happen_and_was_understood() {
    Heard heard =
        hear("{'formula': ['500 g flour'], 'process': {'remarks': ['the yeast was not old']}}");

    assertThat(heard.circumstances()).isEmpty();
    assertThat(heard.notUnderstood()).isEmpty();
  }

  @Test
  void what_is_not_understood_comes_back_word_for_word() {
    Heard heard =
        hear(
            """
            {'seen': ['It HUMMED, twice!'], 'notSeen': ['blue sparks'],
             'process': {'remarks': ['the parrot disapproved']}}
            """);

    assertThat(heard.signs()).isEmpty();
    assertThat(heard.notUnderstood())
        .containsExactly("It HUMMED, twice!", "blue sparks", "the parrot disapproved");
  }

  @Test
  void a_field_that_answers_no_is_a_circumstance_and_the_other_answer_is_none() {
    assertThat(
            hear("{'formula': ['500 g bread flour'], 'process': {'baking': {'preheated': false}}}")
                .circumstances())
        .extracting(Heard.Circumstance::key, Heard.Circumstance::words)
        .containsExactly(tuple("oven-cold", "baking preheated: no"));
    assertThat(
            hear("{'formula': ['500 g bread flour'], 'process': {'baking': {'preheated': true}}}")
                .circumstances())
        .isEmpty();
  }

  @Test
  void words_in_a_field_that_mean_nothing_are_no_failure_to_understand() {
    assertThat(
            hear("{'formula': ['500 g bread flour'], 'process': {'baking': {'steam': 'a drop'}}}")
                .notUnderstood())
        .isEmpty();
  }

  private static Degree degree(String json) {
    return hear(json).signs().get(0).degree();
  }

  private static Heard hear(String json) {
    return hearing.hear(Bakes.sheet(json));
  }
}
