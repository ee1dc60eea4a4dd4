package crumbtrail.bakelog.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Retrace;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.SomeBakes;
import crumbtrail.bakelog.Traced;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A whole log traced anew with other rules. */
class RetraceTest {
  private static final String NEW = "def456";
  private static final int MANY = 70;

  @TempDir Path folder;

  private final List<Retrace.Change> changes = new ArrayList<>();
  private final List<Long> progress = new ArrayList<>();

  // Every third bake has another cause first now.
  private static Optional<Traced> trace(Bake bake) {
    String report =
        bake.id() % 3 == 0
            ? SomeBakes.REPORT.replace("over-proofed", "salt-too-low")
            : SomeBakes.REPORT;
    return Optional.of(new Traced(report, NEW));
  }

  private Retrace.Count run(BakeLog log) {
    return Retrace.run(log, NEW, RetraceTest::trace, changes::add, progress::add);
  }

  private static void fill(BakeLog log) {
    for (int day = 0; day < MANY; day++) {
      log.add(SomeBakes.traced(day));
    }
    log.add(SomeBakes.tinLoaf(MANY));
  }

  @ParameterizedTest
  @EnumSource
  void what_changed_rank_is_told_and_the_second_run_has_nothing_to_do(StoreKind kind) {
    try (LogStore store = SqlLogStore.open(kind.place(folder))) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      fill(log);

      assertThat(run(log)).isEqualTo(new Retrace.Count(MANY + 1, 0, MANY / 3, 0));

      assertThat(changes).hasSize(MANY / 3);
      assertThat(changes.get(0))
          .isEqualTo(
              new Retrace.Change(
                  3,
                  "Tin loaf, class 2",
                  Optional.of("over-proofed"),
                  Optional.of("salt-too-low")));
      assertThat(progress).hasSize(MANY + 1).isSorted().endsWith(MANY + 1L);
      assertThat(log.bakes(0)).allMatch(bake -> bake.traced().ruleBase().equals(NEW));
      assertThat(run(log)).isEqualTo(new Retrace.Count(0, MANY + 1, 0, 0));
    }
  }

  @Test
  void every_core_has_a_bake_to_trace_at_the_same_time() {
    // A machine may have more cores than there are bakes.
    int cores = Math.min(MANY + 1, Runtime.getRuntime().availableProcessors());
    CountDownLatch together = new CountDownLatch(cores);
    Set<Thread> threads = ConcurrentHashMap.newKeySet();
    try (LogStore store = SqlLogStore.open(StoreKind.H2.place(folder))) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      fill(log);

      Retrace.Count count =
          Retrace.run(
              log,
              NEW,
              bake -> {
                threads.add(Thread.currentThread());
                together.countDown();
                // Nobody goes on before there is one bake for every core.
                assertThat(awaited(together)).isTrue();
                return trace(bake);
              },
              changes::add,
              progress::add);

      assertThat(count.traced()).isEqualTo(MANY + 1);
      assertThat(threads).hasSize(cores);
    }
  }

  @Test
  void a_slow_bake_holds_up_neither_the_order_nor_more_bakes_than_a_few() {
    int atOnce = 4 * Runtime.getRuntime().availableProcessors();
    AtomicInteger begun = new AtomicInteger();
    AtomicInteger whileItWaited = new AtomicInteger();
    try (LogStore store = SqlLogStore.open(StoreKind.H2.place(folder))) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      fill(log);
      Retrace.run(
          log,
          NEW,
          bake -> {
            begun.incrementAndGet();
            if (bake.id() == 3) {
              whileItWaited.set(settled(begun));
            }
            return trace(bake);
          },
          changes::add,
          progress::add);

      // The two before it, and no more after it than are held.
      assertThat(whileItWaited.get()).isBetween(3, 2 + atOnce);
      assertThat(begun.get()).isEqualTo(MANY + 1);
      assertThat(changes).extracting(Retrace.Change::bake).isSorted().startsWith(3L, 6L);
    }
  }

  /** The number when it has stopped growing. */
  private static int settled(AtomicInteger number) {
    int before = -1;
    while (number.get() != before) {
      before = number.get();
      java.util.concurrent.locks.LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(500));
    }
    return before;
  }

  private static boolean awaited(CountDownLatch latch) {
    try {
      return latch.await(60, TimeUnit.SECONDS);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }

  @ParameterizedTest
  @EnumSource
  void a_run_that_is_broken_off_goes_on_where_it_was(StoreKind kind) {
    try (LogStore store = SqlLogStore.open(kind.place(folder))) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      fill(log);
      Set<Long> seen = ConcurrentHashMap.newKeySet();
      assertThatThrownBy(
              () ->
                  Retrace.run(
                      log,
                      NEW,
                      bake -> {
                        if (bake.id() > 40) {
                          throw new IllegalStateException("the power went");
                        }
                        seen.add(bake.id());
                        return trace(bake);
                      },
                      changes::add,
                      progress::add))
          .hasMessageContaining("the power went");

      Retrace.Count count = run(log);

      assertThat(count.upToDate()).isBetween(20L, 40L);
      assertThat(count.traced() + count.upToDate()).isEqualTo(MANY + 1);
    }
  }

  @ParameterizedTest
  @EnumSource
  void what_the_baker_noted_meanwhile_stays_and_what_cannot_be_read_is_counted(StoreKind kind) {
    try (LogStore store = SqlLogStore.open(kind.place(folder))) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      log.add(SomeBakes.traced(0));
      log.add(SomeBakes.traced(1));

      Retrace.Count count =
          Retrace.run(
              log,
              NEW,
              bake -> {
                if (bake.id() == 1) {
                  log.change(1, one -> one.withNote("meanwhile"));
                  return trace(bake);
                }
                return Optional.empty();
              },
              changes::add,
              progress::add);

      assertThat(count).isEqualTo(new Retrace.Count(1, 0, 0, 1));
      assertThat(log.find(1).orElseThrow().note()).isEqualTo("meanwhile");
      assertThat(log.find(1).orElseThrow().traced().ruleBase()).isEqualTo(NEW);
      assertThat(log.find(2).orElseThrow().traced().ruleBase()).isEqualTo("abc123");
    }
  }
}
