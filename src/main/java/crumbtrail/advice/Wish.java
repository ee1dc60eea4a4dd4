package crumbtrail.advice;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

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
 * @param loaves into how many pieces the dough is to be divided, each as heavy as before
 * @param tin size of the tin as a baker writes it, "23 x 13 x 7 cm" or "900 g"; each piece gets the
 *     dough that such a tin wants
 * @param instead what is to be taken in place of what the baker lacks
 * @param single whether only the change of the greatest gain is made
 */
public record Wish(
    Optional<LocalTime> start,
    Optional<LocalTime> ready,
    OptionalDouble bulk,
    OptionalDouble proof,
    OptionalDouble overnight,
    OptionalDouble doughGrams,
    OptionalInt loaves,
    Optional<String> tin,
    List<Instead> instead,
    boolean single) {

  /** All corrections at once, times and weights as they fall. */
  public static final Wish PLAIN =
      new Wish(
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalInt.empty(),
          Optional.empty(),
          List.of(),
          false);

  /** Most loaves of one dough that can be asked for. */
  public static final int MOST_LOAVES = 200;

  public Wish {
    instead = List.copyOf(instead);
  }

  /** Whether the dough is to be of another size. */
  boolean sizes() {
    return doughGrams.isPresent() || loaves.isPresent() || tin.isPresent();
  }
}
