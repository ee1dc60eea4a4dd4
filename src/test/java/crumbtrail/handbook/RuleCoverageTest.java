package crumbtrail.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.rules.RuleBase;
import crumbtrail.rules.RuleBook;
import crumbtrail.rules.WrittenRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every rule speaks on some sheet: a rule that never does is wrong, or nobody has tried it. */
class RuleCoverageTest {
  private static RuleBook book;
  private static Coverage coverage;

  @TempDir Path folder;

  @BeforeAll
  static void judge() throws IOException, FaultyKnowledge {
    book = RuleBook.read(Path.of("rules"));
    List<SheetFiles.Named> sheets = new ArrayList<>();
    for (Path folder : SheetFiles.projects()) {
      sheets.addAll(SheetFiles.read(folder));
    }
    coverage = Coverage.of(RuleBase.bundled(), book, sheets);
  }

  @Test
  void every_rule_speaks_somewhere() {
    assertThat(coverage.silent())
        .as("add a sheet to src/test/resources/rule-probes, or mend the rule")
        .extracting(rule -> rule.file() + ":" + rule.line() + ": " + rule.name())
        .isEmpty();
  }

  @Test
  void the_rules_held_against_the_sheets_are_all_rules() {
    assertThat(coverage.rules())
        .extracting(Coverage.Fired::rule)
        .containsExactlyElementsOf(book.rules());
    assertThat(RuleBase.bundled().ruleNames())
        .containsExactlyInAnyOrderElementsOf(book.rules().stream().map(WrittenRule::name).toList());
  }

  @Test
  void a_file_holds_a_sheet_or_a_labelled_sheet_or_a_list() throws IOException {
    String sheet = "{\"title\": \"one\", \"seen\": [\"pale-crust\"]}";
    Files.writeString(folder.resolve("a.json"), sheet);
    Files.writeString(folder.resolve("b.json"), "{\"sheet\": " + sheet + ", \"expected\": []}");
    Files.writeString(folder.resolve("c.json"), "[" + sheet + ", {\"sheet\": " + sheet + "}]");
    Files.writeString(folder.resolve("notes.md"), "no sheet");

    assertThat(SheetFiles.read(folder))
        .extracting(SheetFiles.Named::name)
        .containsExactly("a", "b", "c: one", "c: one");
  }

  @Test
  void the_answer_as_data_names_for_each_rule_where_it_spoke() throws IOException {
    Files.writeString(folder.resolve("a.json"), "{\"seen\": [\"burnt-base\"]}");
    Coverage small = Coverage.of(RuleBase.bundled(), book, SheetFiles.read(folder));
    JsonNode json = new ObjectMapper().valueToTree(CoverageWords.json(small));

    assertThat(json.path("rules")).hasSize(book.rules().size());
    assertThat(json.path("silent").size()).isEqualTo(small.silent().size());
    assertThat(json.path("rules"))
        .filteredOn(row -> row.path("rule").asText().equals("The bottom of the loaf is burnt"))
        .singleElement()
        .satisfies(
            row -> {
              assertThat(row.path("spokeOn").path(small.sheets().keySet().iterator().next()))
                  .hasSize(1);
              assertThat(row.path("file").asText()).endsWith("oven-bottom-and-fan.dslr");
            });
    assertThat(CoverageWords.text(small)).contains("Rules that spoke nowhere:");
    assertThat(small.sheets()).isEqualTo(Map.of(folder.getFileName().toString(), 1));
  }
}
