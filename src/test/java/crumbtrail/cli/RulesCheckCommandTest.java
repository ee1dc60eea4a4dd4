package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.rules.TinyRules;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class RulesCheckCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir Path folder;

  @Test
  void what_is_missing_is_named_and_the_status_is_2() {
    TinyRules.write(folder);

    assertThat(check(folder.toString())).isEqualTo(2);
    assertThat(err.toString())
        .startsWith("The rules have ")
        .contains("causes/all.yaml:1: no rule speaks against \"salt too low\"");
    assertThat(out.toString()).contains("1 rules, 3 causes, 8 signs");
  }

  @Test
  void a_mistaken_rule_is_named_and_the_status_is_2() {
    TinyRules.write(folder);
    TinyRules.file(
        folder,
        "stages/more.dslr",
        TinyRules.rule("thick", "The baker saw \"thick crus\"", "Suspect \"yeast dead\" faintly"));

    assertThat(check(folder.toString())).isEqualTo(2);
    assertThat(err.toString())
        .contains("stages/more.dslr:6: \"thick crus\" is no sign. Nearest: \"thick crust\"");
  }

  @Test
  void a_folder_that_is_not_there_is_bad_input() {
    assertThat(check(folder.resolve("none").toString())).isEqualTo(2);
    assertThat(err.toString()).contains("There is no folder");
  }

  private int check(String... arguments) {
    return new CommandLine(new RulesCheckCommand())
        .setOut(new PrintWriter(out))
        .setErr(new PrintWriter(err))
        .setExecutionExceptionHandler(Faults::handle)
        .execute(arguments);
  }
}
