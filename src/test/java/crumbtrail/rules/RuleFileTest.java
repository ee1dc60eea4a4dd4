package crumbtrail.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import crumbtrail.knowledge.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RuleFileTest {
  private static final String GOOD =
      """
      // A remark above the rule.
      rule "Thin salt lets the dough go slack"
          @strand("salt")
          @source("common practice")
          @lesson("Salt tightens gluten.")
      when
          The salt is under 1.5 %

          // a remark between sentences
          The baker saw "sticky dough"
      then
          Suspect "salt too low" firmly
          Doubt "over proofed" faintly
      end
      """;

  private final List<Fault> faults = new ArrayList<>();

  @Test
  void a_good_file_is_taken_apart_with_the_line_of_each_sentence() {
    List<RuleText> rules = read(GOOD);

    assertThat(faults).isEmpty();
    assertThat(rules)
        .containsExactly(
            new RuleText(
                "stages/salt.dslr",
                2,
                "Thin salt lets the dough go slack",
                Map.of(
                    "strand", "salt",
                    "source", "common practice",
                    "lesson", "Salt tightens gluten."),
                List.of(
                    new RuleText.Sentence(7, "The salt is under 1.5 %"),
                    new RuleText.Sentence(10, "The baker saw \"sticky dough\"")),
                List.of(
                    new RuleText.Sentence(12, "Suspect \"salt too low\" firmly"),
                    new RuleText.Sentence(13, "Doubt \"over proofed\" faintly"))));
  }

  @Test
  void an_empty_file_and_a_file_of_remarks_hold_no_rules() {
    assertThat(read("")).isEmpty();
    assertThat(read("// nothing yet\n\n// nor here\n")).isEmpty();
    assertThat(faults).isEmpty();
  }

  /** The engine takes a hash for the start of a sentence, so it may not pass here. */
  @Test
  void a_hash_starts_no_comment() {
    read("# a remark\n" + GOOD);

    assertThat(faults)
        .singleElement()
        .satisfies(fault -> assertThat(fault.remedy()).contains("a comment starts with //"));
  }

  @Test
  void text_outside_a_rule_is_named_with_its_line() {
    read("import java.util.List;\n" + GOOD);

    assertThat(faults)
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.file()).isEqualTo("stages/salt.dslr");
              assertThat(fault.line()).isEqualTo(1);
              assertThat(fault.what()).contains("import java.util.List;").contains("outside");
              assertThat(fault.remedy()).contains("rule \"Its name\"");
            });
  }

  @Test
  void a_rule_head_without_quotation_marks_is_one_fault_and_the_next_rule_is_read() {
    List<RuleText> rules = read(GOOD.replace("\"Thin salt lets the dough go slack\"", "X") + GOOD);

    assertThat(faults).extracting(Fault::line).containsExactly(2);
    assertThat(rules).extracting(RuleText::line).containsExactly(16);
  }

  @Test
  void a_line_of_the_head_that_is_no_annotation_is_named_with_the_form_wanted() {
    read(GOOD.replace("@strand(\"salt\")", "@strand(salt)"));

    assertThat(faults)
        .extracting(Fault::line, Fault::what)
        .containsExactly(tuple(3, "\"@strand(salt)\" is no line of a rule's head"));
    assertThat(faults.get(0).remedy()).contains("@strand(\"…\")");
  }

  @Test
  void a_rule_without_end_at_the_end_of_the_file_is_named_by_its_first_line() {
    read(GOOD.replace("end\n", ""));

    assertThat(faults)
        .extracting(Fault::line, Fault::what, Fault::remedy)
        .containsExactly(tuple(2, "the rule has no end", "Close it with a line: end"));
  }

  @Test
  void a_rule_without_end_does_not_swallow_the_next_rule() {
    List<RuleText> rules = read(GOOD.replace("end\n", "") + GOOD);

    assertThat(faults).extracting(Fault::line).containsExactly(2);
    assertThat(rules).extracting(RuleText::line).containsExactly(15);
  }

  @Test
  void a_rule_that_ends_before_then_is_named_and_the_next_rule_is_read() {
    List<RuleText> rules = read(GOOD.replace("then\n", "") + GOOD);

    assertThat(faults).extracting(Fault::line).containsExactly(13);
    assertThat(faults.get(0).what()).contains("then");
    assertThat(rules).extracting(RuleText::line).containsExactly(15);
  }

  @Test
  void every_fault_of_a_file_is_reported_at_once() {
    read("one stray line\n" + GOOD.replace("@lesson(", "@lesson ") + "another stray line\n");

    assertThat(faults).extracting(Fault::line).containsExactly(1, 6, 16);
    assertThat(faults)
        .allSatisfy(
            fault -> assertThat(fault.toString()).startsWith("stages/salt.dslr:" + fault.line()));
  }

  private List<RuleText> read(String text) {
    return RuleFile.read("stages/salt.dslr", text, faults);
  }
}
