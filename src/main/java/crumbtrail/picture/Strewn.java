package crumbtrail.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/** Things strewn by chance. */
final class Strewn {
  private Strewn() {}

  /**
   * Adds bubbles that do not run into each other, the largest first.
   *
   * @param many so many at most
   * @param place a place where one might be, another at each call
   * @param most the largest radius
   */
  static void bubbles(
      Strokes path, SplittableRandom chance, double many, Supplier<Spot> place, double most) {
    List<Cells.Cell> met = new ArrayList<>();
    for (int i = 0; i < 6 * many && met.size() < many; i++) {
      double radius =
          Math.max(1.3, most * (1 - i / (6 * many)) * (0.6 + 0.4 * chance.nextDouble()));
      Spot at = place.get();
      if (met.stream().allMatch(one -> one.at().distance(at) > one.radius() + radius + 2)) {
        met.add(new Cells.Cell(at, radius));
        path.ellipse(at, radius * 1.1, radius * 0.9);
      }
    }
  }

  /** A lump with an uneven edge around a place, as corners for a round curve or a polygon. */
  static List<Spot> lump(
      SplittableRandom chance, Spot at, double wide, double high, int corners, double uneven) {
    List<Spot> rim = new ArrayList<>();
    double turn = chance.nextDouble() * 2 * Math.PI;
    for (int i = 0; i < corners; i++) {
      double angle = turn + 2 * Math.PI * (i + 0.3 * (chance.nextDouble() - 0.5)) / corners;
      double out = 1 + uneven * (2 * chance.nextDouble() - 1);
      rim.add(at.plus(StrictMath.cos(angle) * wide * out, StrictMath.sin(angle) * high * out));
    }
    return rim;
  }
}
