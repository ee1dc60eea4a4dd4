package crumbtrail.bakelog;

import java.util.List;
import java.util.Optional;

/**
 * A part of a list, the latest bake first.
 *
 * @param lines the bakes
 * @param more whether older ones follow
 */
public record Page(List<BakeLine> lines, boolean more) {
  public Page {
    lines = List.copyOf(lines);
  }

  /** Where the next page begins; empty on the last one. */
  public Optional<Place> next() {
    return more ? Optional.of(lines.get(lines.size() - 1).place()) : Optional.empty();
  }
}
