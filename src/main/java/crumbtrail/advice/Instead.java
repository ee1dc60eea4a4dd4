package crumbtrail.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a baker takes in place of something that is not in the house.
 *
 * @param what it is on the sheet: "milk"
 * @param with what there is: "water"
 */
public record Instead(String what, String with) {
  /** How it is written, for messages. */
  public static final String WOULD_DO = "milk = water; bread flour = plain flour";

  private static final int MOST = 10;
  private static final int LONGEST = 60;

  /**
   * Reads "milk = water", several with semicolons between them.
   *
   * @return empty if it is not written so; the list is empty for a blank text
   */
  public static Optional<List<Instead>> read(String text) {
    List<Instead> all = new ArrayList<>();
    for (String one : text.split(";", -1)) {
      if (one.isBlank()) {
        continue;
      }
      String[] sides = one.split("=|->|→", -1);
      if (sides.length != 2 || !usable(sides[0]) || !usable(sides[1]) || all.size() == MOST) {
        return Optional.empty();
      }
      all.add(new Instead(sides[0].strip(), sides[1].strip()));
    }
    return Optional.of(List.copyOf(all));
  }

  private static boolean usable(String side) {
    return !side.isBlank() && side.length() <= LONGEST;
  }
}
