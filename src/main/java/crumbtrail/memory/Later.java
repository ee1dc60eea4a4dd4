package crumbtrail.memory;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/**
 * A value that another thread is at work on. Who asks for it before it is there waits. Safe for use
 * by many threads.
 *
 * @param <T> what it is
 */
public final class Later<T> implements Supplier<T> {
  private final FutureTask<T> work;

  private Later(FutureTask<T> work) {
    this.work = work;
  }

  /**
   * Begins with the work and returns at once. It does not keep the program alive.
   *
   * @param name of the thread that works
   */
  public static <T> Later<T> begun(String name, Callable<T> work) {
    FutureTask<T> task = new FutureTask<>(work);
    Thread thread = new Thread(task, name);
    thread.setDaemon(true);
    thread.start();
    return new Later<>(task);
  }

  /** Whether {@link #get} answers at once, be it with what went wrong. */
  public boolean done() {
    return work.isDone();
  }

  /**
   * The value, once it is there.
   *
   * @throws RuntimeException what went wrong with the work, every time that it is asked for
   * @throws IllegalStateException if the waiting thread is told to stop, or with what went wrong as
   *     its cause where that is no fault of the program
   */
  @Override
  public T get() {
    try {
      return work.get();
    } catch (ExecutionException thrown) {
      if (thrown.getCause() instanceof RuntimeException here) {
        throw here;
      }
      throw new IllegalStateException(thrown.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped before the work was done", stopped);
    }
  }
}
