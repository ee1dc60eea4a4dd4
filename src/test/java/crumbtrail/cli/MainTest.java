package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.cli.screen.Terminal;
import crumbtrail.rules.TinyRules;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands as typed: exit status, what goes to standard output, and what to standard error. */
class MainTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String CASE = Path.of("cases", "over-proofed-tin-loaf.json").toString();
  private static final String SHEET = "{\"title\": \"one\", \"seen\": [\"dense crumb\"]}";

  private final InputStream usualIn = System.in;
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
    System.setIn(usualIn);
    System.setOut(usualOut);
    System.setErr(usualErr);
  }

  @Test
  void a_traced_case_is_answered_with_status_nought() {
    assertThat(Main.run("trace", CASE)).isZero();
    assertThat(out()).contains("Likely causes").contains("1. ");
    assertThat(err()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"json", "JSON", "Json"})
  void the_format_may_be_written_in_any_case(String format) throws IOException {
    assertThat(Main.run("trace", CASE, "--format", format)).isZero();
    assertThat(JSON.readTree(out()).path("causes")).isNotEmpty();
  }

  @Test
  void html_is_a_whole_page() {
    assertThat(Main.run("trace", "--format=html", CASE)).isZero();
    assertThat(out()).startsWith("<!").contains("</html>");
  }

  @Test
  void a_hyphen_reads_standard_input() throws IOException {
    standardInput(SHEET.getBytes(StandardCharsets.UTF_8));

    assertThat(Main.run("trace", "-", "--format", "json")).isZero();
    assertThat(JSON.readTree(out()).path("title").asText()).isEqualTo("one");
  }

  @Test
  void a_mark_in_front_of_the_text_does_no_harm() throws IOException {
    Files.writeString(folder.resolve("marked.json"), "\uFEFF" + SHEET);
    Files.writeString(folder.resolve("marked.jsonl"), "\uFEFF" + SHEET + "\n" + SHEET + "\n");

    assertThat(Main.run("trace", path("marked.json"))).isZero();
    out.reset();
    assertThat(Main.run("batch", path("marked.jsonl"))).isZero();
    assertThat(out().lines()).hasSize(2).noneMatch(line -> line.startsWith("{\"error\""));
  }

  @Test
  void a_missing_file_is_bad_input() {
    for (String command : List.of("trace", "batch")) {
      assertThat(Main.run(command, path("nowhere.json"))).isEqualTo(2);
      assertRefused("nowhere.json");
    }
  }

  @Test
  void a_folder_in_place_of_a_file_is_bad_input() {
    for (String command : List.of("trace", "batch")) {
      assertThat(Main.run(command, folder.toString())).isEqualTo(2);
      assertRefused("is a folder. Name a file.");
    }
  }

  @Test
  void text_that_is_not_utf_8_is_bad_input() throws IOException {
    byte[] latin = "{\"title\": \"pâte\"}".getBytes(StandardCharsets.ISO_8859_1);
    Files.write(folder.resolve("latin.json"), latin);
    standardInput(latin);

    assertThat(Main.run("trace", path("latin.json"))).isEqualTo(2);
    assertRefused("is not UTF-8 text");
    assertThat(Main.run("trace", "-")).isEqualTo(2);
    assertRefused("Standard input is not UTF-8 text");
  }

  @Test
  void what_is_no_json_is_named_with_line_and_column() throws IOException {
    Files.writeString(folder.resolve("broken.json"), "{\n  \"seen\": [\"dense\",,]\n}\n");

    assertThat(Main.run("trace", path("broken.json"))).isEqualTo(2);
    assertRefused("broken.json");
    assertThat(err()).containsPattern("line 2, column 2\\d: this is not JSON");
  }

  @Test
  void all_problems_of_a_sheet_are_named_at_once_with_their_places() throws IOException {
    Files.writeString(
        folder.resolve("odd.json"),
        "{\"sene\": [], \"process\": {\"room\": \"warm-ish\", \"proof\": [{\"time\": 5}]}}");

    assertThat(Main.run("trace", path("odd.json"))).isEqualTo(2);
    assertRefused("(3 problem(s))");
    assertThat(err()).contains("  sene: ").contains("  process.room: ");
    assertThat(err()).contains("  process.proof[0].time: ");
  }

  @Test
  void a_file_of_many_megabytes_is_no_sheet() throws IOException {
    Files.writeString(folder.resolve("large.json"), " ".repeat(4 * 1024 * 1024 + 1));

    assertThat(Main.run("trace", path("large.json"))).isEqualTo(2);
    assertRefused("over 4 MB");
  }

  @Test
  void what_is_typed_wrongly_is_answered_with_what_was_probably_meant() {
    assertThat(Main.run("trace", "--fromat=json", CASE)).isEqualTo(2);
    assertRefused("There is no option --fromat here.");
    assertThat(err()).contains("Did you mean --format?").contains("Usage: crumbtrail trace");
    assertThat(Main.run("tarce", CASE)).isEqualTo(2);
    assertRefused("Did you mean trace?");
    assertThat(Main.run("rules", "chekc")).isEqualTo(2);
    assertRefused("Did you mean check?");
    assertThat(Main.run("trace", CASE, "--format", "pdf")).isEqualTo(2);
    assertRefused("--format: there is no \"pdf\". Take one of text, json, html.");
    assertThat(Main.run("trace")).isEqualTo(2);
    assertRefused("SHEET.json");
    assertThat(Main.run("trace", CASE, CASE)).isEqualTo(2);
    assertRefused("is one word too many");
  }

  @Test
  void colours_are_for_a_terminal_and_for_whoever_asks() {
    Terminal narrow = Terminal.of(60, Map.of());

    assertThat(Main.run(narrow, "trace", CASE)).isZero();
    assertThat(out()).contains("\u001b[1mLikely causes\u001b[0m");
    String painted = out().replaceAll("\u001b\\[\\d+m", "");
    assertThat(painted.lines()).allMatch(line -> line.length() <= 60);
    out.reset();
    assertThat(Main.run(narrow, "trace", CASE, "--color", "never")).isZero();
    assertThat(out()).isEqualTo(painted);
    out.reset();
    assertThat(Main.run(narrow, "trace", CASE, "--format", "json")).isZero();
    assertThat(out()).doesNotContain("\u001b");
    out.reset();
    assertThat(Main.run("--color=always", "trace", "--help")).isZero();
    assertThat(out()).contains("\u001b[");
    out.reset();
    assertThat(Main.run(narrow, "trace", "--help", "--color=never")).isZero();
    assertThat(out()).doesNotContain("\u001b");
  }

  @Test
  void a_first_run_is_told_in_five_lines_where_to_begin() {
    assertThat(Main.run()).isZero();
    assertThat(out().lines()).hasSize(5).allMatch(line -> line.length() <= 80);
    assertThat(out()).contains("new", "trace demo", "precheck", "serve", "--help");
    assertThat(err()).isEmpty();
  }

  @Test
  void the_demo_comes_with_the_program() throws IOException {
    assertThat(Main.run("precheck", "demo", "--format", "json")).isZero();
    assertThat(JSON.readTree(out()).path("title").asText()).contains("Skarholm");
  }

  @Test
  void help_and_version_are_answers() {
    assertThat(Main.run("--help")).isZero();
    assertThat(out()).contains("trace").contains("batch").contains("serve");
    assertThat(Main.run("batch", "--help")).isZero();
    assertThat(out()).contains("--out");
    assertThat(Main.run("--version")).isZero();
    assertThat(out()).contains("crumbtrail ");
    assertThat(err()).isEmpty();
  }

  @Test
  void a_batch_goes_to_standard_output_and_its_count_to_standard_error() throws IOException {
    standardInput((SHEET + "\nnonsense\n" + SHEET + "\n").getBytes(StandardCharsets.UTF_8));

    assertThat(Main.run("batch", "-")).isZero();

    List<String> lines = out().lines().toList();
    assertThat(lines).hasSize(3);
    assertThat(JSON.readTree(lines.get(1)).at("/error/line").asInt()).isEqualTo(2);
    assertThat(err()).contains("2 report(s), 1 line(s) that cannot be used");
  }

  @Test
  void a_batch_to_a_file_leaves_that_file_alone_behind() throws IOException {
    Files.writeString(folder.resolve("sheets.jsonl"), SHEET + "\n" + SHEET + "\n");
    Files.writeString(folder.resolve("reports.jsonl"), "of an earlier run\n");

    assertThat(Main.run("batch", path("sheets.jsonl"), "--out", path("reports.jsonl"))).isZero();

    assertThat(out()).isEmpty();
    assertThat(Files.readAllLines(folder.resolve("reports.jsonl")))
        .hasSize(2)
        .allSatisfy(line -> assertThat(JSON.readTree(line).has("causes")).isTrue());
    assertThat(names()).containsExactlyInAnyOrder("sheets.jsonl", "reports.jsonl");
  }

  @Test
  void a_batch_that_cannot_be_read_to_its_end_leaves_the_old_reports_as_they_were()
      throws IOException {
    Files.writeString(folder.resolve("reports.jsonl"), "of an earlier run\n");
    System.setIn(
        new InputStream() {
          @Override
          public int read() throws IOException {
            throw new IOException("the stick was pulled out");
          }

          @Override
          public int read(byte[] bytes, int from, int length) throws IOException {
            throw new IOException("the stick was pulled out");
          }
        });

    assertThat(Main.run("batch", "-", "--out", path("reports.jsonl"))).isEqualTo(1);

    assertThat(err()).contains("the stick was pulled out").doesNotContain("\tat ");
    assertThat(Files.readString(folder.resolve("reports.jsonl"))).isEqualTo("of an earlier run\n");
    assertThat(names()).containsExactly("reports.jsonl");
  }

  @Test
  void a_place_for_reports_that_cannot_be_is_bad_input() throws IOException {
    Files.writeString(folder.resolve("sheets.jsonl"), SHEET + "\n");
    Files.createDirectory(folder.resolve("here"));

    assertThat(Main.run("batch", path("sheets.jsonl"), "--out", path("here"))).isEqualTo(2);
    assertRefused("is a folder. Name a file.");
    assertThat(Main.run("batch", path("sheets.jsonl"), "--out", path("there/reports.jsonl")))
        .isEqualTo(2);
    assertRefused("there is no folder");
    assertThat(names()).containsExactlyInAnyOrder("sheets.jsonl", "here");
  }

  @Test
  void a_broken_rule_is_named_with_file_and_line() {
    TinyRules.write(folder.resolve("rules"));
    TinyRules.file(
        folder.resolve("rules"),
        "stages/mine.dslr",
        TinyRules.rule("mine", "The slat is under 1 %", "Suspect \"salt too low\" firmly"));

    assertThat(Main.run("trace", CASE, "--rules", path("rules"))).isEqualTo(2);

    assertRefused("The rules folder has 1 fault(s):");
    assertThat(err()).contains("stages/mine.dslr:6: \"slat\" is no reading. Nearest: \"salt\"");
  }

  @Test
  void a_rules_folder_that_is_not_there_is_bad_input() {
    assertThat(Main.run("trace", CASE, "--rules", path("nowhere"))).isEqualTo(2);
    assertRefused("--rules: there is no folder");
  }

  private void assertRefused(String said) {
    assertThat(out()).as("standard output").isEmpty();
    assertThat(err()).contains(said).doesNotContain("\tat ").doesNotContain("Exception");
  }

  private String path(String name) {
    return folder.resolve(name).toString();
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }

  private static void standardInput(byte[] bytes) {
    System.setIn(new ByteArrayInputStream(bytes));
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }
}
