package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class CardCommandTest {
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
    System.setOut(usualOut);
    System.setErr(usualErr);
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void a_cause_is_found_by_key_by_another_key_and_by_name() {
    assertThat(Main.run("card", "over-proofed")).isZero();
    assertThat(out()).startsWith("FINAL PROOF TOO LONG").contains("Prove it to yourself");
    String once = out();
    assertThat(Main.run("card", "overproved")).isZero();
    assertThat(Main.run("card", "Final", "proof", "too", "long")).isZero();
    assertThat(out()).isEqualTo(once.repeat(3));
  }

  @Test
  void without_a_cause_they_are_listed_by_stage() {
    assertThat(Main.run("card")).isZero();
    assertThat(out())
        .containsSubsequence("ingredients", "formula", "salt-too-low", "mixing", "over-proofed");
  }

  @Test
  void a_key_that_is_nearly_right_is_helped() {
    assertThat(Main.run("card", "over-profed")).isEqualTo(2);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("Did you mean over-proofed?");
  }

  @Test
  void a_form_that_is_none_is_refused() {
    assertThat(Main.run("card", "over-proofed", "--format", "pdf")).isEqualTo(2);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("text, html, markdown");
    assertThat(Main.run("card", "over-proofed", "--format", "markdown")).isZero();
    assertThat(out()).startsWith("# Final proof too long");
  }
}
