package crumbtrail.compare;

import crumbtrail.sheet.BakeSheet;
import java.util.Optional;

/** A difference that can be carried over from one sheet to the other, all else left as it is. */
interface Step {
  Difference difference();

  /**
   * A sheet with this one thing as it is on another.
   *
   * @param from the sheet that has it
   * @param into the sheet that takes it over
   * @return empty if it cannot stand there
   */
  Optional<BakeSheet> carried(BakeSheet from, BakeSheet into);
}
