package crumbtrail.memory;

import java.util.function.Supplier;

/**
 * A value that is worked out when it is first asked for, and kept. Safe for use by many threads:
 * the first works it out and the others wait. What its working out throws is thrown to whoever
 * asked, and the next who asks tries again.
 *
 * @param <T> what it is
 */
public final class Once<T> implements Supplier<T> {
  private final Supplier<T> source;
  private volatile T value;

  /**
   * @param source works it out; not null
   */
  public Once(Supplier<T> source) {
    this.source = source;
  }

  @Override
  public T get() {
    T known = value;
    if (known == null) {
      synchronized (this) {
        known = value;
        if (known == null) {
          known = source.get();
          value = known;
        }
      }
    }
    return known;
  }
}
