package crumbtrail.knowledge;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * Something that a recipe may leave out and that matters.
 *
 * @param key stable name
 * @param without names of readings; it is missing where none of them is measured or worked out
 * @param where keys of circumstances; it is missing where one of them holds
 * @param what what is missing
 * @param why what it decides, and what would do
 * @param breads families of bread for which it matters; empty for all
 * @param not families of bread for which it does not
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record GapKind(
    String key,
    List<String> without,
    List<String> where,
    String what,
    String why,
    List<String> breads,
    List<String> not) {
  public GapKind {
    without = without == null ? List.of() : List.copyOf(without);
    where = where == null ? List.of() : List.copyOf(where);
    breads = breads == null ? List.of() : List.copyOf(breads);
    not = not == null ? List.of() : List.copyOf(not);
  }

  /** Whether it matters to a bread of these families. */
  public boolean fits(List<String> tags) {
    return (breads.isEmpty() || breads.stream().anyMatch(tags::contains))
        && not.stream().noneMatch(tags::contains);
  }
}
