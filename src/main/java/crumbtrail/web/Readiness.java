package crumbtrail.web;

import crumbtrail.bakelog.LogFault;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;

/**
 * Whether the server can do its work, as whoever spreads requests over several servers wants to
 * know. The log is asked at most once a second, by one request at a time: many who ask must not
 * wear out a log that is in trouble.
 */
final class Readiness {
  private static final long FRESH_NANOS = 1_000_000_000L;

  private final Tracer tracer;
  private final Optional<LogDoor> door;
  private final ReentrantLock asking = new ReentrantLock();
  private final AtomicBoolean opening = new AtomicBoolean();
  private volatile Found found = new Found("The bake log has not answered yet.", 0, false);

  /**
   * @param missing what is missing, or null
   * @param at by the clock of this machine
   * @param known whether the log has been asked
   */
  private record Found(@Nullable String missing, long at, boolean known) {
    boolean fresh() {
      return known && System.nanoTime() - at < FRESH_NANOS;
    }
  }

  Readiness(Tracer tracer, Optional<LogDoor> door) {
    this.tracer = tracer;
    this.door = door;
  }

  /** What keeps the server from its work; empty where nothing does. */
  Optional<String> missing() {
    if (!tracer.ready()) {
      door.ifPresent(this::openBeside);
      return Optional.of("The rules are being laid out.");
    }
    return door.flatMap(this::missing);
  }

  // Whoever asks before the rules are laid out wants to know soon, and opening the log takes as
  // long.
  private void openBeside(LogDoor log) {
    if (opening.compareAndSet(false, true)) {
      Thread thread = new Thread(() -> missing(log), "open-log");
      thread.setDaemon(true);
      thread.start();
    }
  }

  private Optional<String> missing(LogDoor log) {
    if (!found.fresh() && asking.tryLock()) {
      try {
        found = new Found(ask(log), System.nanoTime(), true);
      } finally {
        asking.unlock();
      }
    }
    return Optional.ofNullable(found.missing());
  }

  private @Nullable String ask(LogDoor log) {
    try {
      Sight.knock(log.store());
      return null;
    } catch (LogFault fault) {
      // Told once for each time that it goes away, not with every question.
      boolean news = found.missing() == null || !found.known();
      String incident = news ? Errors.logged(fault).incident() : "";
      return "The bake log cannot be used now."
          + (news ? " The log of the server has more under " + incident + "." : "");
    } catch (Refusal stopping) {
      return stopping.getMessage();
    }
  }
}
