package crumbtrail.knowledge;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * A step of the day as a timetable tells it.
 *
 * @param step preferment, mix, rest, bulk, retard, shape, bench, proof, preheat, bake, core or cool
 * @param name what it is called
 * @param look what to look for
 * @param breads families of bread for which it is told so; empty for all
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record StepKind(String step, String name, String look, List<String> breads) {
  public StepKind {
    breads = breads == null ? List.of() : List.copyOf(breads);
  }

  /** Whether it is told so of a bread of these families. */
  public boolean fits(List<String> tags) {
    return breads.isEmpty() || breads.stream().anyMatch(tags::contains);
  }
}
