package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Manual pages and completion of the program itself. */
class ManualCommandsTest {
  private final PrintStream usualOut = System.out;
  private final PrintStream usualErr = System.err;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @TempDir Path folder;

  @BeforeEach
  void listen() {
    System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
    System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  @AfterEach
  void stop_listening() {
    System.setOut(usualOut);
    System.setErr(usualErr);
  }

  @Test
  void the_page_of_a_command_below_another_is_found() {
    assertThat(Main.run("man", "rules", "check")).isZero();
    assertThat(out())
        .startsWith(".TH \"CRUMBTRAIL\\-RULES\\-CHECK\" \"1\"")
        .contains("at least one");
  }

  @Test
  void the_page_of_vary_knows_what_can_be_turned() {
    assertThat(Main.run("man", "vary")).isZero();
    assertThat(out()).contains("\\-\\-salt=RANGE");
  }

  @Test
  void what_is_no_command_has_no_page() {
    assertThat(Main.run("man", "bread")).isEqualTo(2);
    assertThat(err()).contains("There is no command \"bread\"").contains("trace");
    assertThat(Main.run("man", "trace", "--out", folder.toString())).isEqualTo(2);
    assertThat(out()).isEmpty();
  }

  @Test
  void all_pages_are_written_and_a_strict_reader_finds_no_fault() throws Exception {
    assertThat(Main.run("man", "--out", folder.toString())).isZero();
    List<String> pages;
    try (Stream<Path> files = Files.list(folder)) {
      pages = files.map(Path::toString).sorted().toList();
    }
    assertThat(pages).hasSizeGreaterThan(15).anyMatch(name -> name.endsWith("crumbtrail-trace.1"));
    for (String page : pages) {
      assertThat(run("mandoc", "-T", "lint", "-W", "error", page)).isEmpty();
    }
  }

  @Test
  void bash_completes_commands_options_and_their_values() throws Exception {
    Path script = script("bash");
    String ask =
        "source "
            + script
            + "; compopt() { :; }; COMP_WORDS=(crumbtrail %s); COMP_CWORD=$((${#COMP_WORDS[@]}-1));"
            + " _complete_crumbtrail; echo \"${COMPREPLY[@]}\"";

    assertThat(run("bash", "-c", ask.formatted("tra"))).isEqualTo("trace");
    assertThat(run("bash", "-c", ask.formatted("trace --fo"))).isEqualTo("--format");
    assertThat(run("bash", "-c", ask.formatted("trace --format j"))).isEqualTo("json");
    assertThat(run("bash", "-c", ask.formatted("vary --sal"))).contains("--salt");
  }

  @Test
  void zsh_takes_the_same_script() throws Exception {
    Path script = script("zsh");

    assertThat(run("zsh", "-f", "-c", "source " + script + "; echo ${_comps[crumbtrail]}"))
        .contains("_bash_complete")
        .contains("_complete_crumbtrail");
  }

  @Test
  void fish_completes_commands_options_and_their_values() throws Exception {
    Path script = script("fish");
    String ask = "source " + script + "; complete -C '%s'";

    assertThat(run("fish", "-N", "-c", ask.formatted("crumbtrail tra"))).startsWith("trace\t");
    assertThat(run("fish", "-N", "-c", ask.formatted("crumbtrail trace --for")))
        .startsWith("--format");
    assertThat(run("fish", "-N", "-c", ask.formatted("crumbtrail trace --format j")))
        .startsWith("json");
    assertThat(run("fish", "-N", "-c", ask.formatted("crumbtrail rules ch"))).startsWith("check");
    assertThat(run("fish", "-N", "-c", ask.formatted("crumbtrail rules check --hi")))
        .startsWith("--hints");
  }

  private Path script(String shell) throws IOException {
    assertThat(Main.run("completion", shell)).isZero();
    return Files.writeString(folder.resolve("script"), out());
  }

  private static String run(String... command) throws InterruptedException {
    try {
      Process started = new ProcessBuilder(command).redirectErrorStream(true).start();
      started.getOutputStream().close();
      String said =
          new String(started.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
      started.waitFor();
      return said;
    } catch (IOException missing) {
      assumeTrue(false, command[0] + " is not installed");
      return "";
    }
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }
}
