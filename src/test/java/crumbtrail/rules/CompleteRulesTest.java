package crumbtrail.rules;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.knowledge.FaultyKnowledge;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The project's own rules lack nothing that the guards look for. */
class CompleteRulesTest {
  @Test
  void every_cause_has_rules_on_both_sides_and_every_sign_and_circumstance_is_heard()
      throws FaultyKnowledge {
    assertThat(RuleBook.read(Path.of("rules")).faults()).isEmpty();
  }

  @Test
  void the_rules_that_the_program_was_built_with_are_those_of_the_folder() throws FaultyKnowledge {
    RuleBook written = RuleBook.read(Path.of("rules"));
    RuleBook bundled = RuleBook.bundled();

    assertThat(bundled.rules()).isEqualTo(written.rules());
    assertThat(bundled.places()).isEqualTo(written.places());
    assertThat(bundled.faults()).isEmpty();
  }
}
