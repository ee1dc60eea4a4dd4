package crumbtrail.lessons;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Two knobs turned at once: the leading cause at each crossing.
 *
 * @param title the baker's name for the bake
 * @param across the knob that is turned from left to right
 * @param down the knob that is turned from top to bottom
 * @param acrossAt its settings
 * @param downAt its settings
 * @param cells by row, then by column
 * @param causes those that lead anywhere, commonest first
 */
public record Board(
    String title,
    Variation.Dial across,
    Variation.Dial down,
    List<Double> acrossAt,
    List<Double> downAt,
    List<List<Cell>> cells,
    List<Variation.Named> causes) {

  public Board {
    acrossAt = List.copyOf(acrossAt);
    downAt = List.copyOf(downAt);
    cells = cells.stream().map(List::copyOf).toList();
    causes = List.copyOf(causes);
  }

  /**
   * One crossing.
   *
   * @param lead key of the leading cause, null if none is likely
   * @param probability of the likeliest cause, 0 to 1
   * @param own whether the sheet stands here, or nearest to here
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Cell(@Nullable String lead, double probability, boolean own) {}
}
