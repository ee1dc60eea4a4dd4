package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands that study the bake log, as typed. */
class LogStudyTest {
  private static final String GOOD = "cases/healthy-tin-loaf.json";
  private static final String FAILED = "cases/over-proofed-tin-loaf.json";

  @RegisterExtension final Listening shell = new Listening();

  @TempDir Path folder;

  /** Good on the first, good and failed on the second, another recipe between. */
  @BeforeEach
  void some_bakes() {
    add(GOOD, "2026-03-01", "good", "Tin loaf");
    add(GOOD, "2026-03-02T09:00", "good", "tin LOAF");
    add(GOOD, "2026-03-02T10:00", "good", "Milk loaf");
    add(FAILED, "2026-03-02T11:00", "failed", "Tin loaf");
    add(GOOD, "2026-03-05", "good", "Tin loaf");
  }

  private void add(String sheet, String when, String outcome, String recipe) {
    assertThat(
            run(
                "add",
                sheet,
                "--no-trace",
                "--when",
                when,
                "--outcome",
                outcome,
                "--recipe",
                recipe))
        .isZero();
  }

  @Test
  void two_bakes_are_held_against_each_other_as_two_sheets_are() {
    assertThat(run("compare", "1", "4")).isZero();

    assertThat(shell.out())
        .startsWith("bake 4, 2026-03-02, failed: ")
        .contains("held against bake 1, 2026-03-01, good: ")
        .containsSubsequence("1.  final proof, time: 60 min, now 3 h", "risk of final proof too");
    assertThat(shell.out().lines()).allMatch(line -> line.length() <= 80);
    String logged = shell.out().substring(shell.out().indexOf("What can explain"));
    assertThat(shell.run("compare", GOOD, FAILED)).isZero();
    assertThat(shell.out()).endsWith(logged);
  }

  @Test
  void since_takes_the_last_good_bake_of_the_recipe_before_it() throws IOException {
    assertThat(run("since", "4", "--format", "json")).isZero();

    JsonNode found = new ObjectMapper().readTree(shell.out());
    // The milk loaf of the same morning is another recipe; the good bake of the fifth came later.
    assertThat(found.at("/better/id").asLong()).isEqualTo(2);
    assertThat(found.at("/bake/id").asLong()).isEqualTo(4);
    assertThat(found.at("/bake/outcome").asText()).isEqualTo("failed");
    assertThat(found.at("/differences/0/difference/what").asText()).isEqualTo("final proof, time");
    assertThat(found.at("/together").asDouble()).isBetween(0.5, 1.0);
  }

  @Test
  void where_it_never_worked_before_that_is_said() {
    assertThat(run("since", "1")).isEqualTo(2);

    assertThat(shell.err())
        .contains("No bake of \"Tin loaf\" before bake 1 is noted as good.")
        .contains("crumbtrail log outcome ID good")
        .contains("crumbtrail log compare BETTER 1");
  }

  @Test
  void trends_of_a_recipe_are_told_in_words_and_as_json() throws IOException {
    assertThat(run("retrace")).isZero();
    assertThat(run("confirm", "4", "over-proofed")).isZero();

    assertThat(run("trends", "--recipe", "tin loaf")).isZero();
    assertThat(shell.out())
        .startsWith("Tin loaf: 4 bakes, 2026-03-01 to 2026-03-05, a cause confirmed of 1\n")
        .contains("Proof ripeness, times ready", "Lesson 8,", "crumbtrail lesson 8");

    assertThat(run("trends", "--format", "json", "--most", "2")).isZero();
    JsonNode found = new ObjectMapper().readTree(shell.out());
    assertThat(found.path("bakes").asInt()).isEqualTo(2);
    assertThat(found.has("recipe")).isFalse();
    assertThat(found.at("/confirmed/0/cause").asText()).isEqualTo("over-proofed");
    assertThat(found.at("/charts/0/points").size()).isEqualTo(2);

    assertThat(run("trends", "--class", "3")).isZero();
    assertThat(shell.err()).contains("No bake is like that");
  }

