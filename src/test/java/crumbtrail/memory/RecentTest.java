package crumbtrail.memory;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RecentTest {
  private final List<Integer> worked = new ArrayList<>();
  private final Recent<Integer, String> recent = new Recent<>(10);

  private String ask(int number) {
    return recent.of(
        number,
        one -> {
          worked.add(one);
          return "answer " + one;
        });
  }

  @Test
  void an_answer_is_worked_out_once() {
    assertThat(ask(7)).isEqualTo("answer 7");
    assertThat(ask(7)).isEqualTo("answer 7");
    assertThat(worked).containsExactly(7);
  }

  @Test
  void what_is_asked_again_and_again_stays_and_the_rest_is_forgotten() {
    for (int number = 1; number <= 40; number++) {
      ask(0);
      ask(number);
    }
    worked.clear();
    ask(0);
    ask(40);
    ask(1);

    assertThat(worked).containsExactly(1);
  }

  @Test
  void no_more_are_kept_than_asked_for() {
    for (int number = 1; number <= 1000; number++) {
      ask(number);
    }
    worked.clear();
    for (int number = 1000; number > 990; number--) {
      ask(number);
    }
    assertThat(worked).hasSizeBetween(1, 6);
    worked.clear();
    for (int number = 1; number <= 990; number++) {
      ask(number);
    }
    assertThat(worked).hasSize(990);
  }

  @Test
  void many_who_ask_at_once_get_the_same_answers() {
    Recent<Integer, String> shared = new Recent<>(4);
    List<String> wrong =
        IntStream.range(0, 20_000)
            .parallel()
            .filter(number -> !shared.of(number % 9, one -> "a" + one).equals("a" + number % 9))
            .mapToObj(Integer::toString)
            .toList();

    assertThat(wrong).isEmpty();
  }
}
