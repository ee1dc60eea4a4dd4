package crumbtrail.cli.manual;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** Manual pages: what would be a command of roff stays text. */
class ManPageTest {
  @TempDir Path folder;

  @Command(
      name = "knead",
      mixinStandardHelpOptions = true,
      description = ".so /etc/passwd is text. A back\\slash, a \"quote\" and a 'tick' too.",
      footer = {"Examples:", "  .knead 'it' --long 5..8%%"})
  static final class Knead implements Runnable {
    @Option(names = "--long-rest", paramLabel = "MIN", description = "\\fBrest\\fR before %% of it")
    String rest;

    @Override
    public void run() {
      throw new IllegalStateException("only its model is read");
    }
  }

  private static CommandSpec knead() {
    CommandLine line = new CommandLine(new Knead());
    HelpShape.give(line);
    return line.getCommandSpec();
  }

  @Test
  void a_page_has_its_sections_in_the_usual_order() {
    assertThat(ManPage.of(knead()).lines().filter(line -> line.startsWith(".SH")))
        .containsExactly(
            ".SH \"NAME\"",
            ".SH \"SYNOPSIS\"",
            ".SH \"DESCRIPTION\"",
            ".SH \"OPTIONS\"",
            ".SH \"EXIT STATUS\"",
            ".SH \"EXAMPLES\"");
  }

  @Test
  void words_cannot_be_taken_for_commands() {
    String page = ManPage.of(knead());

    assertThat(page.lines().filter(line -> line.startsWith(".") || line.startsWith("'")))
        .allMatch(line -> line.matches("\\.(TH|SH|SS|TP|nf|fi)( .*)?"));
    assertThat(page)
        .contains("\\&.so /etc/passwd")
        .contains("back\\eslash, a \\(dqquote\\(dq and a \\(aqtick\\(aq")
        .contains("\\efBrest\\efR before % of it")
        .contains("\\&.knead \\(aqit\\(aq \\-\\-long 5..8%")
        .contains("\\fB\\-\\-long\\-rest=MIN\\fR");
  }

  @Test
  void the_page_reads_as_it_was_written_where_a_reader_is_installed() throws Exception {
    Path page = Files.writeString(folder.resolve("knead.1"), ManPage.of(knead()));

    String read = read("mandoc", "-T", "utf8", "-O", "width=200", page.toString());

    assertThat(read.replaceAll(".\b", ""))
        .contains(".so /etc/passwd is text. A back\\slash, a \"quote\" and a 'tick' too.")
        .contains("--long-rest=MIN")
        .contains("\\fBrest\\fR before % of it")
        .contains(".knead 'it' --long 5..8%");
    assertThat(read("mandoc", "-T", "lint", "-W", "error", page.toString())).isEmpty();
  }

  private static String read(String... command) throws InterruptedException {
    try {
      Process reader = new ProcessBuilder(command).redirectErrorStream(true).start();
      String said = new String(reader.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      reader.waitFor();
      return said;
    } catch (IOException missing) {
      assumeTrue(false, command[0] + " is not installed");
      return "";
    }
  }
}
