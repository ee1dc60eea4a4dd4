package crumbtrail.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import crumbtrail.rules.TinyRules;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Questions and pairs of causes that act together, and what is wrong with them. */
class QuestionCheckTest {
  @TempDir Path folder;

  @BeforeEach
  void write_a_folder_without_faults() {
    TinyRules.write(folder);
  }

  @Test
  void a_folder_may_do_without_either() throws FaultyKnowledge {
    Knowledge knowledge = KnowledgeFolder.read(folder);

    assertThat(knowledge.questions()).isEmpty();
    assertThat(knowledge.actingTogether()).isEmpty();
  }

  @Test
  void questions_of_every_kind_and_a_pair_are_read_with_what_goes_without_saying()
      throws FaultyKnowledge {
    TinyRules.file(
        folder,
        "questions.yaml",
        """
        - {about: dense-crumb, ask: "Is it dense?", unless: [large-holes], breads: [tin]}
        - {about: oven-cold, ask: "Was it cold?", how: Think., cost: remember, no: milk-hot, often: seldom}
        - {about: proof time, ask: "How long?", how: Think., cost: bake again, field: "proof[0].time"}
        """);
    TinyRules.file(
        folder,
        "acting-together.yaml",
        """
        - {name: two, causes: [salt-too-low, over-proofed], why: They do., source: mill-book}
        """);

    Knowledge knowledge = KnowledgeFolder.read(folder);

    QuestionKind sign = knowledge.questions().get(0);
    assertThat(sign.often()).isEqualTo(QuestionKind.Often.SOMETIMES);
    assertThat(sign.fits(List.of("tin", "white"))).isTrue();
    assertThat(sign.fits(List.of("rye"))).isFalse();
    assertThat(knowledge.questions().get(1).cost().weight())
        .isLessThan(knowledge.questions().get(2).cost().weight());
    assertThat(knowledge.actingTogether())
        .containsExactly(
            new ActingTogether(
                "two", List.of("salt-too-low", "over-proofed"), "They do.", "mill-book"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {about: moon, ask: "Is it full?"}                                        | neither sign
          {about: dense-crumb, ask: ""}                                            | no question
          {about: oven-cold, ask: "Was it?", cost: look}                           | how to find out
          {about: proof time, ask: "How long?", how: Think., cost: look}           | a field goes with
          {about: dense-crumb, ask: "Is it?", field: room}                         | a field goes with
          {about: oven-cold, ask: "Was it?", how: T., cost: look, no: moon}        | "moon" is no circum
          {about: dense-crumb, ask: "Is it?", unless: [moon]}                      | "moon" is neither
          {about: dense-crumb, ask: "Is it?", breads: [moon]}                      | no bread is "moon"
          {about: dense-crumb, ask: "Is it?", often: always}                       | OFTEN
          """)
  void a_faulty_question_is_named_with_its_line(String entry, String told) {
    TinyRules.file(
        folder, "questions.yaml", "# A comment.\n- {about: pale-crust, ask: P}\n- " + entry + "\n");

    assertThat(faults())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.file()).isEqualTo("questions.yaml");
              assertThat(fault.line()).isEqualTo(3);
              assertThat(fault.what().toLowerCase(Locale.ROOT))
                  .contains(told.toLowerCase(Locale.ROOT));
              assertThat(fault.remedy()).isNotBlank();
            });
  }

  @Test
  void a_question_that_stands_twice_is_named() {
    TinyRules.file(
        folder, "questions.yaml", "- {about: pale-crust, ask: P}\n- {about: pale-crust, ask: P}\n");

    assertThat(faults()).extracting(Fault::what).anyMatch(what -> what.contains("twice"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          [salt-too-low]                | They do. | common practice | is no pair
          [salt-too-low, salt-too-low]  | They do. | common practice | is no pair
          [salt-too-low, moon]          | They do. | common practice | is no cause
          [salt-too-low, over-proofed]  | ''       | common practice | does not say why
          [salt-too-low, over-proofed]  | They do. | moon-book       | not in the bibliography
          """)
  void a_faulty_pair_is_named_with_its_file(String causes, String why, String source, String told) {
    TinyRules.file(
        folder,
        "acting-together.yaml",
        "- {name: two, causes: %s, why: \"%s\", source: %s}\n".formatted(causes, why, source));

    assertThat(faults())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.file()).isEqualTo("acting-together.yaml");
              assertThat(fault.line()).isEqualTo(1);
              assertThat(fault.what()).contains(told);
            });
  }

  private List<Fault> faults() {
    FaultyKnowledge refused =
        catchThrowableOfType(FaultyKnowledge.class, () -> KnowledgeFolder.read(folder));
    return refused.faults();
  }
}
