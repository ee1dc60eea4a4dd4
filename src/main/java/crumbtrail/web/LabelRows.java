package crumbtrail.web;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds room for labels above a chart, each with a leader straight down to its place. No label
 * covers another or another's leader, as long as there are rows enough.
 */
final class LabelRows {
  private static final int MOST = 6;
  private static final double GAP = 8;
  private static final double FLAG = 4;

  private final double left;
  private final double right;
  private final List<Spot> spots = new ArrayList<>();

  /**
   * @param left where the room starts
   * @param right where it ends
   */
  LabelRows(double left, double right) {
    this.left = left;
    this.right = right;
  }

  /**
   * Where a label stands.
   *
   * @param row 0 is the topmost
   * @param start left edge of the text
   * @param end right edge of the text
   * @param leader where the leader runs
   */
  record Spot(int row, double start, double end, double leader) {
    /** Whether the text ends at its leader. */
    boolean turned() {
      return end <= leader;
    }
  }

  /**
   * Finds room for a label of a given width: right of its leader like a flag, else left of it, else
   * wherever it fits. Call for labels that turn from right to left first, then for the others from
   * left to right.
   */
  Spot place(double leader, double width) {
    double start = turns(leader, width) ? leader - FLAG - width : leader + FLAG;
    start = Math.max(left, Math.min(start, right - width));
    for (int row = 0; row < MOST; row++) {
      Spot spot = new Spot(row, start, start + width, leader);
      if (spots.stream().noneMatch(other -> clash(spot, other))) {
        spots.add(spot);
        return spot;
      }
    }
    Spot last = new Spot(rows(), start, start + width, leader);
    spots.add(last);
    return last;
  }

  /** Whether a label will stand left of its leader for want of room on the right. */
  boolean turns(double leader, double width) {
    return leader + FLAG + width > right;
  }

  /** How many rows are taken. */
  int rows() {
    return spots.stream().mapToInt(spot -> spot.row() + 1).max().orElse(0);
  }

  private static boolean clash(Spot one, Spot other) {
    if (one.row() == other.row()) {
      return one.start() < other.end() + GAP && other.start() < one.end() + GAP;
    }
    Spot above = one.row() < other.row() ? one : other;
    Spot below = one.row() < other.row() ? other : one;
    return above.leader() > below.start() - 2 && above.leader() < below.end() + 2;
  }
}
