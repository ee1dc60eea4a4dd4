package crumbtrail.bakelog;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.LongConsumer;

/**
 * Traces a whole log anew after the rules have changed. Bakes are fetched some at a time and traced
 * on all cores, so memory stays flat; each is kept as soon as it is done and then counts as up to
 * date, so that a run which was broken off needs no memory of how far it came.
 */
public final class Retrace {
  private static final int CORES = Runtime.getRuntime().availableProcessors();

  /** How many bakes are held at once: enough that no core waits while others are kept. */
  private static final int AHEAD = 4 * CORES;

  private Retrace() {}

  /**
   * What became of the bakes.
   *
   * @param traced traced anew
   * @param upToDate had been traced with these rules before
   * @param changed of those traced anew: have another cause first
   * @param unreadable have a sheet that these rules cannot read
   */
  public record Count(long traced, long upToDate, long changed, long unreadable) {}

  /**
   * A bake with another cause first.
   *
   * @param bake its number
   * @param label its name
   * @param before key of the first cause so far
   * @param now key of the first cause with these rules
   */
  public record Change(long bake, String label, Optional<String> before, Optional<String> now) {}

  /**
   * Traces all bakes of a log that were not traced with these rules.
   *
   * @param ruleBase version of the rules
   * @param trace traces one bake; must be safe for many threads
   * @param changes told of each bake that has another cause first
   * @param progress told how many bakes are done, after each
   */
  public static Count run(
      BakeLog log,
      String ruleBase,
      Function<Bake, Optional<Traced>> trace,
      Consumer<Change> changes,
      LongConsumer progress) {
    long[] count = new long[4];
    ExecutorService pool = Executors.newFixedThreadPool(CORES);
    Deque<Future<Done>> ahead = new ArrayDeque<>();
    try {
      Iterator<Bake> bakes = log.bakes(0).iterator();
      while (bakes.hasNext()) {
        Bake bake = bakes.next();
        Traced traced = bake.traced();
        if (traced != null && traced.ruleBase().equals(ruleBase)) {
          count[1]++;
          progress.accept(done(count));
          continue;
        }
        ahead.add(pool.submit(() -> new Done(bake, trace.apply(bake))));
        if (ahead.size() == AHEAD) {
          keep(log, next(ahead), changes, count);
          progress.accept(done(count));
        }
      }
      while (!ahead.isEmpty()) {
        keep(log, next(ahead), changes, count);
        progress.accept(done(count));
      }
    } finally {
      pool.shutdownNow();
    }
    return new Count(count[0], count[1], count[2], count[3]);
  }

  private static long done(long[] count) {
    return count[0] + count[1] + count[3];
  }

  // The oldest, so that bakes are kept, and told of, in their order.
  private static Done next(Deque<Future<Done>> ahead) {
    try {
      return ahead.removeFirst().get();
    } catch (ExecutionException fault) {
      if (fault.getCause() instanceof RuntimeException own) {
        throw own;
      }
      throw new IllegalStateException("a bake could not be traced", fault.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped while bakes were traced", stopped);
    }
  }

  private record Done(Bake bake, Optional<Traced> traced) {}

  private static void keep(BakeLog log, Done done, Consumer<Change> changes, long[] count) {
    if (done.traced().isEmpty()) {
      count[3]++;
      return;
    }
    // What the baker changed in the meantime stays; only the trace is new.
    log.change(done.bake().id(), bake -> bake.withTraced(done.traced().get()));
    count[0]++;
    Optional<String> before =
        Optional.ofNullable(done.bake().traced())
            .flatMap(traced -> Digests.ofReport(traced.report()).firstCause());
    Optional<String> now = Digests.ofReport(done.traced().get().report()).firstCause();
    if (done.bake().traced() != null && !before.equals(now)) {
      count[2]++;
      changes.accept(new Change(done.bake().id(), done.bake().label(), before, now));
    }
  }
}
