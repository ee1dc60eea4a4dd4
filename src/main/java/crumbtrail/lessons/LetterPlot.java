package crumbtrail.lessons;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Lines of a terminal in letters: A, B, C … from nought to one above an axis; ':' stands upright
 * where the sheet stands. Where lines cross, the earlier letter is seen.
 */
final class LetterPlot {
  private static final int ROWS = 11;

  private final int columns;
  private final char[][] cells;
  private final double low;
  private final double high;

  /**
   * @param columns letters across
   */
  LetterPlot(int columns, double low, double high) {
    this.columns = columns;
    this.cells = new char[ROWS][columns];
    this.low = low;
    this.high = high;
    for (char[] row : cells) {
      Arrays.fill(row, ' ');
    }
  }

  /** The letter of a line, by its place. */
  static char letter(int place) {
    return (char) ('A' + place);
  }

  int columns() {
    return columns;
  }

  int column(double at) {
    double share = Math.max(0, Math.min(1, (at - low) / (high - low)));
    return (int) Math.round(share * (columns - 1));
  }

  void upright(double at) {
    for (char[] row : cells) {
      row[column(at)] = ':';
    }
  }

  /**
   * A line through points, straight in between.
   *
   * @param at settings, rising
   * @param heights from 0 to 1
   */
  void line(char letter, double[] at, double[] heights) {
    for (int point = 0; point < at.length; point++) {
      int to = column(at[point]);
      int from = point == 0 ? to : column(at[point - 1]) + 1;
      double before = point == 0 ? heights[0] : heights[point - 1];
      for (int column = from; column <= to; column++) {
        double share = to == from - 1 ? 1 : (column - from + 1.0) / (to - from + 1.0);
        put(letter, column, before + (heights[point] - before) * share);
      }
    }
  }

  // What is next to nought would hide the axis behind a row of letters.
  private void put(char letter, int column, double height) {
    if (height < 0.5 / (ROWS - 1)) {
      return;
    }
    int row = ROWS - 1 - (int) Math.round(Math.min(1, height) * (ROWS - 1));
    if (cells[row][column] == ' ' || cells[row][column] == ':') {
      cells[row][column] = letter;
    }
  }

  /** The plot with percent at its left. */
  List<String> rows() {
    List<String> rows = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      int percent = 100 - row * 100 / (ROWS - 1);
      String label = row % 5 == 0 ? percent + " %" : "";
      rows.add((String.format("%6s |", label) + new String(cells[row])).stripTrailing());
    }
    rows.add(" ".repeat(7) + "+" + "-".repeat(columns));
    return rows;
  }
}
