package crumbtrail.web;

import crumbtrail.bakelog.LogStore;
import java.util.function.Supplier;

/**
 * The way to the bake log. It is opened when somebody first asks for something of it, so that
 * serving begins as fast as without one; where that fails, it is tried again the next time.
 */
public final class LogDoor implements AutoCloseable {
  private final Supplier<LogStore> opening;
  private LogStore open;
  private boolean closed;

  /**
   * @param opening opens the log; called again after it has failed
   */
  public LogDoor(Supplier<LogStore> opening) {
    this.opening = opening;
  }

  /** The log. */
  synchronized LogStore store() {
    if (closed) {
      throw new Refusal(503, "The server is stopping.");
    }
    if (open == null) {
      open = opening.get();
    }
    return open;
  }

  @Override
  public synchronized void close() {
    closed = true;
    if (open != null) {
      open.close();
      open = null;
    }
  }
}
