package crumbtrail.study;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLine;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.Outcome;
import crumbtrail.bakelog.Place;
import crumbtrail.bakelog.Sought;
import crumbtrail.compare.Comparison;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.report.ComparisonText;
import java.util.Locale;
import java.util.Optional;

/**
 * Two bakes of a log held against each other.
 *
 * @param better the one that is held against, as a rule because it came out better
 * @param bake the one in question
 * @param comparison what was done otherwise, and what of it can explain the outcome
 */
public record SideBySide(Bake better, Bake bake, Comparison comparison) {
  private static final ObjectMapper JSON = new ObjectMapper();

  /**
   * The last bake of the same recipe that came out good before this one did; empty if there is none
   * or this one names no recipe.
   */
  public static Optional<Bake> lastGood(BakeLog log, Bake bake) {
    if (bake.recipe().isEmpty()) {
      return Optional.empty();
    }
    Place here = new Place(bake.baked(), bake.id());
    return log.list(Sought.recipe(bake.recipe(), Outcome.GOOD), 1, here).lines().stream()
        .findFirst()
        .map(BakeLine::id)
        .flatMap(log::find);
  }

  /**
   * As lines for a terminal.
   *
   * @param width characters of a line at most; 60 or more
   */
  public String text(Catalogue catalogue, int width) {
    return ComparisonText.of(comparison, title(better), title(bake), catalogue, width);
  }

  /** As JSON. */
  public String json() {
    return JSON.<ObjectNode>valueToTree(ComparedBakes.of(this)).toPrettyString() + "\n";
  }

  private static String title(Bake bake) {
    Outcome outcome = bake.outcome();
    return "bake %d, %s%s: %s"
        .formatted(
            bake.id(),
            bake.baked().toLocalDate(),
            outcome == null ? "" : ", " + word(outcome),
            bake.label().isEmpty() ? bake.recipe() : bake.label());
  }

  private static String word(Outcome outcome) {
    return outcome.name().toLowerCase(Locale.ROOT);
  }
}
