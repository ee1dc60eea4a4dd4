package crumbtrail.picture;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.knowledge.Fault;
import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.knowledge.KnowledgeFolder;
import crumbtrail.rules.TinyRules;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with pictures is named with its place and a way out. */
class PictureGuardTest {
  @TempDir Path folder;

  @BeforeEach
  void write_a_folder_without_faults() {
    TinyRules.write(folder);
  }

  @Test
  void a_folder_may_do_without_pictures() throws FaultyKnowledge {
    assertThat(faults()).isEmpty();
    assertThat(LoafPictures.read(folder).of("dense-crumb")).isEmpty();
  }

  @Test
  void a_sign_without_picture_or_reason_is_named_where_it_stands() throws FaultyKnowledge {
    TinyRules.file(
        folder, "pictures.yaml", "- {about: dense-crumb, on: loaf, shows: {holes: 0.5}}\n");

    assertThat(faults())
        .isNotEmpty()
        .allSatisfy(
            fault -> {
              assertThat(fault.what()).contains("has no picture").doesNotContain("dense-crumb");
              assertThat(fault.file()).startsWith("signs/");
              assertThat(fault.line()).isPositive();
              assertThat(fault.remedy()).contains("pictures.yaml", "not-drawn");
            });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          about: dense-crumbs, on: loaf, shows: {holes: 0.5}    | there is no such sign
          about: dense-crumb, on: loaf, shows: {hole: 0.5}      | no trait of a loaf is "hole"
          about: dense-crumb, on: bowl, shows: {holes: 0.5}     | no trait of a bowl is "holes"
          about: dense-crumb, on: loaf, shows: {holes: -0.5}    | "holes" cannot be -0.5
          about: dense-crumb, on: loaf, shows: {volume: 1.5}    | "volume" cannot be 1.5
          about: dense-crumb, on: loaf, shows: {volume: 0}      | "volume" cannot be 0.0
          about: dense-crumb, on: loaf                          | shows nothing
          about: dense-crumb, on: oven, shows: {holes: 0.5}     | nothing is known as "oven"
          about: dense-crumb, shows: {holes: 0.5}               | nothing is known as "null"
          about: dense-crumb, on: loaf, shape: pie, shows: {holes: 1} | no loaf is known as "pie"
          about: dense-crumb, on: loaf, not-drawn: felt         | is drawn and not drawn
          """)
  void a_slip_in_an_entry_is_named_with_line_and_remedy(String entry, String what)
      throws FaultyKnowledge {
    TinyRules.file(folder, "pictures.yaml", "# A remark.\n- {" + entry.trim() + "}\n");

    assertThat(faults())
        .anySatisfy(
            fault -> {
              assertThat(fault.what()).contains(what);
              assertThat(fault.file()).isEqualTo("pictures.yaml");
              assertThat(fault.line()).isEqualTo(2);
              assertThat(fault.remedy()).isNotBlank();
            });
  }

  private List<Fault> faults() throws FaultyKnowledge {
    return LoafPictures.faults(KnowledgeFolder.read(folder), KnowledgeFolder.places(folder));
  }
}
