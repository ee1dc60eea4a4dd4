package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class MysteryCommandTest {
  private final InputStream usualIn = System.in;
  private final PrintStream usualOut = System.out;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  @BeforeEach
  void listen() {
    System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
  }

  @AfterEach
  void stop_listening() {
    System.setIn(usualIn);
    System.setOut(usualOut);
  }

  @Test
  void a_learner_asks_names_and_is_told() {
    type("1\n99\nn\n\nn\nzebra\ntin\n");
    assertThat(Main.run("mystery", "--seed", "3")).isZero();
    assertThat(out())
        .contains("Mystery loaf 3, easy")
        .contains("500 g bread flour")
        .contains("Type a number of this list")
        .contains("No cause is called so")
        .contains("Right: too much dough for the tin.")
        .contains("good diagnostician");
  }

  @Test
  void giving_up_shows_what_it_was() {
    type("q\n");
    assertThat(Main.run("mystery", "--seed", "3")).isZero();
    assertThat(out()).contains("It was: too much dough for the tin.");
  }

  @Test
  void the_list_comes_again_and_one_may_give_up_where_a_cause_is_to_be_named() {
    type("?\nn\nback\nn\nq\n");
    assertThat(Main.run("mystery", "--seed", "3")).isZero();
    assertThat(out())
        .contains("q gives up and shows it")
        .contains("It was: too much dough for the tin.");
    assertThat(out().lines().filter(line -> line.startsWith("   1  "))).hasSize(2);
  }

  @Test
  void the_end_of_the_input_ends_it() {
    type("");
    assertThat(Main.run("mystery", "--seed", "5", "--level", "hard")).isZero();
    assertThat(out()).contains("The input has ended.");
  }

  @Test
  void lessons_are_listed_and_shown() {
    assertThat(Main.run("lesson")).isZero();
    assertThat(out()).contains("  1  Salt").contains(" 16  Layers");
    assertThat(Main.run("lesson", "1")).isZero();
    assertThat(out()).contains("Salt turned from 0 to 4 %").contains("mystery --level easy");
    assertThat(Main.run("lesson", "99")).isEqualTo(2);
  }

  private static void type(String text) {
    System.setIn(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }
}
