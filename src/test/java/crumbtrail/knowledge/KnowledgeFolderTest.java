package crumbtrail.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import crumbtrail.rules.TinyRules;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KnowledgeFolderTest {
  @TempDir Path folder;

  @BeforeEach
  void write_a_folder_without_faults() {
    TinyRules.write(folder);
  }

  @Test
  void a_folder_without_faults_is_read_whole() throws FaultyKnowledge {
    Knowledge knowledge = KnowledgeFolder.read(folder);

    assertThat(knowledge.causes())
        .extracting(Cause::key)
        .containsExactly("salt-too-low", "over-proofed", "yeast-dead");
    assertThat(knowledge.signs()).hasSize(8);
    assertThat(knowledge.circumstances()).hasSize(6);
    assertThat(knowledge.styles().get(0).range("salt"))
        .hasValue(new Style.Range(1.6, 2.2, "common practice"));
    assertThat(knowledge.readings()).extracting(ReadingKind::unit).contains("times ready");
    assertThat(knowledge.sources()).extracting(Source::id).containsExactly("mill-book");
    assertThat(knowledge.cautions()).hasSize(1);
    assertThat(knowledge.fields()).hasSize(1);
    assertThat(knowledge.words()).containsOnlyKeys("crumb", "dense");
  }

  @Test
  void entries_of_several_files_come_in_the_order_of_file_names() throws FaultyKnowledge {
    TinyRules.file(folder, "causes/a-first.yaml", TinyRules.CAUSES.replace("key: ", "key: a-"));

    assertThat(KnowledgeFolder.read(folder).causes())
        .extracting(Cause::key)
        .startsWith("a-salt-too-low")
        .endsWith("yeast-dead");
  }

  @Test
  void a_slip_in_the_notation_is_named_with_its_line() {
    TinyRules.file(folder, "signs/all.yaml", TinyRules.SIGNS + "- {key: broken, name: [\n");

    assertThat(faults())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.file()).isEqualTo(Path.of("signs", "all.yaml").toString());
              assertThat(fault.line()).isBetween(9, 10);
              assertThat(fault.remedy()).isNotBlank();
            });
  }

  @Test
  void a_key_that_no_entry_has_is_named_with_its_line() {
    TinyRules.file(
        folder, "causes/all.yaml", TinyRules.CAUSES.replaceFirst("prior: common", "proir: common"));

    assertThat(faults())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.what()).contains("proir");
              assertThat(fault.remedy()).contains("prior");
              assertThat(fault.line()).isEqualTo(4);
            });
  }

  @Test
  void a_key_that_stands_twice_in_one_entry_is_named_with_its_line() {
    TinyRules.file(
        folder,
        "causes/all.yaml",
        TinyRules.CAUSES.replaceFirst("stage: ", "name: again\n  stage: "));

    assertThat(faults())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.what()).contains("name");
              assertThat(fault.line()).isEqualTo(3);
            });
  }

  @Test
  void a_number_that_is_missing_or_no_number_is_a_fault() {
    TinyRules.file(
        folder, "styles/all.yaml", TinyRules.STYLES.replace("{low: 1.6, high: 2.2,", "{low: 1.6,"));
    assertThat(faults()).extracting(Fault::what).containsExactly("\"high\" is missing");

    TinyRules.file(folder, "styles/all.yaml", TinyRules.STYLES.replace("low: 1.6", "low: little"));
    assertThat(faults())
        .singleElement()
        .satisfies(fault -> assertThat(fault.what()).contains("little"));
  }

  @Test
  void an_unknown_prior_is_a_fault() {
    TinyRules.file(
        folder, "causes/all.yaml", TinyRules.CAUSES.replace("prior: rare", "prior: seldom"));

    assertThat(faults())
        .singleElement()
        .satisfies(fault -> assertThat(fault.what()).contains("seldom"));
  }

  @Test
  void an_empty_entry_is_a_fault() {
    TinyRules.file(folder, "causes/all.yaml", TinyRules.CAUSES + "-\n");

    assertThat(faults()).extracting(Fault::what).containsExactly("an entry is empty");
  }

  @Test
  void an_entry_without_a_key_is_a_fault_in_every_catalogue() {
    TinyRules.file(folder, "causes/all.yaml", TinyRules.CAUSES.replace("key: yeast-dead", "key:"));
    TinyRules.file(folder, "signs/all.yaml", TinyRules.SIGNS.replace("key: flat-top", "key: \"\""));
    TinyRules.file(folder, "readings.yaml", TinyRules.READINGS.replace("name: salt", "name: ''"));

    assertThat(faults())
        .filteredOn(fault -> fault.what().equals("an entry has no key"))
        .extracting(Fault::file)
        .containsExactlyInAnyOrder("causes/all.yaml", "signs/all.yaml", "readings.yaml");
  }

  @Test
  void a_key_used_by_two_entries_is_a_fault() {
    TinyRules.file(
        folder, "signs/more.yaml", TinyRules.SIGNS.lines().findFirst().orElseThrow() + "\n");

    assertThat(faults())
        .extracting(Fault::toString)
        .containsExactly(
            "signs/more.yaml:1: \"dense-crumb\" stands twice, first in signs/all.yaml:1. Keep one of"
                + " the two");
  }

  @Test
  void a_word_class_given_twice_is_a_fault() {
    TinyRules.file(folder, "words/more.yaml", "crumb: [middle]\nhard: [hard]\n");

    assertThat(faults())
        .extracting(Fault::what)
        .containsExactly("the class \"crumb\" stands twice");
  }

  @Test
  void what_cites_no_source_or_one_outside_the_bibliography_is_a_fault() {
    TinyRules.file(
        folder,
        "causes/all.yaml",
        TinyRules.CAUSES
            .replace("  sources: [mill-book]\n", "")
            .replace("[mill-book; common practice]", "[mill-bok]"));
    TinyRules.file(
        folder, "cautions.yaml", TinyRules.CAUTIONS.replace("  source: common practice\n", ""));
    TinyRules.file(
        folder, "styles/all.yaml", TinyRules.STYLES.replace("common practice", "a friend"));

    assertThat(faults())
        .extracting(Fault::what)
        .containsExactlyInAnyOrder(
            "\"over-proofed\" has no source",
            "\"yeast-dead\" cites \"mill-bok\", which is not in the bibliography",
            "\"raw-dough\" has no source",
            "\"any-bread\", salt cites \"a friend\", which is not in the bibliography");
  }

  @Test
  void a_reference_to_what_is_not_there_is_a_fault() {
    TinyRules.file(folder, "causes/all.yaml", TinyRules.CAUSES + "  refines: yeast-old\n");
    TinyRules.file(folder, "styles/all.yaml", TinyRules.STYLES.replace("salt: {", "slat: {"));
    TinyRules.file(folder, "fields.yaml", TinyRules.FIELDS.replace("oven-cold", "oven-chilly"));

    assertThat(faults())
        .extracting(Fault::what)
        .containsExactlyInAnyOrder(
            "\"yeast-dead\" refines \"yeast-old\", which is no cause",
            "\"any-bread\" has a range for \"slat\", which is no reading",
            "\"oven-chilly\" is no circumstance");
  }

  /** A fault that shows only when entries are compared still has a file and a line. */
  @Test
  void a_reference_to_what_is_not_there_is_named_with_its_line() {
    TinyRules.file(folder, "causes/all.yaml", TinyRules.CAUSES + "  refines: over-prooved\n");
    TinyRules.file(folder, "styles/all.yaml", TinyRules.STYLES.replace("salt: {", "slat: {"));
    TinyRules.file(
        folder,
        "cautions.yaml",
        """
        - key: raw-dough
          words: Do not eat raw dough.
          when:
            - sign dense-crumb
            - sign flat-topp
            - circumstance yeast-odd
            - smell of mice
          source: common practice
        """);

    assertThat(faults())
        .extracting(Fault::toString)
        .containsExactlyInAnyOrder(
            "causes/all.yaml:29: \"yeast-dead\" refines \"over-prooved\", which is no cause. Nearest:"
                + " \"over-proofed\"; or leave it out",
            "styles/all.yaml:6: \"any-bread\" has a range for \"slat\", which is no reading. Use a"
                + " name from readings.yaml. Nearest: \"salt\"",
            "cautions.yaml:5: \"flat-topp\" is no sign. Nearest: \"flat-top\"",
            "cautions.yaml:6: \"yeast-odd\" is no circumstance. Nearest: \"yeast-old\"",
            "cautions.yaml:7: \"smell of mice\" says nothing that a sheet can hold. Write always, or"
                + " sign, circumstance, cause, reading or ingredient and its key");
  }

  @Test
  void a_range_from_high_to_low_is_a_fault() {
    TinyRules.file(folder, "styles/all.yaml", TinyRules.STYLES.replace("low: 1.6", "low: 2.6"));

    assertThat(faults())
        .extracting(Fault::what)
        .containsExactly("\"any-bread\": salt runs from high to low");
  }

  @Test
  void every_bad_phrase_is_named_with_its_key() {
    TinyRules.file(
        folder,
        "signs/all.yaml",
        TinyRules.SIGNS
            .replace("[<crumb> <dense>]", "[<crum> <dense>, <crumb> <dens>]")
            .replace("[flat top]", "['flat \"top']"));

    assertThat(faults())
        .hasSize(3)
        .extracting(Fault::what)
        .anyMatch(what -> what.contains("<crum>") && what.contains("dense-crumb"))
        .anyMatch(what -> what.contains("<dens>") && what.contains("dense-crumb"))
        .anyMatch(what -> what.contains("flat-top"));
  }

  @Test
  void faults_of_every_kind_and_file_are_reported_together() {
    TinyRules.file(folder, "signs/broken.yaml", "- {key: [\n");
    TinyRules.file(
        folder,
        "readings.yaml",
        TinyRules.READINGS + "- {name: x, unti: g, decimals: 0, what: y}\n");
    TinyRules.file(folder, "causes/more.yaml", TinyRules.CAUSES.replace("mill-book", "mil-book"));
    TinyRules.file(
        folder,
        "circumstances/all.yaml",
        TinyRules.CIRCUMSTANCES.replace("[cold oven]", "[<cold> oven]"));

    List<String> said = faults().stream().map(Fault::toString).toList();

    assertThat(said)
        .anyMatch(fault -> fault.contains("broken.yaml:"))
        .anyMatch(fault -> fault.startsWith("readings.yaml:5: ") && fault.contains("unti"))
        .anyMatch(fault -> fault.contains("\"over-proofed\" stands twice"))
        .anyMatch(fault -> fault.contains("cites \"mil-book\""))
        .anyMatch(fault -> fault.contains("<cold>"));
  }

  /** A file that cannot be read may hold what another one names; nothing is said against that. */
  @Test
  void a_broken_file_does_not_make_others_look_broken() {
    TinyRules.file(folder, "sources/all.yaml", TinyRules.SOURCES + "- {id: [\n");
    TinyRules.file(folder, "words/words.yaml", TinyRules.WORDS + "hard: [\n");
    TinyRules.file(folder, "readings.yaml", TinyRules.READINGS + "- {name: [\n");

    assertThat(faults())
        .extracting(Fault::file)
        .containsExactlyInAnyOrder(
            Path.of("sources", "all.yaml").toString(),
            Path.of("words", "words.yaml").toString(),
            "readings.yaml");
  }

  @Test
  void folders_and_files_that_are_missing_are_named() throws IOException {
    Files.delete(folder.resolve("cautions.yaml"));
    Files.delete(folder.resolve("words/words.yaml"));
    Files.delete(folder.resolve("words"));

    assertThat(faults())
        .extracting(Fault::file)
        .containsExactlyInAnyOrder("cautions.yaml", "words");
  }

  @Test
  void a_file_that_is_not_utf_8_is_named() throws IOException {
    Files.write(
        folder.resolve("cautions.yaml"),
        TinyRules.CAUTIONS.replace("dough", "pâte").getBytes(StandardCharsets.ISO_8859_1));

    assertThat(faults())
        .singleElement()
        .satisfies(fault -> assertThat(fault.remedy()).contains("UTF-8"));
  }

  private List<Fault> faults() {
    FaultyKnowledge refused =
        catchThrowableOfType(FaultyKnowledge.class, () -> KnowledgeFolder.read(folder));
    assertThat(refused).as("faults are found").isNotNull();
    return refused.faults();
  }
}
