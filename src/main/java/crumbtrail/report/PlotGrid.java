package crumbtrail.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** The letters of one plot: eight rows of them above an axis, with numbers at the left. */
public final class PlotGrid {
  /** Columns at the left that the numbers take. */
  public static final int MARGIN = 9;

  private static final int ROWS = 8;

  private final int columns;
  private final char[][] cells;
  private final double end;
  private final double least;
  private final double most;

  /**
   * @param width characters of a line at most
   * @param end of the axis, which begins at nought
   * @param least value of the lowest row
   * @param most value of the highest row
   */
  public PlotGrid(int width, double end, double least, double most) {
    // The last label of the axis may stand out a little.
    this.columns = width - MARGIN - 5;
    this.cells = new char[ROWS][columns];
    this.end = Math.max(end, 1e-9);
    this.least = least;
    this.most = Math.max(most, least + 1e-9);
    for (char[] row : cells) {
      Arrays.fill(row, ' ');
    }
  }

  int column(double at) {
    double share = Math.max(0, Math.min(1, at / end));
    return (int) Math.round(share * (columns - 1));
  }

  private int row(double value) {
    double share = Math.max(0, Math.min(1, (value - least) / (most - least)));
    return ROWS - 1 - (int) Math.round(share * (ROWS - 1));
  }

  void upright(double at) {
    for (char[] row : cells) {
      row[column(at)] = ':';
    }
  }

  /** A level across the whole plot. */
  public void level(double value) {
    level(value, '-');
  }

  /** A level of these letters across the whole plot. */
  public void level(double value, char letter) {
    Arrays.fill(cells[row(value)], letter);
  }

  /** One letter. */
  public void point(double at, double value, char letter) {
    cells[row(value)][column(at)] = letter;
  }

  <T> void curve(List<T> points, ToDoubleFunction<T> along, ToDoubleFunction<T> value) {
    T before = points.get(0);
    for (T point : points) {
      int from = column(along.applyAsDouble(before));
      int to = column(along.applyAsDouble(point));
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

  /**
   * The plot.
   *
   * @param number how a value at the left is written, as {@link String#format} has it
   * @param axis what stands at the beginning, in the middle and at the end of the axis
   */
  public List<String> lines(String number, List<String> axis) {
    List<String> lines = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      boolean named = row == 0 || row == ROWS - 1 || row == ROWS / 2;
      double value = most - (most - least) * row / (ROWS - 1);
      String label = named ? String.format(Locale.ROOT, number, value) : "";
      lines.add(String.format(Locale.ROOT, "%7s |", label) + new String(cells[row]));
    }
    lines.add(" ".repeat(8) + "+" + "-".repeat(columns));
    String middle = axis.get(1);
    int half = Math.max(1, columns / 2 - middle.length() / 2);
    lines.add(
        " ".repeat(MARGIN)
            + String.format(Locale.ROOT, "%-" + half + "s%s", axis.get(0), middle)
            + String.format(
                Locale.ROOT, "%" + (columns - half - middle.length()) + "s", axis.get(2)));
    return lines;
  }
}
