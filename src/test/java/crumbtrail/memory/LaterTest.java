package crumbtrail.memory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class LaterTest {
  @Test
  void it_is_there_once_the_work_is_done() {
    CountDownLatch told = new CountDownLatch(1);
    Later<String> later =
        Later.begun(
            "kneading",
            () -> {
              told.await();
              return "dough";
            });

    assertThat(later.done()).isFalse();
    told.countDown();
    assertThat(later.get()).isEqualTo("dough");
    assertThat(later.done()).isTrue();
  }

  @Test
  void what_went_wrong_is_told_to_whoever_asks() {
    Later<String> broken =
        Later.begun(
            "kneading",
            () -> {
              throw new IllegalArgumentException("no flour");
            });
    Later<String> missing =
        Later.begun(
            "kneading",
            () -> {
              throw new IOException("no bowl");
            });

    assertThatThrownBy(broken::get).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(broken::get).hasMessage("no flour");
    assertThatThrownBy(missing::get)
        .isInstanceOf(IllegalStateException.class)
        .hasRootCauseMessage("no bowl");
  }

  @Test
  void once_is_worked_out_once_and_again_only_after_it_failed() {
    AtomicInteger times = new AtomicInteger();
    Once<Integer> once =
        new Once<>(
            () -> {
              if (times.incrementAndGet() == 1) {
                throw new IllegalStateException("not yet");
              }
              return times.get();
            });

    assertThatThrownBy(once::get).hasMessage("not yet");
    assertThat(once.get()).isEqualTo(2);
    assertThat(once.get()).isEqualTo(2);
  }
}
