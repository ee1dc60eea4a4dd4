package crumbtrail.cli.screen;

import java.io.PrintWriter;
import java.time.Duration;
import java.time.InstantSource;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/**
 * One line on standard error that tells how far long work is, and how long it still takes. The line
 * is written over itself and is gone when the work is done.
 */
public final class Progress implements AutoCloseable {
  /** Where nobody knows how much there is. */
  public static final long UNKNOWN = -1;

  private static final String ERASE = "\r\u001b[K";
  private static final long PAUSE_MILLIS = 200;

  // Before this much is done or this long has passed, a time left would be a guess.
  private static final double LEAST_SHARE = 0.02;
  private static final long LEAST_MILLIS = 1500;

  private final PrintWriter err;
  private final boolean shown;
  private final String what;
  private final long total;
  private final InstantSource clock;
  private final long start;
  private ScheduledExecutorService ticking;
  private long last;
  private boolean drawn;

  private Progress(PrintWriter err, boolean shown, String what, long total, InstantSource clock) {
    this.err = err;
    this.shown = shown;
    this.what = what;
    this.total = total;
    this.clock = clock;
    this.start = clock.millis();
    this.last = start;
  }

  /**
   * Work in steps.
   *
   * @param shown false where nobody would see it; then nothing is written
   * @param what what is counted: "sheets"
   * @param total how many there are, or {@link #UNKNOWN}
   */
  public static Progress counting(
      PrintWriter err, boolean shown, String what, long total, InstantSource clock) {
    return new Progress(err, shown, what, total, clock);
  }

  /** Work of which nobody knows how far it is; from {@link #begin} on the seconds are counted. */
  public static Progress waiting(PrintWriter err, boolean shown, String what) {
    return new Progress(err, shown, what, UNKNOWN, InstantSource.system());
  }

  /** Begins to count the seconds. */
  public void begin() {
    if (!shown) {
      return;
    }
    ticking =
        Executors.newSingleThreadScheduledExecutor(
            work -> {
              Thread thread = new Thread(work, "progress");
              thread.setDaemon(true);
              return thread;
            });
    var unused = ticking.scheduleAtFixedRate(this::tick, 1, 1, TimeUnit.SECONDS);
  }

  /** So many are done. */
  public synchronized void done(long done) {
    long now = clock.millis();
    if (shown && now - last >= PAUSE_MILLIS) {
      last = now;
      draw(counted(done, now - start));
    }
  }

  /** A line of its own, which stays. */
  public synchronized void say(String words) {
    if (drawn) {
      err.print(ERASE);
      drawn = false;
    }
    err.println(words);
  }

  private synchronized void tick() {
    draw(what + ", " + told(clock.millis() - start));
  }

  private String counted(long done, long passed) {
    if (total <= 0) {
      return done + " " + what + ", " + told(passed);
    }
    String count = Math.min(done, total) + " of " + total + " " + what;
    double share = Math.min(1, (double) done / total);
    if (share < LEAST_SHARE || passed < LEAST_MILLIS) {
      return count;
    }
    return count + ", about " + told(Math.round(passed * (1 - share) / share)) + " left";
  }

  private static String told(long millis) {
    long seconds = Math.round(millis / 1000.0);
    Duration time = Duration.ofSeconds(seconds);
    return time.toMinutes() == 0
        ? seconds + " s"
        : time.toMinutes() + " min " + time.toSecondsPart() + " s";
  }

  private void draw(String line) {
    err.print(ERASE + line);
    err.flush();
    drawn = true;
  }

  /** Takes the line away. */
  @Override
  public void close() {
    if (ticking != null) {
      ticking.shutdownNow();
    }
    synchronized (this) {
      if (drawn) {
        err.print(ERASE);
        err.flush();
      }
    }
  }
}
