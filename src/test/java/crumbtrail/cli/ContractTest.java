package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Exit status, standard output and standard error of all commands, side by side. */
class ContractTest {
  private static final String SHEET =
      "{\"title\": \"one\", \"formula\": [\"500 g bread flour\", \"310 g water\","
          + " \"5 g instant yeast\", \"9 g salt\"], \"seen\": [\"dense crumb\"]}";

  private final InputStream usualIn = System.in;
  private final PrintStream usualOut = System.out;
  private final PrintStream usualErr = System.err;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

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

  /** Commands that read a bake sheet, and the forms in which they answer. */
  @ParameterizedTest
  @CsvSource({
    "trace -, text json html",
    "precheck -, text json html",
    "next -, text sheet",
    "vary - --salt 0..3% --steps 3, text json html"
  })
  void a_sheet_comes_from_standard_input_and_the_answer_in_every_form(
      String command, String formats) throws IOException {
    for (String format : formats.split(" ")) {
      assertThat(run(SHEET, command + " --format " + format)).as(format).isZero();
      assertThat(err()).as("%s %s", command, format).isEmpty();
      assertThat(out()).doesNotContain("\u001b");
      switch (format) {
        case "html" -> assertThat(out()).startsWith("<!").contains("</html>");
        case "text" -> assertThat(out().lines()).allMatch(line -> line.length() <= 80);
        default -> assertThat(new ObjectMapper().readTree(out()).isObject()).isTrue();
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"trace -", "precheck -", "next -", "vary - --salt 0..3%"})
  void what_is_no_sheet_is_refused_on_standard_error(String command) {
    for (String input : List.of("", "{", "[]", "{}", "{\"process\": {\"room\": 21}}")) {
      assertThat(run(input, command)).as("%s of %s", command, input).isEqualTo(2);
      assertThat(out()).isEmpty();
      assertThat(err()).contains("Standard input").doesNotContain("Exception");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "trace nowhere.json",
        "precheck nowhere.json",
        "next nowhere.json",
        "vary nowhere.json --salt 0..3%",
        "batch nowhere.jsonl",
        "trace",
        "precheck",
        "next",
        "vary",
        "batch",
        "batch - --out nowhere/reports.jsonl",
        "trace - --format yaml",
        "precheck - --format yaml",
        "next - --format yaml",
        "vary - --salt 0..3% --format yaml",
        "vary - --sugarr 0..3%",
        "vary -",
        "card no-such-cause",
        "card over-proofed --format yaml",
        "lesson 99",
        "lesson one",
        "mystery --level dreadful",
        "mystery --seed x",
        "serve --port many",
        "rules",
        "rules check nowhere",
        "rules coverage nowhere",
        "rules handbook",
        "rules score --cases nowhere",
        "rules calibrate --cases nowhere",
        "completion",
        "completion powder",
        "man bread",
        "new nowhere/bake.json",
        "trace - --rules nowhere",
        "trace - --color pink",
        "bake"
      })
  void bad_input_ends_with_two_and_says_why_on_standard_error_alone(String command) {
    assertThat(run(SHEET, command)).isEqualTo(2);
    assertThat(out()).isEmpty();
    assertThat(err().strip()).isNotEmpty().doesNotContain("Exception").doesNotContain("\tat ");
    assertThat(err()).doesNotContain("null").doesNotContain("fault of its own");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "card",
        "card over-proofed",
        "card over-proofed --format html",
        "card over-proofed --format markdown",
        "lesson",
        "completion fish",
        "man",
        "batch -",
        "rules --help",
        "--version"
      })
  void an_answer_ends_with_nought(String command) {
    assertThat(run(SHEET, command)).isZero();
    assertThat(out()).isNotEmpty().doesNotContain("\u001b");
  }

  @Test
  void in_a_pipe_no_progress_is_told() {
    assertThat(run((SHEET + "\n").repeat(3), "batch -")).isZero();
    assertThat(err()).isEqualTo("3 report(s), 0 line(s) that cannot be used\n");
  }

  private int run(String input, String command) {
    out.reset();
    err.reset();
    System.setIn(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)));
    return Main.run(command.split(" "));
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }
}
