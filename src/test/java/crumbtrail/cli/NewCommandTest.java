package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.cli.screen.Terminal;
import crumbtrail.sheet.SheetReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A bake sheet written by question and answer, with the answers coming through a pipe. */
class NewCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String RECIPE =
      "500 g bread flour\n310 g water\n5 g instant yeast\n10 g fine salt\n\n";

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
  void a_whole_bake_is_asked_said_back_and_written() throws IOException {
    assertThat(
            run(
                "Tin loaf, mill class\nwhite tin loaf\n"
                    + RECIPE
                    + "gummy crumb\nhummed a tune\n\nsour smell\n\n"
                    + "stand mixer\n8 min\n25 C\n21 C\n60 min at 24 C\n2 h at 4 C\n\n"
                    + "1\ntin\n9 x 5 x 2.75 in\n75 min at 30 C\n\n35 min at 220 C\n\n"
                    + "y\nnone\n94 C\n1 h\nforgot it over lunch\n\n"))
        .isZero();

    JsonNode sheet = sheet();
    assertThat(SheetReader.read(sheet).problems()).isEmpty();
    assertThat(sheet.path("title").asText()).isEqualTo("Tin loaf, mill class");
    assertThat(sheet.path("formula")).hasSize(4);
    assertThat(sheet.at("/process/mixing/time").asText()).isEqualTo("8 min");
    assertThat(sheet.at("/process/bulk/1/temperature").asText()).isEqualTo("4 C");
    assertThat(sheet.at("/process/baking/stages/0/oven").asText()).isEqualTo("220 C");
    assertThat(sheet.at("/process/baking/preheated").asBoolean()).isTrue();
    assertThat(sheet.at("/process/remarks/0").asText()).isEqualTo("forgot it over lunch");
    assertThat(sheet.path("seen")).hasSize(2);
    assertThat(sheet.path("notSeen")).hasSize(1);
    assertThat(out())
        .contains("taken as: white tin loaf")
        .containsPattern("water +310 g +62.0 %")
        .contains("hydration 62 %; salt 2 %; yeast 1 %")
        .contains("heard: 60 min at 24 C; then 2 h at 4 C")
        .contains("though I cannot place it: hummed a tune")
        .contains("not seen: ")
        .contains("crumbtrail trace " + file())
        .doesNotContain("nothing seen yet");
    assertThat(out().lines()).allMatch(line -> line.length() <= 80 || line.contains(file()));
    assertThat(err()).isEmpty();
  }

  @Test
  void the_end_of_the_input_keeps_what_was_typed() throws IOException {
    assertThat(run("Tuesday\n\n500 g bread flour\n300 g water")).isZero();

    assertThat(sheet().path("title").asText()).isEqualTo("Tuesday");
    assertThat(sheet().path("formula")).hasSize(2);
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).hasSize(1);
    }
  }

  @Test
  void too_little_for_a_sheet_is_kept_and_said() throws IOException {
    assertThat(run("Tuesday\n")).isEqualTo(2);
    assertThat(sheet().path("title").asText()).isEqualTo("Tuesday");
    assertThat(out()).contains("wants a recipe or something seen");
  }

  @Test
  void without_an_answer_nothing_is_written() {
    assertThat(run("\n\nskip\n?\ndone\n")).isEqualTo(2);
    assertThat(Path.of(file())).doesNotExist();
    assertThat(out()).contains("Nothing was typed");
  }

  @Test
  void one_can_go_back_and_mend_an_answer_or_take_it_away() throws IOException {
    run("Tuesday\nback\nWednesday\n\nback\nbaguette\nback\nnone\n" + RECIPE + "done\n");

    assertThat(sheet().path("title").asText()).isEqualTo("Wednesday");
    assertThat(sheet().has("style")).isFalse();
    assertThat(out()).contains("Now: Tuesday. Enter keeps it");
  }

  @Test
  void whoever_is_done_without_a_word_on_what_came_out_is_asked_once_more() throws IOException {
    run("\n\n" + RECIPE + "\ndone\ngummy crumb\n\n");

    assertThat(out()).containsOnlyOnce("You have not said what you saw");
    assertThat(sheet().path("seen")).hasSize(1);

    Files.delete(Path.of(file()));
    run("\n\n" + RECIPE + "\ndone\ndone\n");
    assertThat(sheet().has("seen")).isFalse();
    assertThat(sheet().path("formula")).hasSize(4);
  }

  @Test
  void what_was_seen_is_asked_once_where_it_has_been_told() throws IOException {
    run("\n\n" + RECIPE + "gummy crumb\n\ndone\n");

    assertThat(out()).doesNotContain("You have not said");
    assertThat(sheet().path("seen")).hasSize(1);
  }

  @Test
  void a_recipe_typed_where_the_bread_is_asked_for_brings_no_guess_at_a_name() throws IOException {
    run("\n500 g bread flour, 310 g water\n\n" + RECIPE);

    assertThat(out()).contains("has amounts in it").doesNotContain("The nearest is");
    assertThat(sheet().has("style")).isFalse();
    assertThat(sheet().path("formula")).hasSize(4);
  }

  @Test
  void a_sentence_that_was_read_as_a_stage_is_no_remark_as_well() throws IOException {
    run("\n\n" + RECIPE + "gummy crumb\n\n\nskip\n2 hours in a warm kitchen at 28 C\n\ndone\n");

    assertThat(sheet().at("/process/bulk/0/temperature").asText()).isEqualTo("28 C");
    assertThat(sheet().path("process").has("remarks")).isFalse();
  }

  @Test
  void an_unknown_bread_is_offered_the_nearest_name() throws IOException {
    run("\nmoonstone\ny\n" + RECIPE);
    assertThat(sheet().path("style").asText()).isNotEqualTo("moonstone").isNotEmpty();
    Files.delete(Path.of(file()));
    run("\nmoonstone\n\n" + RECIPE);
    assertThat(sheet().path("style").asText()).isEqualTo("moonstone");
    assertThat(out()).contains("I know no bread of that name");
  }

  @Test
  void what_cannot_be_read_is_asked_again_left_out_or_kept_as_a_remark() throws IOException {
    run("\n\n" + RECIPE + "gummy crumb\n\n\n\nlong\n8 min\nwarm\nkeep\nhot\n\nskip\ndone\n");

    assertThat(sheet().at("/process/mixing/time").asText()).isEqualTo("8 min");
    assertThat(sheet().at("/process/mixing").has("doughTemperature")).isFalse();
    assertThat(sheet().at("/process").has("room")).isFalse();
    assertThat(sheet().at("/process/remarks")).hasSize(1);
    assertThat(out()).contains("cannot be read as a time").contains("Type it another way");
  }

  @Test
  void a_line_of_the_recipe_that_cannot_be_used_does_not_spoil_the_others() throws IOException {
    run("\n\n500 g bread flour\n200 wobble\n300 g water\n\ndone\n");

    assertThat(sheet().path("formula")).hasSize(2);
    assertThat(sheet().at("/process/remarks/0").asText()).isEqualTo("200 wobble");
    assertThat(out())
        .contains("cannot be used: \"200 wobble\"")
        .containsPattern("Kept as a\\s+remark");
  }

  @Test
  void a_file_that_is_there_is_written_over_only_by_force() throws IOException {
    Files.writeString(Path.of(file()), "mine");

    assertThat(run("x\n")).isEqualTo(2);
    assertThat(err()).contains("is there already").contains("--force");
    assertThat(Files.readString(Path.of(file()))).isEqualTo("mine");
    assertThat(run("\n\n" + RECIPE, "--force")).isZero();
    assertThat(sheet().path("formula")).hasSize(4);
  }

  @Test
  void the_sheet_may_go_to_standard_output_and_the_talk_beside_it() throws IOException {
    System.setIn(new ByteArrayInputStream(("\n\n" + RECIPE).getBytes(StandardCharsets.UTF_8)));

    assertThat(Main.run("new", "-")).isZero();

    assertThat(JSON.readTree(out()).path("formula")).hasSize(4);
    assertThat(err()).contains("The recipe");
  }

  @Test
  void whoever_pastes_a_recipe_at_a_terminal_may_paste_its_empty_lines_too() throws IOException {
    System.setIn(
        new ByteArrayInputStream(
            "\n\nPoolish:\n100 g bread flour\n100 g water\n\nDough:\n400 g bread flour\n200 g water\n"
                .getBytes(StandardCharsets.UTF_8)));

    assertThat(Main.run(Terminal.of(60, Map.of("NO_COLOR", "1")), "new", file())).isZero();

    assertThat(sheet().path("preferments")).hasSize(1);
    assertThat(sheet().path("formula")).hasSize(2);
    assertThat(out().lines()).allMatch(line -> line.length() <= 60 || line.contains(file()));
  }

  private int run(String input, String... more) {
    System.setIn(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)));
    return Main.run(
        Stream.concat(Stream.of("new", file()), Stream.of(more)).toArray(String[]::new));
  }

  private String file() {
    return folder.resolve("bake.json").toString();
  }

  private JsonNode sheet() throws IOException {
    return JSON.readTree(Files.readString(Path.of(file())));
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }
}
