package crumbtrail.study;

import com.fasterxml.jackson.annotation.JsonInclude;
import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.Outcome;
import crumbtrail.compare.Comparison;
import crumbtrail.compare.Difference;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A bake of the log held against another one, as it is written for programs.
 *
 * @param better the one that is held against, missing where none of its recipe came out good before
 * @param bake the one in question
 * @param differences what was done otherwise, that which explains most first
 * @param appeared names of signs seen on the bake in question and not on the other
 * @param gone names of signs seen on the other bake only
 * @param readings what was worked out and differs by more than it is uncertain
 * @param together how much of the suspicion all differences together explain, 0 to 1
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ComparedBakes(
    @Nullable Which better,
    Which bake,
    List<Comparison.Explained> differences,
    List<String> appeared,
    List<String> gone,
    List<Difference> readings,
    double together) {

  public ComparedBakes {
    differences = List.copyOf(differences);
    appeared = List.copyOf(appeared);
    gone = List.copyOf(gone);
    readings = List.copyOf(readings);
  }

  /** Two bakes, compared. */
  public static ComparedBakes of(SideBySide both) {
    Comparison found = both.comparison();
    return new ComparedBakes(
        Which.of(both.better()),
        Which.of(both.bake()),
        found.differences(),
        found.appeared(),
        found.gone(),
        found.readings(),
        found.together());
  }

  /** A bake that there is nothing to hold against. */
  public static ComparedBakes alone(Bake bake) {
    return new ComparedBakes(null, Which.of(bake), List.of(), List.of(), List.of(), List.of(), 0);
  }

  /**
   * One of the two.
   *
   * @param id its number
   * @param baked when, by the clock in the kitchen
   * @param label the baker's name for it
   * @param recipe what was baked
   * @param outcome good, fair or failed; missing while nobody has said
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Which(
      long id, String baked, String label, String recipe, @Nullable String outcome) {
    static Which of(Bake bake) {
      Outcome outcome = bake.outcome();
      return new Which(
          bake.id(),
          bake.baked().toString(),
          bake.label(),
          bake.recipe(),
          outcome == null ? null : outcome.name().toLowerCase(Locale.ROOT));
    }
  }
}
