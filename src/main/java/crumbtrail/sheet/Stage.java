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
    Optional<Quantity> humidity) {}
