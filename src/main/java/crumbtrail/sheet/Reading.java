package crumbtrail.sheet;

import java.util.List;
import java.util.Optional;

/**
 * The outcome of reading a bake sheet: the sheet, or everything that is wrong with it.
 *
 * @param sheet empty when there is any problem
 * @param problems all of them, in the order of the sheet; empty when all is well
 */
public record Reading(Optional<BakeSheet> sheet, List<Problem> problems) {

  public Reading {
    problems = List.copyOf(problems);
  }
}
