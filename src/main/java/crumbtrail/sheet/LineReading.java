package crumbtrail.sheet;

import java.util.Optional;

/**
 * The outcome of reading one ingredient line: either the line or the problem with it.
 *
 * @param line the line taken apart, empty when it could not be used
 * @param problem why it could not be used, empty when all is well
 */
public record LineReading(Optional<FormulaLine> line, Optional<Problem> problem) {

  static LineReading of(FormulaLine line) {
    return new LineReading(Optional.of(line), Optional.empty());
  }

  static LineReading refused(String where, String what, String remedy) {
    return new LineReading(Optional.empty(), Optional.of(new Problem(where, what, remedy)));
  }
}
