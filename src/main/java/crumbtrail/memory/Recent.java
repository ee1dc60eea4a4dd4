package crumbtrail.memory;

import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Answers that were worked out lately. Once half as many are kept as may be, those that nobody has
 * asked for since the last time are forgotten. Safe for use by many threads, none of which waits
 * for another to read; two that ask the same at once both work it out.
 *
 * @param <Q> what is asked; two questions that are equal have the same answer
 * @param <A> what is answered, never null
 */
public final class Recent<Q, A> {
  private final int half;
  private volatile Known<Q, A> known =
      new Known<>(new ConcurrentHashMap<>(), new ConcurrentHashMap<>());

  private record Known<Q, A>(ConcurrentHashMap<Q, A> asked, ConcurrentHashMap<Q, A> before) {}

  /**
   * @param most how many answers are kept
   */
  public Recent(int most) {
    half = Math.max(1, most / 2);
  }

  /**
   * The answer, from memory where it is known.
   *
   * @param work works it out
   */
  public A of(Q asked, Function<Q, A> work) {
    Known<Q, A> now = known;
    A answer = now.asked().get(asked);
    if (answer == null) {
      answer = now.before().get(asked);
      if (answer == null) {
        answer = work.apply(asked);
      }
      now.asked().put(asked, answer);
      if (now.asked().size() >= half) {
        forget(now);
      }
    }
    return answer;
  }

  // Of several that find it full only the first turns the page.
  @SuppressWarnings("ReferenceEquality")
  private synchronized void forget(Known<Q, A> full) {
    if (known == full) {
      known = new Known<>(new ConcurrentHashMap<>(), full.asked());
    }
  }
}
