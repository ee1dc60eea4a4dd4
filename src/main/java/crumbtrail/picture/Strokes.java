package crumbtrail.picture;

import java.util.List;

/**
 * A path in the making, in as few letters as will do: steps from point to point in tenths of a
 * unit, so that roundings do not add up. Points beyond the plate are held at its edge.
 */
final class Strokes {
  private static final double MARGIN = 4;

  private final StringBuilder path = new StringBuilder();
  private long x;
  private long y;
  private long startX;
  private long startY;
  private char last;

  boolean isEmpty() {
    return path.length() == 0;
  }

  int length() {
    return path.length();
  }

  Strokes move(Spot to) {
    boolean first = path.length() == 0;
    command(first ? 'M' : 'm');
    step(to, true);
    startX = x;
    startY = y;
    // Pairs that follow a move are lines; after the first move they would be no steps.
    last = first ? 'L' : 'l';
    return this;
  }

  Strokes line(Spot to) {
    command('l');
    return step(to, true);
  }

  Strokes curve(Spot bend, Spot to) {
    command('q');
    step(bend, false);
    return step(to, true);
  }

  Strokes close() {
    path.append('z');
    last = 'z';
    x = startX;
    y = startY;
    return this;
  }

  /** A straight stroke. */
  Strokes stroke(Spot from, Spot to) {
    return move(from).line(to);
  }

  /** A round dot, drawn as a stroke of no length: its size is the width of the line. */
  Strokes dot(Spot at) {
    move(at);
    path.append("h0");
    last = 'h';
    return this;
  }

  Strokes polyline(List<Spot> spots) {
    move(spots.get(0));
    spots.stream().skip(1).forEach(this::line);
    return this;
  }

  Strokes polygon(List<Spot> spots) {
    return polyline(spots).close();
  }

  /** A closed curve that bends at each of the points and passes half way between them. */
  Strokes round(List<Spot> spots) {
    int n = spots.size();
    move(spots.get(n - 1).towards(spots.get(0), 0.5));
    for (int i = 0; i < n; i++) {
      curve(spots.get(i), spots.get(i).towards(spots.get((i + 1) % n), 0.5));
    }
    return close();
  }

  /** An open curve that begins and ends at the ends and bends at the points between. */
  Strokes smooth(List<Spot> spots) {
    move(spots.get(0));
    for (int i = 1; i < spots.size() - 1; i++) {
      boolean end = i == spots.size() - 2;
      curve(spots.get(i), end ? spots.get(i + 1) : spots.get(i).towards(spots.get(i + 1), 0.5));
    }
    return spots.size() == 2 ? line(spots.get(1)) : this;
  }

  /** An ellipse; made smaller where it would leave the plate. */
  Strokes ellipse(Spot at, double wide, double high) {
    double across = Math.max(0.5, Math.min(wide, room(at.x(), Ink.WIDTH)));
    double down = Math.max(0.5, Math.min(high, room(at.y(), Ink.HEIGHT)));
    move(at.plus(-across, 0));
    String radii = text(across) + " " + text(down) + " 0 1 0 " + text(2 * across) + " 0";
    String back = text(across) + " " + text(down) + " 0 1 0 -" + text(2 * across) + " 0";
    path.append('a').append(radii).append('a').append(back);
    return close();
  }

  private static double room(double at, double size) {
    return Math.min(at - MARGIN, size - MARGIN - at);
  }

  private void command(char letter) {
    if (letter != last || letter == 'm') {
      path.append(letter);
      last = letter;
    } else {
      path.append(' ');
    }
  }

  private Strokes step(Spot to, boolean moves) {
    long right = Math.round(10 * Math.max(MARGIN, Math.min(Ink.WIDTH - MARGIN, to.x())));
    long down = Math.round(10 * Math.max(MARGIN, Math.min(Ink.HEIGHT - MARGIN, to.y())));
    pair(right - x, down - y, moves);
    if (moves) {
      x = right;
      y = down;
    }
    return this;
  }

  private void pair(long right, long down, boolean end) {
    path.append(tenths(right)).append(down < 0 ? "" : " ").append(tenths(down));
    // The bend of a curve is followed by its end.
    if (!end) {
      path.append(' ');
    }
  }

  /** A number with at most one decimal. */
  static String text(double number) {
    return tenths(Math.round(number * 10));
  }

  private static String tenths(long tenths) {
    String sign = tenths < 0 ? "-" : "";
    long whole = Math.abs(tenths) / 10;
    long rest = Math.abs(tenths) % 10;
    if (rest == 0) {
      return sign + whole;
    }
    return sign + (whole == 0 ? "" : whole) + "." + rest;
  }

  @Override
  public String toString() {
    return path.toString();
  }
}
