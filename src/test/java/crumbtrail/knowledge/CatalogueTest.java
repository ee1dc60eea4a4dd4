package crumbtrail.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.rules.TinyRules;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CatalogueTest {
  @TempDir Path folder;
  private Catalogue catalogue;

  @BeforeEach
  void read_the_tiny_folder() throws FaultyKnowledge {
    catalogue = new Catalogue(KnowledgeFolder.read(TinyRules.write(folder)));
  }

  @Test
  void a_cause_answers_to_its_key_and_to_its_aliases() {
    assertThat(catalogue.cause("salt-too-low")).isPresent();
    assertThat(catalogue.cause("salt-low")).isEqualTo(catalogue.cause("salt-too-low"));
    assertThat(catalogue.cause("salt too low")).isEmpty();
    assertThat(catalogue.cause("nothing")).isEmpty();
  }

  @Test
  void a_key_comes_before_an_alias_of_the_same_words() throws FaultyKnowledge {
    TinyRules.file(
        folder,
        "causes/all.yaml",
        TinyRules.CAUSES.replace("aliases: [salt-low]", "aliases: [over-proofed]"));

    Catalogue other = new Catalogue(KnowledgeFolder.read(folder));

    assertThat(other.cause("over-proofed")).map(Cause::key).hasValue("over-proofed");
  }

  @Test
  void every_kind_of_entry_is_found_by_its_key_and_no_other() {
    assertThat(catalogue.sign("dense-crumb")).map(SignKind::name).hasValue("dense crumb");
    assertThat(catalogue.sign("dense")).isEmpty();
    assertThat(catalogue.circumstance("cut-warm")).isPresent();
    assertThat(catalogue.circumstance("dense-crumb")).isEmpty();
    assertThat(catalogue.style("rye-loaf")).isPresent();
    assertThat(catalogue.reading("bulk ripeness")).isPresent();
    assertThat(catalogue.reading("bulk-ripeness")).isEmpty();
  }

  @Test
  void keys_and_rule_words_turn_into_each_other() {
    assertThat(Catalogue.spoken("salt-too-low")).isEqualTo("salt too low");
    assertThat(Catalogue.keyOf(" salt too low ")).isEqualTo("salt-too-low");
  }

  @Test
  void a_citation_names_title_and_year_and_leaves_common_practice_as_it_is() {
    assertThat(catalogue.cited("mill-book; common practice"))
        .isEqualTo("Notes of the tide mill, 1931; common practice");
  }

  /** Log-odds in decibans turned back: -10 dB is 1 to 10. */
  @Test
  void priors_fall_from_everyday_to_rare() {
    assertThat(Prior.values())
        .extracting(Prior::decibans)
        .containsExactly(-10.0, -13.0, -16.0, -20.0);
    assertThat(Math.pow(10, Prior.EVERYDAY.decibans() / 10)).isCloseTo(0.1, within(1e-12));
  }
}
