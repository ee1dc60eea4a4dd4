package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.rules.RuleBase;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** What is running. */
class VersionCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void it_tells_the_hash_that_stands_in_reports_and_how_many_rules_there_are() throws Exception {
    RuleBase base = RuleBase.bundled();

    assertThat(run("--format", "json")).isZero();

    JsonNode told = JSON.readTree(out.toString());
    assertThat(told.path("ruleBase").asText()).isEqualTo(base.version()).matches("[0-9a-f]{16}");
    assertThat(told.path("rules").asInt()).isEqualTo(base.ruleNames().size());
    assertThat(told.path("edition").asText()).isEqualTo(editionOf(Path.of("rules")));
    assertThat(told.path("java").asText()).startsWith(Runtime.version().toString());
  }

  @Test
  void text_says_the_same() {
    assertThat(run()).isZero();

    assertThat(out.toString())
        .contains(RuleBase.bundledHash(), "edition " + RuleBase.bundledEdition(), " rules, ");
  }

  @Test
  void the_short_form_names_program_rules_and_java() {
    assertThat(new Version().getVersion())
        .hasSize(3)
        .anyMatch(line -> line.startsWith("crumbtrail "))
        .anyMatch(line -> line.contains(RuleBase.bundledHash()));
  }

  @Test
  void a_folder_that_names_its_edition_wrongly_is_refused_with_what_would_do() throws Exception {
    Path own = folder.resolve("own");
    try (Stream<Path> files = Files.walk(Path.of("rules"))) {
      for (Path file : files.toList()) {
        Files.copy(file, own.resolve(Path.of("rules").relativize(file).toString()));
      }
    }
    Files.writeString(own.resolve("edition.yaml"), "edition: spring\n");

    assertThat(run("--rules", own.toString())).isEqualTo(2);

    assertThat(err.toString()).contains("edition.yaml", "edition: \"1.0\"");
  }

  private static String editionOf(Path rules) throws Exception {
    return Files.readString(rules.resolve("edition.yaml"))
        .replaceFirst("(?s).*edition: \"([^\"]*)\".*", "$1");
  }

  private int run(String... arguments) {
    return new CommandLine(new VersionCommand())
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setExecutionExceptionHandler(Faults::handle)
        .setOut(new PrintWriter(out))
        .setErr(new PrintWriter(err, true))
        .execute(arguments);
  }
}
