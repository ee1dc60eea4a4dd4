package crumbtrail.sheet;

import crumbtrail.quantity.Quantity;
import java.util.Optional;

/**
 * One stretch of bulk, proof or preferment at one temperature.
 *
 * @param time minutes
 * @param temperature of the place, degrees Celsius
 * @param folds how many times the dough was folded during the stage
 * @param covered whether the dough was covered
 * @param humidity relative humidity of the place, percent
 */
public record Stage(
    Optional<Quantity> time,
    Optional<Quantity> temperature,
    Optional<Integer> folds,
    Optional<Boolean> covered,
    Optional<Quantity> humidity) {
  /** Colder than this is a refrigerator, °C (our choice: between a cellar and a fridge). */
  public static final double COLD = 12;

  /** Whether it was in a refrigerator; a place of which nothing is told is warm. */
  public boolean isCold() {
    return temperature.map(celsius -> celsius.value() < COLD).orElse(false);
  }
}
