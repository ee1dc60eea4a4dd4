package crumbtrail.web;

import java.util.function.Supplier;

/** A value that is worked out when it is first asked for, and kept. */
final class Once<T> implements Supplier<T> {
  private final Supplier<T> source;
  private volatile T value;

  Once(Supplier<T> source) {
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
