package crumbtrail.report;

import crumbtrail.report.Courses.Bake;
import crumbtrail.report.Courses.BakePoint;
import crumbtrail.report.Courses.Mark;
import crumbtrail.report.Courses.Rise;
import crumbtrail.report.Courses.RisePoint;
import crumbtrail.report.Courses.Span;
import java.util.Comparator;
import java.util.List;

/**
 * Plots of letters for a terminal: '*' is the curve, ':' an upright line, '-' a level. Plain
 * characters, since not every terminal has a face with blocks or braille.
 */
final class TextPlots {

  private TextPlots() {}

  /**
   * The rise: eight rows of plot, an axis, the stages and when it was ready.
   *
   * @param width characters of a line at most
   */
  static List<String> rise(Rise rise, int width) {
    if (rise.points().isEmpty()) {
      return List.of();
    }
    double most = Math.max(2, rise.points().stream().mapToDouble(RisePoint::rise).max().orElse(2));
    double least = Math.min(1, rise.points().stream().mapToDouble(RisePoint::rise).min().orElse(1));
    double end = rise.points().get(rise.points().size() - 1).minute();
    PlotGrid grid = new PlotGrid(width, end, least, most);
    for (Mark mark : rise.marks()) {
      if (mark.minute() <= end) {
        grid.upright(mark.minute());
      }
    }
    grid.curve(rise.points(), RisePoint::minute, RisePoint::rise);
    List<String> lines = grid.lines("x%.1f", axis(end));
    lines.add(" ".repeat(9) + stages(rise.spans(), grid, width - PlotGrid.MARGIN));
    rise.marks().stream()
        .filter(mark -> mark.minute() <= end)
        .map(m -> m.beyond() ? "not " + m.name() + " until here" : m.name())
        .distinct()
        .reduce((one, next) -> one + ", " + next)
        .ifPresent(ready -> lines.add(" ".repeat(9) + cut(": " + ready, width - PlotGrid.MARGIN)));
    return lines;
  }

  /**
   * The core through the bake: eight rows of plot and an axis; the wanted core is a level.
   *
   * @param width characters of a line at most
   */
  static List<String> bake(Bake bake, int width) {
    if (bake.points().isEmpty()) {
      return List.of();
    }
    double end = bake.points().get(bake.points().size() - 1).minute();
    double most =
        Math.max(
            bake.wantedCore(),
            bake.points().stream().mapToDouble(BakePoint::core).max().orElse(100));
    double least = bake.points().stream().mapToDouble(BakePoint::core).min().orElse(0);
    PlotGrid grid = new PlotGrid(width, end, Math.min(least, bake.wantedCore()), most);
    grid.level(bake.wantedCore());
    if (bake.setAt() != null && bake.setAt() <= end) {
      grid.upright(bake.setAt());
    }
    grid.curve(bake.points(), BakePoint::minute, BakePoint::core);
    List<String> lines = grid.lines("%.0f °C", axis(end));
    String key = "- core wanted";
    lines.add(" ".repeat(9) + key + (bake.setAt() == null ? "" : "   : crumb set to the core"));
    return lines;
  }

  private static List<String> axis(double end) {
    return List.of("0", CourseWords.time(end / 2), CourseWords.time(end));
  }

  // Names of stages below the axis, each from where its stage starts; where there is not room for
  // all of them, the longer stages have it.
  private static String stages(List<Span> spans, PlotGrid grid, int room) {
    StringBuilder line = new StringBuilder(" ".repeat(room));
    spans.stream()
        .sorted(Comparator.comparingDouble((Span span) -> span.from() - span.to()))
        .forEach(
            span -> {
              int from = grid.column(span.from());
              int to = from + 1 + span.name().length();
              if (to < room && line.substring(from, to + 1).isBlank()) {
                line.replace(from, to, "|" + span.name());
              }
            });
    return line.toString().stripTrailing();
  }

  private static String cut(String words, int room) {
    return words.length() <= room ? words : words.substring(0, room - 1) + "…";
  }
}
