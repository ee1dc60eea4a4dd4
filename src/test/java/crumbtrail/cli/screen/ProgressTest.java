package crumbtrail.cli.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Instant;
import java.time.InstantSource;
import org.junit.jupiter.api.Test;

class ProgressTest {
  private final StringWriter written = new StringWriter();
  private final PrintWriter err = new PrintWriter(written);
  private long now;
  private final InstantSource clock = () -> Instant.ofEpochMilli(now);

  @Test
  void the_time_left_follows_from_the_time_taken() {
    try (Progress progress = Progress.counting(err, true, "sheets", 400, clock)) {
      now = 30_000;
      progress.done(100);
      assertThat(written.toString()).endsWith("100 of 400 sheets, about 1 min 30 s left");
      now = 117_000;
      progress.done(390);
      assertThat(written.toString()).endsWith("390 of 400 sheets, about 3 s left");
    }
    assertThat(written.toString()).endsWith("\r\u001b[K").doesNotContain("\n");
  }

  @Test
  void too_early_no_time_is_guessed() {
    try (Progress progress = Progress.counting(err, true, "sheets", 400, clock)) {
      now = 1_000;
      progress.done(300);
      assertThat(written.toString()).endsWith("300 of 400 sheets");
      now = 60_000;
      progress.done(4);
      assertThat(written.toString()).endsWith("4 of 400 sheets");
    }
  }

  @Test
  void where_nobody_knows_how_much_there_is_the_count_and_the_time_are_told() {
    try (Progress progress = Progress.counting(err, true, "sheets", Progress.UNKNOWN, clock)) {
      now = 61_000;
      progress.done(7);
      assertThat(written.toString()).endsWith("7 sheets, 1 min 1 s");
    }
  }

  @Test
  void it_is_not_written_more_often_than_an_eye_can_follow() {
    try (Progress progress = Progress.counting(err, true, "sheets", 10_000, clock)) {
      for (now = 1; now <= 1000; now++) {
        progress.done(now);
      }
    }
    assertThat(written.toString().split("of 10000", -1)).hasSize(6);
  }

  @Test
  void where_nobody_watches_nothing_is_written() {
    try (Progress progress = Progress.counting(err, false, "sheets", 10, clock);
        Progress waiting = Progress.waiting(err, false, "compiling")) {
      now = 60_000;
      progress.done(5);
      waiting.begin();
    }
    assertThat(written.toString()).isEmpty();
  }
}
