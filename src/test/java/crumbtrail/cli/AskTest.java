package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.sheet.SheetReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
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

/** A talk with the answers coming through a pipe. */
class AskTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String SHEET =
      "{\"style\": \"white tin loaf\", \"seen\": [\"dense crumb\", \"small loaf\"]}";

  private final InputStream usualIn = System.in;
  private final PrintStream usualOut = System.out;
  private final PrintStream usualErr = System.err;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @TempDir Path folder;

  @BeforeEach
  void listen() throws IOException {
    System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
    System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
    Files.writeString(folder.resolve("sheet.json"), SHEET);
  }

  @AfterEach
  void stop_listening() {
    System.setIn(usualIn);
    System.setOut(usualOut);
    System.setErr(usualErr);
  }

  @Test
  void the_first_causes_are_shown_a_question_is_asked_and_the_answer_moves_them() {
    assertThat(ask("y\nq\n\n")).isZero();

    assertThat(out())
        .startsWith("Likely causes so far:")
        .contains("y, n, slight, marked > ")
        .contains("(was ")
        .doesNotContain("null");
    assertThat(err()).isEmpty();
    assertThat(out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
  }

  @Test
  void answers_are_kept_in_the_file_from_one_to_the_next() throws IOException {
    Path kept = folder.resolve("kept.json");

    assertThat(ask("y\nn\nmarked\nslight\n", "--save", kept.toString())).isZero();

    JsonNode sheet = JSON.readTree(Files.readString(kept));
    assertThat(SheetReader.read(sheet).problems()).isEmpty();
    assertThat(
            sheet.path("seen").size()
                + sheet.path("notSeen").size()
                + sheet.at("/process/remarks").size())
        .isGreaterThan(4);
    assertThat(sheet.path("style").asText()).isEqualTo("white tin loaf");
    assertThat(out()).contains("The input has ended").contains(kept.toString());
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder("sheet.json", "kept.json");
    }
  }

  @Test
  void where_the_input_ends_and_no_file_is_named_the_sheet_is_printed() throws IOException {
    assertThat(ask("y\n")).isZero();

    String printed = out().substring(out().lastIndexOf("\n{"));
    JsonNode sheet = JSON.readTree(printed);
    assertThat(sheet.path("seen").size() + sheet.at("/process/remarks").size()).isEqualTo(3);
  }

  @Test
  void a_file_may_be_named_at_the_end() {
    Path kept = folder.resolve("at-the-end.json");

    assertThat(ask("y\nq\n" + kept + "\n")).isZero();

    assertThat(kept).exists();
  }

  @Test
  void without_an_answer_nothing_is_kept_and_nothing_printed() {
    for (String input : List.of("", "q\n", "\n?\ndon't know\nq\n")) {
      out.reset();
      assertThat(ask(input)).isZero();
      assertThat(out()).doesNotContain("Save the sheet").doesNotContain("{");
    }
  }

  @Test
  void what_is_no_answer_is_said_and_the_question_stays() {
    assertThat(ask("perhaps\ny\nq\n\n")).isZero();

    assertThat(out()).contains("That is no answer I know").contains("(was ");
  }

  @Test
  void an_answer_can_be_taken_back_and_the_question_comes_again() throws IOException {
    Path kept = folder.resolve("kept.json");

    assertThat(ask("b\ny\nback\n", "--save", kept.toString())).isZero();

    assertThat(out()).contains("This is the first question.");
    List<String> asked = out().lines().filter(line -> line.endsWith("?")).toList();
    assertThat(asked).hasSize(4);
    assertThat(asked.get(3)).isEqualTo(asked.get(0)).isNotEqualTo(asked.get(2));
    assertThat(SheetReader.read(Files.readString(kept)).sheet())
        .isEqualTo(SheetReader.read(SHEET).sheet());
  }

  @Test
  void help_says_what_can_be_typed_and_the_question_stays() {
    assertThat(ask("?\nq\n")).isZero();

    assertThat(out()).contains("how likely each cause is").doesNotContain("Save the sheet");
  }

  @Test
  void questions_that_are_passed_over_do_not_come_back_and_in_the_end_there_are_none() {
    assertThat(ask("\n".repeat(300))).isZero();

    assertThat(out()).contains("No further question would teach much.");
    List<String> asked = out().lines().filter(line -> line.endsWith("?")).toList();
    assertThat(asked).hasSizeGreaterThan(10).doesNotHaveDuplicates();
  }

  @Test
  void an_amount_without_a_unit_is_refused_with_what_would_do() throws IOException {
    // Every question is passed over until one asks for an amount.
    Files.writeString(
        folder.resolve("sheet.json"),
        "{\"style\": \"white tin loaf\", \"seen\": [\"dense crumb\", \"slow to rise\"]}");
    ask("\n".repeat(300));
    long before =
        out()
            .substring(0, Math.max(0, out().indexOf("An amount")))
            .lines()
            .filter(line -> line.startsWith("y, n"))
            .count();
    boolean any = out().contains("An amount");
    out.reset();

    assertThat(any).isTrue();
    assertThat(ask("\n".repeat((int) before) + "24\n24 C\nq\n\n")).isZero();
    assertThat(out()).contains("An amount with its unit > ").contains("unit");
  }

  @Test
  void asking_needs_a_file_and_a_terminal_and_saving_needs_asking() {
    assertThat(Main.run("trace", "-", "--ask")).isEqualTo(2);
    assertThat(err()).contains("Name the sheet as a file");
    assertThat(Main.run("trace", sheet(), "--ask", "--format", "json")).isEqualTo(2);
    assertThat(Main.run("trace", sheet(), "--save", "x.json")).isEqualTo(2);
    assertThat(Main.run("trace", sheet(), "--ask", "--save", folder.toString())).isEqualTo(2);
    assertThat(err()).contains("is a folder");
  }

  private int ask(String input, String... more) {
    System.setIn(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)));
    return Main.run(
        Stream.concat(Stream.of("trace", sheet(), "--ask"), Stream.of(more))
            .toArray(String[]::new));
  }

  private String sheet() {
    return folder.resolve("sheet.json").toString();
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }
}
