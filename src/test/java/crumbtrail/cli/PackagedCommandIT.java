package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged program as a baker starts it. */
@Tag("packaged")
class PackagedCommandIT {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path JAR =
      Path.of(System.getProperty("crumbtrail.jar", "target/crumbtrail.jar")).toAbsolutePath();
  private static final long LONGEST_MINUTES = 5;

  @TempDir Path folder;

  private record Ended(int status, String out, String err) {}

  @Test
  void trace_prints_the_diagnosis_of_a_case() throws Exception {
    Ended ended = run("trace", casePath("over-proofed-tin-loaf.json"));

    assertThat(ended.err()).isEmpty();
    assertThat(ended.status()).isZero();
    assertThat(ended.out()).contains("1. final proof too long").contains("change");
  }

  @Test
  void it_works_from_any_folder_and_names_its_version() throws Exception {
    Ended ended = run("--version");

    assertThat(ended.status()).isZero();
    assertThat(ended.out())
        .matches("(?s)crumbtrail \\d+\\.\\d+\\.\\d+\\Rrules 1\\.\\d+, [0-9a-f]{16}\\RJava .*");
  }

  @Test
  void bad_input_ends_with_status_two_and_no_trace_of_the_program() throws Exception {
    Ended ended = run("trace", "nowhere.json");

    assertThat(ended.status()).isEqualTo(2);
    assertThat(ended.out()).isEmpty();
    assertThat(ended.err()).contains("nowhere.json").doesNotContain("\tat ");
  }

  @Test
  void batch_turns_a_thousand_sheets_into_a_thousand_reports() throws Exception {
    batch(1000, "--causes");
  }

  @Test
  void batch_makes_the_whole_report_on_every_case_twice_over() throws Exception {
    batch(2 * cases().size());
  }

  private void batch(int many, String... options) throws Exception {
    List<String> cases = cases();
    List<String> sheets = new ArrayList<>();
    for (int nth = 0; nth < many; nth++) {
      sheets.add(cases.get(nth % cases.size()));
    }
    Files.write(folder.resolve("sheets.jsonl"), sheets);
    List<String> words =
        new ArrayList<>(List.of("batch", "sheets.jsonl", "--out", "reports.jsonl"));
    words.addAll(List.of(options));

    Ended ended = run(words.toArray(String[]::new));

    assertThat(ended.status()).isZero();
    assertThat(ended.err()).contains(many + " report(s), 0 line(s)");
    List<String> reports = Files.readAllLines(folder.resolve("reports.jsonl"));
    assertThat(reports).hasSize(many);
    for (int nth = 0; nth < many; nth++) {
      JsonNode report = JSON.readTree(reports.get(nth));
      assertThat(report.path("title")).isEqualTo(JSON.readTree(sheets.get(nth)).path("title"));
      // A sound bake may have no cause to show.
      assertThat(report.path("causes").isArray()).isTrue();
      assertThat(report.path("causes").isEmpty() && faulty(sheets.get(nth))).isFalse();
      // The same sheet gives the same report, whichever thread worked on it.
      assertThat(reports.get(nth)).isEqualTo(reports.get(nth % cases.size()));
    }
  }

  private static boolean faulty(String sheet) throws IOException {
    return !JSON.readTree(sheet).path("knownCauses").isEmpty();
  }

  private Ended run(String... arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-jar");
    command.add(JAR.toString());
    command.addAll(List.of(arguments));
    Path out = folder.resolve("out.txt");
    Path err = folder.resolve("err.txt");
    Process program =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    boolean ended = program.waitFor(LONGEST_MINUTES, TimeUnit.MINUTES);
    if (!ended) {
      program.destroyForcibly();
    }
    assertThat(ended).as("the program ends by itself").isTrue();
    return new Ended(program.exitValue(), text(out), text(err));
  }

  private static String text(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8);
  }

  private static String casePath(String name) {
    return Path.of("cases", name).toAbsolutePath().toString();
  }

  private static List<String> cases() throws IOException {
    List<String> lines = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("cases"))) {
      for (Path file : files.filter(one -> one.toString().endsWith(".json")).sorted().toList()) {
        lines.add(JSON.readTree(Files.readString(file)).toString());
      }
    }
    return lines;
  }
}
