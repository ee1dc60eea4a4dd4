package crumbtrail.study;

import com.fasterxml.jackson.annotation.JsonInclude;
import crumbtrail.bakelog.BakeLine;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.Digested;
import crumbtrail.bakelog.Sought;
import crumbtrail.knowledge.Catalogue;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the latest bakes of a log come to. Written to JSON as it stands.
 *
 * @param recipe which one was looked at, null for all
 * @param bakes how many were looked at
 * @param from when the first of them was baked, null where there is none
 * @param to when the last was
 * @param charts readings that two bakes or more have
 * @param judged bakes of which a cause was confirmed
 * @param confirmed causes that were confirmed, the most frequent first
 * @param namedFirst causes that a trace put first, the most frequent first
 * @param learn what is most worth learning next, best first
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Trends(
    @Nullable String recipe,
    int bakes,
    @Nullable String from,
    @Nullable String to,
    List<ReadingChart> charts,
    int judged,
    List<Count> confirmed,
    List<Count> namedFirst,
    List<ToLearn> learn) {

  /** What is charted: warmth and readiness of the dough, loss in the oven, height and volume. */
  private static final List<String> CHARTED =
      List.of(
          "dough temperature",
          "bulk ripeness",
          "proof ripeness",
          "bake loss",
          "proof height",
          "loaf volume");

  public Trends {
    charts = List.copyOf(charts);
    confirmed = List.copyOf(confirmed);
    namedFirst = List.copyOf(namedFirst);
    learn = List.copyOf(learn);
  }

  /**
   * How often a cause came up.
   *
   * @param cause key
   * @param name plain words
   * @param bakes in how many
   * @param last number of the latest of them
   */
  public record Count(String cause, String name, int bakes, long last) {}

  /**
   * Something worth learning.
   *
   * @param lesson its number in the course, null where no lesson comes near these causes
   * @param title of the lesson; of the cause where there is none
   * @param causes what it would help against
   * @param bakes in how many bakes one of them was confirmed
   * @param last number of the latest of those bakes
   * @param lately whether that is among the last ten judged bakes
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record ToLearn(
      @Nullable Integer lesson,
      String title,
      List<Count> causes,
      int bakes,
      long last,
      boolean lately) {
    public ToLearn {
      causes = List.copyOf(causes);
    }
  }

  /**
   * The trends of a log.
   *
   * @param recipe which one, null for all
   * @param most how many of the latest bakes are looked at
   */
  public static Trends of(BakeLog log, @Nullable String recipe, int most, Catalogue catalogue) {
    List<Digested> latest = log.digests(recipe == null ? Sought.ALL : Sought.recipe(recipe), most);
    return of(latest, recipe != null, catalogue);
  }

  /**
   * The trends of some bakes.
   *
   * @param latest the latest first
   * @param oneRecipe whether all are of one recipe
   */
  static Trends of(List<Digested> latest, boolean oneRecipe, Catalogue catalogue) {
    List<Digested> bakes = new ArrayList<>(latest);
    Collections.reverse(bakes);
    BakeLine first = bakes.isEmpty() ? null : bakes.get(0).line();
    BakeLine last = bakes.isEmpty() ? null : bakes.get(bakes.size() - 1).line();
    CauseCounts counts = new CauseCounts(bakes, catalogue);
    return new Trends(
        oneRecipe && last != null ? last.recipe() : null,
        bakes.size(),
        first == null ? null : first.baked().toString(),
        last == null ? null : last.baked().toString(),
        CHARTED.stream()
            .flatMap(reading -> ReadingChart.of(reading, bakes, catalogue).stream())
            .toList(),
        counts.judged(),
        counts.confirmed(),
        counts.namedFirst(),
        counts.learn());
  }
}
