package crumbtrail.advice;

import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a baker wants of the next bake.
 *
 * @param start when the mixing begins; empty leaves the clock out
 * @param ready when the loaf is to leave the oven; the mixing begins as long before as it takes
 * @param bulk wanted minutes of the first rise in the warm; the leavening is fitted to it
 * @param proof wanted minutes of the final proof
 * @param overnight hours in the refrigerator after half an hour in the warm; the leavening is
 *     fitted to it
 * @param doughGrams wanted weight of the dough
 * @param single whether only the change of the greatest gain is made
 */
public record Wish(
    Optional<LocalTime> start,
    Optional<LocalTime> ready,
    OptionalDouble bulk,
    OptionalDouble proof,
    OptionalDouble overnight,
    OptionalDouble doughGrams,
    boolean single) {

  /** All corrections at once, times as they fall. */
  public static final Wish PLAIN =
      new Wish(
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          false);
}
