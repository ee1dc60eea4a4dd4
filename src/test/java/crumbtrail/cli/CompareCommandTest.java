package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A bake held against a better one, from the command line. */
class CompareCommandTest {
  private static final String BETTER = "cases/healthy-tin-loaf.json";
  private static final String FAILED = "cases/over-proofed-tin-loaf.json";

  @RegisterExtension final Listening shell = new Listening();

  @Test
  void what_explains_the_failure_stands_first_with_the_risks_it_moves() {
    assertThat(shell.run("compare", BETTER, FAILED)).isZero();

    assertThat(shell.out())
        .contains("What can explain the change")
        .containsSubsequence("1.  final proof, time: 60 min, now 3 h", "risk of final proof too")
        .contains("Different too, and not held to explain it")
        .contains("Seen now and not then");
    assertThat(shell.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void as_json_it_holds_the_differences_in_order() throws IOException {
    assertThat(shell.run("compare", BETTER, FAILED, "--format", "json")).isZero();

    JsonNode found = new ObjectMapper().readTree(shell.out());
    assertThat(found.at("/differences/0/difference/what").asText()).isEqualTo("final proof, time");
    assertThat(found.at("/differences/0/power").asDouble()).isPositive();
    assertThat(found.at("/together").asDouble()).isBetween(0.5, 1.0);
  }

  @Test
  void a_sheet_held_against_itself_differs_in_nothing() {
    assertThat(shell.run("compare", BETTER, BETTER)).isZero();

    assertThat(shell.out()).contains("Nothing on the two sheets differs.");
  }

  @Test
  void a_sheet_that_is_not_there_is_named() {
    assertThat(shell.run("compare", "gone.json", FAILED)).isEqualTo(2);

    assertThat(shell.err()).contains("gone.json");
  }
}
