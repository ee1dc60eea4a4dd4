package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
  @TempDir Path folder;

  @Test
  void what_breaks_off_leaves_what_was_there_before() throws IOException {
    Path target = Files.writeString(folder.resolve("sheet.json"), "before");

    assertThatThrownBy(
            () ->
                WholeFile.write(
                    target,
                    file -> {
                      Files.writeString(file, "half");
                      throw new IOException("no space left");
                    }))
        .hasMessage("no space left");

    assertThat(target).hasContent("before");
    assertThat(names()).containsExactly("sheet.json");
  }

  @Test
  void a_link_stays_a_link_to_the_file_that_is_written() throws IOException {
    Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
    Path file = Files.writeString(elsewhere.resolve("reports.jsonl"), "before");
    Path link = Files.createSymbolicLink(folder.resolve("reports.jsonl"), file);

    WholeFile.write(link, draft -> Files.writeString(draft, "after"));

    assertThat(link).isSymbolicLink();
    assertThat(file).hasContent("after");
  }

  /** A device, such as /dev/null, would be gone from the machine if a file took its place. */
  @Test
  void what_is_no_file_is_written_to_and_stays_what_it_is() throws Exception {
    Path pipe = folder.resolve("pipe");
    assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
    CompletableFuture<String> read =
        CompletableFuture.supplyAsync(
            () -> {
              try { // opened once: Files.lines opens twice, and what came between is lost
                return Files.readString(pipe);
              } catch (IOException fault) {
                return fault.toString();
              }
            });

    WholeFile.write(pipe, file -> Files.writeString(file, "one\ntwo\n"));

    assertThat(read.get(20, TimeUnit.SECONDS)).isEqualTo("one\ntwo\n");
    assertThat(Files.readAttributes(pipe, "isOther").get("isOther")).isEqualTo(true);
    assertThat(names()).containsExactly("pipe");
  }

  private Stream<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).toList().stream();
    }
  }
}
