package crumbtrail.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A part of the log, the latest bake first.
 *
 * @param bakes the bakes
 * @param next what to ask for as after to get older ones; missing where there are none
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record KeptLines(List<KeptLine> bakes, @Nullable String next) {
  public KeptLines {
    bakes = List.copyOf(bakes);
  }
}
