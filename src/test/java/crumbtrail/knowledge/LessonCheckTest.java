package crumbtrail.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import crumbtrail.rules.TinyRules;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lessons and mystery loaves that speak of what is not there. */
class LessonCheckTest {
  @TempDir Path folder;

  @Test
  void a_lesson_and_a_loaf_that_hold_together_are_read() throws FaultyKnowledge {
    TinyRules.write(folder);
    TinyRules.file(
        folder,
        "mysteries.yaml",
        "- {cause: over-proofed, level: easy, sheet: some-bake, remark: forgot it}\n");

    assertThat(KnowledgeFolder.read(folder).mysteries()).hasSize(1);
    assertThat(KnowledgeFolder.read(folder).lessons()).isEmpty();
  }

  @Test
  void what_is_not_there_is_named_with_its_line() {
    TinyRules.write(folder);
    TinyRules.file(
        folder,
        "mysteries.yaml",
        """
        - {cause: over-prooved, level: easy, sheet: some-bake}
        - {cause: over-proofed, level: easy, sheet: some-bake, turn: sand}
        - {cause: salt-too-low, level: hard}
        """);

    FaultyKnowledge faulty =
        catchThrowableOfType(FaultyKnowledge.class, () -> KnowledgeFolder.read(folder));

    assertThat(faulty.faults())
        .extracting(Fault::toString)
        .containsExactlyInAnyOrder(
            "mysteries.yaml:1: \"over-prooved\" is no cause. Nearest: \"over-proofed\"",
            "mysteries.yaml:2: \"sand\" is no knob. Take one of the catalogue",
            "mysteries.yaml:2: \"sand\" is turned, and it is not said how far. Say it under to",
            "mysteries.yaml:3: the entry on \"salt-too-low\" is incomplete. Give it cause, level"
                + " and sheet");
  }
}
