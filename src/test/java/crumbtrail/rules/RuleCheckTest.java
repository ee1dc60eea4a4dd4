package crumbtrail.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import crumbtrail.knowledge.Fault;
import crumbtrail.knowledge.FaultyKnowledge;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A mistaken rule is answered with its place and with what would be right. */
class RuleCheckTest {
  private static final String SUSPECT = "Suspect \"salt too low\" firmly";

  @TempDir Path folder;

  @BeforeEach
  void write_a_folder_without_faults() {
    TinyRules.write(folder);
  }

  @Test
  void the_tiny_folder_has_no_faults() throws FaultyKnowledge {
    assertThat(RuleFolder.read(folder).rules()).extracting(RuleText::name).contains("thin salt");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "The salt is undr 1.5 %                | no sentence that rules know        | The … is under … …",
        "The slat is under 1.5 %               | \"slat\" is no reading             | Nearest: \"salt\"",
        "The salt is under 1.5 g               | the salt is not told in \"g\"      | Write it in %",
        "The proof time is over 2 h            | the proof time is not told in \"h\"| Write it in min",
        "The salt is between 1 % and 2 g       | the salt is not told in \"g\"      | Write it in %",
        "The salt is under 1.5.2 %             | \"1.5.2\" is no number             | Write a number",
        "The salt is between 2 and 1 %         | from 2 to 1                        | smaller number first",
        "The baker saw \"dense crum\"          | \"dense crum\" is no sign          | Nearest: \"dense crumb\"",
        "The baker saw \"pale crust\" or \"x\" | \"x\" is no sign                   | Nearest: ",
        "The baker saw \"dense-crumbs\"        | \"dense-crumbs\" is no sign        | Nearest: \"dense crumb\"",
        "It happened that \"yeast odd\"        | \"yeast odd\" is no circumstance   | Nearest: \"yeast old\"",
        "The bread is \"tinn\"                 | \"tinn\" is no kind of bread       | Nearest: \"tin\"",
        "The bread is not \"whit\"             | \"whit\" is no kind of bread       | Nearest: \"white\"",
        "Nothing is known of the sale          | \"sale\" is no reading             | Nearest: \"salt\"",
      })
  void a_mistaken_condition_names_its_line_and_what_was_probably_meant(
      String sentence, String what, String remedy) {
    List<Fault> faults = faults(TinyRules.rule("mistaken", sentence, SUSPECT));

    assertThat(faults)
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.file()).isEqualTo("stages/mistaken.dslr");
              assertThat(fault.line()).isEqualTo(6);
              assertThat(fault.what()).contains(what);
              assertThat(fault.remedy()).contains(remedy);
            });
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "Suspect \"salt to low\" firmly    | \"salt to low\" is no cause | Nearest: \"salt too low\"",
        "Clear \"over-prooved\"            | \"over-prooved\" is no cause| Nearest: \"over proofed\"",
        "Suspect \"salt low\" firmly       | \"salt low\" is no cause    | Nearest: \"salt too low\"",
        "Suspect \"salt too low\" hard     | no sentence that rules know | Suspect \"…\"",
        "testimony.hear(null, \"x\", 99);  | no sentence that rules know | Nearest: ",
      })
  void a_mistaken_consequence_names_its_line_and_what_was_probably_meant(
      String sentence, String what, String remedy) {
    List<Fault> faults =
        faults(TinyRules.rule("mistaken", "The salt is low for this bread", sentence));

    assertThat(faults)
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.line()).isEqualTo(8);
              assertThat(fault.what()).contains(what);
              assertThat(fault.remedy()).contains(remedy);
            });
  }

  @Test
  void a_name_given_twice_points_to_the_first_rule_of_that_name() {
    List<Fault> faults =
        faults(TinyRules.rule("thin salt", "The salt is low for this bread", SUSPECT));

    assertThat(faults)
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.toString()).startsWith("stages/salt.dslr:1: ");
              assertThat(fault.what()).contains("stages/mistaken.dslr:1");
            });
  }

  @Test
  void missing_strand_source_and_lesson_are_named_one_by_one() {
    String bare =
        """
        rule "bare"
        when
            The salt is low for this bread
        then
            Suspect "salt too low" firmly
        end
        """;

    assertThat(faults(bare))
        .extracting(Fault::what)
        .containsExactly(
            "the rule has no @strand", "the rule has no @source", "the rule has no @lesson");
  }

  @Test
  void a_source_outside_the_bibliography_is_named_with_the_nearest() {
    String rule = TinyRules.rule("mistaken", "The salt is low for this bread", SUSPECT);

    assertThat(faults(rule.replace("common practice", "common practice; mil-book")))
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.what()).isEqualTo("\"mil-book\" is no source");
              assertThat(fault.remedy()).isEqualTo("Nearest: \"mill-book\"");
            });
  }

  @Test
  void a_rule_that_says_nothing_is_a_fault() {
    assertThat(faults(TinyRules.rule("mute", "// nothing", SUSPECT)))
        .extracting(Fault::what)
        .containsExactly("the rule says nothing");
  }

  @Test
  void all_faults_of_all_files_are_reported_in_one_go() {
    TinyRules.file(
        folder,
        "stages/another.dslr",
        TinyRules.rule("one", "The slat is under 1 %", SUSPECT) + "stray\n");
    List<Fault> faults =
        faults(
            TinyRules.rule("two", "The baker saw \"dense crum\"", "Clear \"salt to low\"")
                + TinyRules.rule("three", "The salt is funny", SUSPECT));

    assertThat(faults)
        .extracting(fault -> fault.file() + ":" + fault.line())
        .containsExactlyInAnyOrder(
            "stages/another.dslr:6",
            "stages/another.dslr:10",
            "stages/mistaken.dslr:6",
            "stages/mistaken.dslr:8",
            "stages/mistaken.dslr:15");
  }

  @Test
  void two_rules_that_speak_of_one_cause_in_the_same_case_are_both_named() {
    List<Fault> faults =
        faults(
            TinyRules.rule(
                    "one",
                    "The baker saw \"dense crumb\" or \"pale crust\"\nThe salt is over 3 %",
                    SUSPECT)
                + TinyRules.rule(
                    "two",
                    "The salt is over 3 %\nThe baker saw \"pale crust\" or \"dense crumb\"",
                    "Doubt \"salt too low\" faintly"));

    assertThat(faults)
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.toString()).startsWith("stages/mistaken.dslr:19: ");
              assertThat(fault.what())
                  .contains("\"two\" and \"one\" (stages/mistaken.dslr:1)", "\"salt too low\"");
            });
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "The bread is not \"tin\"       | Suspect \"salt too low\" faintly",
        "The bread is \"tin\" or \"rye\" | Suspect \"salt too low\" faintly",
        "The bread is \"tin\"           | Suspect \"over proofed\" faintly",
      })
  void rules_of_other_cases_or_causes_are_no_twins(String condition, String consequence)
      throws FaultyKnowledge {
    TinyRules.file(
        folder,
        "stages/more.dslr",
        TinyRules.rule("one", "The bread is \"tin\"", SUSPECT)
            + TinyRules.rule("two", condition, consequence));

    assertThat(RuleFolder.read(folder).rules()).extracting(RuleText::name).contains("one", "two");
  }

  @Test
  void a_folder_without_rules_is_refused() {
    TinyRules.file(folder, "stages/salt.dslr", "// none yet\n");

    assertThat(faults("// none here either\n"))
        .singleElement()
        .satisfies(fault -> assertThat(fault.what()).isEqualTo("there are no rules"));
  }

  @Test
  void a_mistake_in_the_pantry_is_named() {
    TinyRules.file(folder, "pantry/pantry.csv", "key,names\nx\n");

    assertThat(faults("// no rules\n"))
        .singleElement()
        .satisfies(fault -> assertThat(fault.file()).isEqualTo("pantry"));
  }

  private List<Fault> faults(String rules) {
    TinyRules.file(folder, "stages/mistaken.dslr", rules);
    FaultyKnowledge refused =
        catchThrowableOfType(FaultyKnowledge.class, () -> RuleFolder.read(folder));
    return refused.faults();
  }
}
