package crumbtrail.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A bake as a list of the log shows it.
 *
 * @param id its number
 * @param baked when, by the clock in the kitchen
 * @param label the baker's name for it
 * @param recipe what was baked
 * @param outcome good, fair or failed; missing while nobody has said
 * @param firstCause key of the cause that the trace put first
 * @param confirmed keys of the causes that the baker confirmed
 * @param photos how many there are
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record KeptLine(
    long id,
    String baked,
    String label,
    String recipe,
    @Nullable String outcome,
    @Nullable String firstCause,
    List<String> confirmed,
    int photos) {
  public KeptLine {
    confirmed = List.copyOf(confirmed);
  }
}
