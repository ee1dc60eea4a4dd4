package crumbtrail.rules;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.knowledge.Fault;
import crumbtrail.knowledge.FaultyKnowledge;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a rule base lacks is named with the place of what lacks it. */
class RuleGuardsTest {
  @TempDir Path folder;

  @BeforeEach
  void write_a_folder_without_faults() {
    TinyRules.write(folder);
  }

  @Test
  void a_cause_wants_rules_on_both_sides() throws FaultyKnowledge {
    TinyRules.file(
        folder,
        "stages/proof.dslr",
        TinyRules.rule("sunk", "The baker saw \"collapsed top\"", "Suspect \"over proofed\" firmly")
            + TinyRules.rule("tall", "The baker saw \"flat top\"", "Clear \"yeast dead\""));

    assertThat(faults())
        .contains(
            "causes/all.yaml:1: no rule speaks against \"salt too low\". Write one that says: Doubt"
                + " \"…\"",
            "causes/all.yaml:11: no rule speaks against \"over proofed\". Write one that says: Doubt"
                + " \"…\"",
            "causes/all.yaml:20: no rule speaks for \"yeast dead\". Write one that says: Suspect"
                + " \"…\"")
        .noneMatch(fault -> fault.contains("against \"yeast dead\""))
        .noneMatch(fault -> fault.contains("no rule speaks for \"over proofed\""));
  }

  @Test
  void a_cause_wants_words_on_what_to_do_and_why() throws FaultyKnowledge {
    TinyRules.file(
        folder,
        "causes/all.yaml",
        TinyRules.CAUSES.replace("  mechanism: Salt tightens gluten.\n", ""));

    assertThat(faults())
        .contains("causes/all.yaml:1: there is no \"mechanism\" of \"salt too low\". Write it");
  }

  @Test
  void a_sign_wants_a_rule_that_hears_it() throws FaultyKnowledge {
    TinyRules.file(
        folder,
        "stages/crust.dslr",
        TinyRules.rule("pale", "The baker saw \"pale crust\"", "Doubt \"over proofed\" faintly")
            + TinyRules.rule(
                "no holes",
                "The baker looked for \"large holes\" and did not see it",
                "Doubt \"over proofed\" faintly"));

    assertThat(faults())
        .contains(
            "signs/all.yaml:6: no rule hears \"large holes\". Write one with: The baker saw \"…\"")
        .noneMatch(fault -> fault.contains("pale crust"));
  }

  @Test
  void a_circumstance_wants_a_rule_or_a_caution() throws FaultyKnowledge {
    TinyRules.file(
        folder, "cautions.yaml", TinyRules.CAUTIONS.replace("[always]", "[circumstance milk-hot]"));
    TinyRules.file(
        folder,
        "stages/oven.dslr",
        TinyRules.rule("cold", "It happened that \"oven cold\"", "Doubt \"over proofed\" faintly"));

    assertThat(faults())
        .anyMatch(fault -> fault.startsWith("circumstances/all.yaml:1: ") && fault.contains("old"))
        .noneMatch(fault -> fault.contains("milk hot") || fault.contains("oven cold"));
  }

  @Test
  void idle_readings_and_idle_sources_are_hints() throws FaultyKnowledge {
    TinyRules.file(
        folder,
        "causes/all.yaml",
        TinyRules.CAUSES.replace("mill-book; common practice", "common practice"));
    TinyRules.file(
        folder, "causes/all.yaml", TinyRules.CAUSES.replace("mill-book", "common practice"));

    assertThat(RuleBook.read(folder).hints())
        .extracting(Fault::toString)
        .contains(
            "readings.yaml:2: no rule looks at \"proof time\". It is only shown",
            "sources/all.yaml:1: nothing here cites \"mill book\". It may serve the pages on science")
        .noneMatch(hint -> hint.contains("rule looks at \"salt\""));
  }

  @Test
  void a_cause_wants_every_kind_of_witness() throws FaultyKnowledge {
    TinyRules.file(
        folder,
        "stages/proof.dslr",
        TinyRules.rule(
            "sunk", "The baker saw \"collapsed top\"", "Suspect \"over proofed\" firmly"));

    assertThat(faults())
        .contains(
            "causes/all.yaml:1: no circumstance speaks for \"salt too low\". Write a rule with: It"
                + " happened that \"…\"",
            "causes/all.yaml:1: no sign speaks for \"salt too low\". Write a rule with: The baker saw"
                + " \"…\"",
            "causes/all.yaml:11: no reading speaks for \"over proofed\". Write a rule with: The … is"
                + " …; or say under no reading: why there is none")
        .noneMatch(fault -> fault.contains("no reading speaks for \"salt too low\""));
  }

  @Test
  void a_cause_that_leaves_no_number_behind_says_why() throws FaultyKnowledge {
    String why = "  no reading: Nobody measures it.\n";
    TinyRules.file(
        folder,
        "causes/all.yaml",
        TinyRules.CAUSES
            .replace("  tell: Taste it.\n", "  tell: Taste it.\n" + why)
            .replace("  change: Bake sooner.\n", "  change: Bake sooner.\n" + why));
    TinyRules.file(
        folder,
        "stages/proof.dslr",
        TinyRules.rule(
            "sunk", "The baker saw \"collapsed top\"", "Suspect \"over proofed\" firmly"));

    assertThat(faults())
        .contains(
            "causes/all.yaml:1: a reading speaks, though no reading: says that none can, for \"salt"
                + " too low\". Take out no reading:, or the rule")
        .noneMatch(fault -> fault.contains("no reading speaks for"));
  }

  private List<String> faults() throws FaultyKnowledge {
    return RuleBook.read(folder).faults().stream().map(Fault::toString).toList();
  }
}