  @Test
  void what_was_learnt_is_shown_and_a_trace_by_it_tells_what_moved() throws IOException {
    assertThat(run("learn")).isZero();
    assertThat(shell.out()).contains("Nothing was learnt yet");
    assertThat(run("calibration")).isZero();
    assertThat(shell.out()).contains("nothing to count yet");
    assertThat(kitchen("{\"seen\": [\"dense crumb\", \"rose slowly\"]}")).isEqualTo(2);
    assertThat(shell.err()).contains("has taught nothing yet", "crumbtrail log confirm");

    assertThat(run("retrace")).isZero();
    for (String id : List.of("1", "2", "5")) {
      assertThat(run("confirm", id, "dough-too-cold")).isZero();
    }
    assertThat(run("confirm", "4", "over-proofed")).isZero();
    assertThat(run("learn")).isZero();
    assertThat(shell.out())
        .startsWith("Learnt from 4 judged bakes\n")
        .containsPattern("dough too cold +0\\.\\d +3 ")
        .contains("crumbtrail trace SHEET.json --kitchen");
    assertThat(run("calibration")).isZero();
    assertThat(shell.out()).contains("first cause was right    1 of 4, 25 % (5 to 70 %)");

    assertThat(kitchen("{\"seen\": [\"dense crumb\", \"rose slowly\"]}")).isZero();
    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains("By the odds of this kitchen")
        .containsPattern(
            "dough too cold: \\d+ %, would be \\d+ % elsewhere; [^;]+; its odds are 1\\.\\d");
    assertThat(run("learn", "--format", "json")).isZero();
    JsonNode learnt = new ObjectMapper().readTree(shell.out());
    assertThat(learnt.path("judged").asInt()).isEqualTo(4);
    assertThat(learnt.at("/causes/0/cause").asText()).isEqualTo("dough-too-cold");
    assertThat(learnt.at("/causes/0/decibans").asDouble()).isPositive();
  }

  @Test
  void what_was_learnt_is_forgotten_without_a_bake_being_deleted_and_comes_back() {
    assertThat(run("retrace")).isZero();
    assertThat(run("confirm", "1", "dough-too-cold")).isZero();
    assertThat(run("confirm", "5", "dough-too-cold")).isZero();

    assertThat(run("learn", "--reset", "--since", "2026-03-04")).isZero();
    assertThat(shell.out()).startsWith("Learnt from 1 judged bake since 2026-03-04 00:00\n");
    assertThat(run("learn", "--reset")).isZero();
    assertThat(shell.out())
        .startsWith("Nothing was learnt yet since 20")
        .contains("crumbtrail log learn --again");
    assertThat(kitchen("{\"seen\": [\"dense crumb\"]}")).isEqualTo(2);
    assertThat(run("learn", "--again")).isZero();
    assertThat(shell.out()).startsWith("Learnt from 2 judged bakes\n");
    assertThat(run("list")).isZero();
    assertThat(shell.out().lines()).hasSize(5);
  }

  private int kitchen(String sheet) {
    return shell.piped(
        sheet, "trace", "-", "--kitchen", "--log", folder.resolve("bakes").toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "compare 1",
        "compare 1 7",
        "compare 7 1",
        "since 7",
        "since",
        "since x",
        "trends --most 0"
      })
  void what_cannot_be_done_is_said_and_ends_with_two(String command) {
    assertThat(run(command.split(" "))).isEqualTo(2);
    assertThat(shell.out()).isEmpty();
    assertThat(shell.err().strip()).isNotEmpty().doesNotContain("Exception").doesNotContain("\tat");
  }

  private int run(String... arguments) {
    List<String> all = new ArrayList<>(List.of("log"));
    all.addAll(List.of(arguments));
    all.addAll(List.of("--log", folder.resolve("bakes").toString()));
    return shell.run(all.toArray(String[]::new));
  }
}
