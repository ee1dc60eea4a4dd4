package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class VaryCommandTest {
  private static final String SHEET = "cases/healthy-tin-loaf.json";

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

  @Test
  void a_knob_is_an_option_wherever_it_stands() {
    assertThat(Main.run("vary", "--salt", "0..3%", SHEET, "--steps", "4")).isZero();
    assertThat(out()).contains("Salt turned from 0 to 3 %").contains("too little salt");
    assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
  }

  @Test
  void the_answer_may_be_json() throws IOException {
    assertThat(Main.run("vary", SHEET, "--turn", "salt=0..3%", "--steps", "3", "--format", "json"))
        .isZero();
    JsonNode answer = new ObjectMapper().readTree(out());
    assertThat(answer.at("/dial/key").asText()).isEqualTo("salt");
    assertThat(answer.at("/points").size()).isBetween(3, 4);
    assertThat(answer.at("/points/0/causes").isObject()).isTrue();
  }

  @Test
  void two_knobs_make_a_board() {
    assertThat(Main.run("vary", SHEET, "--salt=0..3%", "--proof-time=30..90min", "--steps", "2"))
        .isZero();
    assertThat(out()).contains("The leading cause");
  }

  @Test
  void what_cannot_be_turned_is_refused_with_what_can() {
    assertThat(Main.run("vary", SHEET, "--turn", "sand=0..3%")).isEqualTo(2);
    assertThat(err.toString(StandardCharsets.UTF_8))
        .contains("\"sand\" cannot be turned")
        .contains("proof-time");
    assertThat(Main.run("vary", SHEET)).isEqualTo(2);
    assertThat(Main.run("vary", SHEET, "--salt", "much")).isEqualTo(2);
    assertThat(Main.run("vary", SHEET, "--salt", "0..3%", "--steps", "1")).isEqualTo(2);
  }

  @Test
  void the_help_names_every_knob() {
    assertThat(Main.run("vary", "--help")).isZero();
    assertThat(out()).contains("--proof-humidity").contains("within 0..5%").contains("55..80% ");
    assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }
}
