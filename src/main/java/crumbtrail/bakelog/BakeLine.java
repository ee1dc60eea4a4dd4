package crumbtrail.bakelog;

import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A bake as a list shows it.
 *
 * @param id its number
 * @param owner who baked it
 * @param baked when
 * @param label the baker's name for it
 * @param recipe what was baked
 * @param outcome how it came out, null while nobody has said
 * @param firstCause key of the cause that the trace put first, null where there is none
 * @param confirmed keys of the causes that the baker confirmed
 * @param photos how many there are
 */
public record BakeLine(
    long id,
    long owner,
    LocalDateTime baked,
    String label,
    String recipe,
    @Nullable Outcome outcome,
    @Nullable String firstCause,
    List<String> confirmed,
    int photos) {

  public BakeLine {
    confirmed = List.copyOf(confirmed);
  }

  /** Where this line stands in a list, for the page after it. */
  public Place place() {
    return new Place(baked, id);
  }
}
