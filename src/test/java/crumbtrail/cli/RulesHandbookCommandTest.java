package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class RulesHandbookCommandTest {
  private final StringWriter out = new StringWriter();

  @TempDir Path folder;

  @Test
  void all_pages_are_written_and_those_of_what_is_no_more_are_taken_away() throws IOException {
    Files.createDirectories(folder.resolve("causes"));
    Files.writeString(folder.resolve("causes/moon-phase.md"), "# Moon phase\n");
    Files.createDirectories(folder.resolve("recipes"));
    Files.writeString(folder.resolve("recipes/tin-loaf.md"), "# Tin loaf\n");
    Files.writeString(folder.resolve("notes.md"), "# Notes\n");

    int status =
        new CommandLine(new RulesHandbookCommand())
            .setOut(new PrintWriter(out))
            .setExecutionExceptionHandler(Faults::handle)
            .execute("--out", folder.toString());

    assertThat(status).isZero();
    assertThat(out.toString()).contains(" pages in " + folder);
    assertThat(folder.resolve("README.md")).exists();
    assertThat(folder.resolve("signs/pale-crust.md")).exists();
    assertThat(folder.resolve("causes/moon-phase.md")).doesNotExist();
    assertThat(folder.resolve("recipes/tin-loaf.md")).exists();
    assertThat(folder.resolve("notes.md")).exists();
  }
}
