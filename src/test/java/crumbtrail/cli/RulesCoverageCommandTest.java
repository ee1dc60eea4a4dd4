package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class RulesCoverageCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir Path folder;

  @BeforeEach
  void write_a_sheet() throws IOException {
    Files.writeString(folder.resolve("one.json"), "{\"seen\": [\"burnt-base\"]}");
  }

  @Test
  void the_stages_are_counted_and_silent_rules_are_named() {
    assertThat(run(folder.toString())).isZero();
    assertThat(out.toString())
        .contains("1 of " + folder.getFileName())
        .contains("Rules that spoke nowhere:")
        .doesNotContain("The bottom of the loaf is burnt");
  }

  @Test
  void the_same_as_data() throws IOException {
    assertThat(run("--format", "json", folder.toString())).isZero();

    JsonNode json = new ObjectMapper().readTree(out.toString());
    assertThat(json.path("sheets").path(folder.getFileName().toString()).asInt()).isEqualTo(1);
    assertThat(json.path("rules").size()).isGreaterThan(json.path("silent").size());
  }

  @Test
  void a_folder_that_is_not_there_is_bad_input() {
    assertThat(run(folder.resolve("none").toString())).isEqualTo(2);
    assertThat(err.toString()).contains("There is no folder");
  }

  @Test
  void a_sheet_that_cannot_be_used_is_bad_input() throws IOException {
    Files.writeString(folder.resolve("two.json"), "{\"sene\": []}");

    assertThat(run(folder.toString())).isEqualTo(2);
    assertThat(err.toString()).contains("two.json", "sene");
  }

  private int run(String... arguments) {
    return new CommandLine(new RulesCoverageCommand())
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setOut(new PrintWriter(out))
        .setErr(new PrintWriter(err))
        .setExecutionExceptionHandler(Faults::handle)
        .execute(arguments);
  }
}
