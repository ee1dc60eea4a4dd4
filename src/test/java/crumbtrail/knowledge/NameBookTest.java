package crumbtrail.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import crumbtrail.rules.RuleBook;
import crumbtrail.rules.TinyRules;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NameBookTest {
  private static final String FILE = "languages/de.yaml";

  @TempDir Path folder;

  @BeforeEach
  void write_a_folder_without_faults() {
    TinyRules.write(folder);
  }

  @Test
  void names_of_a_language_are_found_by_the_english_ones() throws FaultyKnowledge {
    TinyRules.file(
        folder,
        FILE,
        "language: de\nterms:\n  Übergare: mill-book\ncauses:\n  salt-too-low: zu wenig Salz\n");

    Catalogue catalogue = new Catalogue(KnowledgeFolder.read(folder));
    String english = catalogue.cause("salt-too-low").orElseThrow().name();
    assertThat(catalogue.names("de")).containsExactly(Map.entry(english, "zu wenig Salz"));
    assertThat(catalogue.names("en")).isEmpty();
  }

  @Test
  void a_name_for_what_there_is_not_is_a_fault_with_its_line() {
    TinyRules.file(folder, FILE, "language: de\ncauses:\n  salt-too-lo: zu wenig Salz\n");

    assertThat(faults())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.file()).isEqualTo(FILE);
              assertThat(fault.line()).isEqualTo(3);
              assertThat(fault.what()).contains("salt-too-lo");
              assertThat(fault.remedy()).contains("salt-too-low");
            });
  }

  @Test
  void a_section_that_nothing_reads_is_a_fault_with_its_line() {
    TinyRules.file(folder, FILE, "language: de\n\ncausses:\n  salt-too-low: zu wenig Salz\n");

    assertThat(faults()).singleElement().extracting(Fault::line).isEqualTo(3);
  }

  @Test
  void a_term_needs_a_source_or_says_that_it_has_none() {
    TinyRules.file(
        folder, FILE, "language: de\nterms:\n  Gare: nobody\n  Schwaden: own knowledge\n");

    assertThat(faults())
        .singleElement()
        .satisfies(fault -> assertThat(fault.what()).contains("nobody"));
  }

  @Test
  void a_language_that_is_not_told_is_a_fault() {
    TinyRules.file(folder, FILE, "causes:\n  salt-too-low: zu wenig Salz\n");

    assertThat(faults()).singleElement().extracting(Fault::what).asString().contains("language");
  }

  @Test
  void german_names_everything_that_pages_show_by_name() {
    Knowledge knowledge = RuleBook.bundled().catalogue().knowledge();
    NameBook german =
        knowledge.languages().stream()
            .filter(book -> book.language().equals("de"))
            .findFirst()
            .orElseThrow();
    List<String> missing = new ArrayList<>();
    NameBook.english(knowledge)
        .forEach(
            (section, names) ->
                names.keySet().stream()
                    .filter(key -> !german.sections().get(section).containsKey(key))
                    .forEach(key -> missing.add(section + ": " + key)));
    assertThat(missing).isEmpty();
  }

  private List<Fault> faults() {
    return catchThrowableOfType(FaultyKnowledge.class, () -> KnowledgeFolder.read(folder)).faults();
  }
}
