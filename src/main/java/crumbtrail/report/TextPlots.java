package crumbtrail.report;

import crumbtrail.report.Courses.Bake;
import crumbtrail.report.Courses.BakePoint;
import crumbtrail.report.Courses.Mark;
import crumbtrail.report.Courses.Rise;
import crumbtrail.report.Courses.RisePoint;
import crumbtrail.report.Courses.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * Plots of letters for a terminal: '*' is the curve, ':' an upright line, '-' a level. Plain
 * characters, since not every terminal has a face with blocks or braille.
 */
final class TextPlots {
  private static final int MARGIN = 9;
  private static final int ROWS = 8;

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
    Grid grid = new Grid(width, end, least, most);
    for (Mark mark : rise.marks()) {
      if (mark.minute() <= end) {
        grid.upright(mark.minute());
      }
    }
    grid.curve(rise.points(), RisePoint::minute, RisePoint::rise);
    List<String> lines = grid.lines("x%.1f");
    lines.add(" ".repeat(9) + stages(rise.spans(), grid, width - MARGIN));
    rise.marks().stream()
        .filter(mark -> mark.minute() <= end)
        .map(m -> m.beyond() ? "not " + m.name() + " until here" : m.name())
        .distinct()
        .reduce((one, next) -> one + ", " + next)
        .ifPresent(ready -> lines.add(" ".repeat(9) + cut(": " + ready, width - MARGIN)));
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
    Grid grid = new Grid(width, end, Math.min(least, bake.wantedCore()), most);
    grid.level(bake.wantedCore());
    if (bake.setAt() != null && bake.setAt() <= end) {
      grid.upright(bake.setAt());
    }
    grid.curve(bake.points(), BakePoint::minute, BakePoint::core);
    List<String> lines = grid.lines("%.0f °C");
    String key = "- core wanted";
    lines.add(" ".repeat(9) + key + (bake.setAt() == null ? "" : "   : crumb set to the core"));
    return lines;
  }

  // Names of stages below the axis, each from where its stage starts; where there is not room for
  // all of them, the longer stages have it.
  private static String stages(List<Span> spans, Grid grid, int room) {
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

  /** The letters of one plot. */
  private static final class Grid {
    private final int columns;
    private final char[][] cells;
    private final double end;
    private final double least;
    private final double most;

    Grid(int width, double end, double least, double most) {
      // The last time of the axis may stand out a little.
      this.columns = width - MARGIN - 5;
      this.cells = new char[ROWS][columns];
      this.end = Math.max(end, 1e-9);
      this.least = least;
      this.most = Math.max(most, least + 1e-9);
      for (char[] row : cells) {
        Arrays.fill(row, ' ');
      }
    }

    int column(double minute) {
      double share = Math.max(0, Math.min(1, minute / end));
      return (int) Math.round(share * (columns - 1));
    }

    private int row(double value) {
      double share = Math.max(0, Math.min(1, (value - least) / (most - least)));
      return ROWS - 1 - (int) Math.round(share * (ROWS - 1));
    }

    void upright(double minute) {
      for (char[] row : cells) {
        row[column(minute)] = ':';
      }
    }

    void level(double value) {
      Arrays.fill(cells[row(value)], '-');
    }

    <T> void curve(List<T> points, ToDoubleFunction<T> minute, ToDoubleFunction<T> value) {
      T before = points.get(0);
      for (T point : points) {
        int from = column(minute.applyAsDouble(before));
        int to = column(minute.applyAsDouble(point));
        double start = value.applyAsDouble(before);
        double stop = value.applyAsDouble(point);
        // Where points are wider apart than columns, a straight line runs between them.
        for (int at = from + 1; at < to; at++) {
          cells[row(start + (stop - start) * (at - from) / (to - from))][at] = '*';
        }
        cells[row(stop)][to] = '*';
        before = point;
      }
    }

    List<String> lines(String number) {
      List<String> lines = new ArrayList<>();
      for (int row = 0; row < ROWS; row++) {
        boolean named = row == 0 || row == ROWS - 1 || row == ROWS / 2;
        double value = most - (most - least) * row / (ROWS - 1);
        String label = named ? String.format(Locale.ROOT, number, value) : "";
        lines.add(String.format(Locale.ROOT, "%7s |", label) + new String(cells[row]));
      }
      lines.add(" ".repeat(8) + "+" + "-".repeat(columns));
      String middle = CourseWords.time(end / 2);
      String last = CourseWords.time(end);
      int half = columns / 2 - middle.length() / 2;
      lines.add(
          " ".repeat(9)
              + String.format(Locale.ROOT, "%-" + half + "s%s", "0", middle)
              + String.format(Locale.ROOT, "%" + (columns - half - middle.length()) + "s", last));
      return lines;
    }
  }
}
