package crumbtrail.memory;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * Answers that were worked out lately; those not asked for longest are forgotten first. Safe for
 * use by many threads; two that ask the same at once both work it out.
 *
 * @param <Q> what is asked; two questions that are equal have the same answer
 * @param <A> what is answered, never null
 */
public final class Recent<Q, A> {
  private final Map<Q, A> known;

  /**
   * @param most how many answers are kept
   */
  public Recent(int most) {
    known =
        Collections.synchronizedMap(
            new LinkedHashMap<>(16, 0.75f, true) {
              @Override
              protected boolean removeEldestEntry(Map.Entry<Q, A> eldest) {
                return size() > most;
              }
            });
  }

  /**
   * The answer, from memory where it is known.
   *
   * @param work works it out
   */
  public A of(Q asked, Function<Q, A> work) {
    A answer = known.get(asked);
    if (answer == null) {
      answer = work.apply(asked);
      known.put(asked, answer);
    }
    return answer;
  }
}
