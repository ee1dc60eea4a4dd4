package crumbtrail.picture;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A cut loaf on the plate: its cut face in front, the rest of it drawn away to the right and
 * upwards, and the crumb within the crust.
 */
final class Loaf {
  /** Where the middle of the base of the cut face lies. */
  static final Spot FOOT = new Spot(164, 266);

  private static final int RINGS = 9;

  private final Look look;
  private final List<Spot> face;
  private final List<Spot> crumb;
  private final Path2D inside;
  private final double top;

  Loaf(Look look) {
    this.look = look;
    this.face = Outline.of(look);
    this.crumb = inset(look, face);
    this.inside = path(screen(crumb, 0));
    this.top = face.stream().mapToDouble(Spot::y).max().orElse(1);
  }

  /** The cut face, on the plate. */
  List<Spot> face() {
    return screen(face, 0);
  }

  /** The edge of the crumb, on the plate. */
  List<Spot> crumb() {
    return screen(crumb, 0);
  }

  /** Whether a point of the plate lies in the crumb, this far from its edge. */
  boolean inCrumb(Spot at, double clear) {
    return inside.contains(at.x() - clear, at.y() - clear, 2 * clear, 2 * clear);
  }

  /** A point of the crumb's box: across from -1, left, to 1, up from 0 to 1. */
  Spot at(double across, double up) {
    return new Spot(FOOT.x() + across * halfWidth(), FOOT.y() - up * top);
  }

  double halfWidth() {
    return look.shape().form().side() * Outline.breadth(look);
  }

  double height() {
    return top;
  }

  /** A point of the crust behind the cut face: along the outline as in {@link Outline}, 0 to 1. */
  Spot crust(double along, double back) {
    int last = 2 * Outline.SIDE + Outline.TOP;
    double at = Math.max(0, Math.min(1, along)) * last;
    int index = Math.min(last - 1, (int) at);
    Spot spot = face.get(index).towards(face.get(index + 1), at - index);
    return screen(spot, back);
  }

  /** Whether the crust can be seen there, rather than turned away. */
  boolean facing(double along, double back) {
    return spread(along, back) > 0.02;
  }

  // How much of the plate a small piece of the crust takes; below nought if it is turned away.
  private double spread(double along, double back) {
    Spot at = crust(along, back);
    Spot on = crust(along + 0.012, back);
    Spot off = crust(along, back + 0.012);
    return (on.x() - at.x()) * (off.y() - at.y()) - (on.y() - at.y()) * (off.x() - at.x());
  }

  /** A place on the crust: along the outline and back from the cut, each from 0 to 1. */
  record Place(double along, double back) {}

  /** Some place on the crust that can be seen, clear of where it turns away. */
  Place somewhere(SplittableRandom chance) {
    for (int i = 0; i < 60; i++) {
      double along = 0.04 + 0.78 * chance.nextDouble();
      double back = 0.04 + 0.86 * chance.nextDouble();
      // As often as there is room for it on the plate.
      if (spread(along, back) > 6 * chance.nextDouble()
          && facing(along + 0.05, back)
          && facing(along - 0.03, back)
          && facing(along, back + 0.05)) {
        return new Place(along, back);
      }
    }
    return new Place(0.3, 0.3);
  }

  Spot crust(Place place) {
    return crust(place.along(), place.back());
  }

  /** The crust of the loaf, the cut face with it, as one outline. */
  List<List<Spot>> body() {
    Path2D all = new Path2D.Double(Path2D.WIND_NON_ZERO);
    List<Spot> near = screen(face, 0);
    all.append(path(turned(near)), false);
    for (int ring = 1; ring < RINGS; ring++) {
      List<Spot> far = screen(face, ring / (RINGS - 1.0));
      // Between two rings, so that the union has no steps.
      for (int i = 0; i < near.size(); i++) {
        int next = (i + 1) % near.size();
        all.append(
            path(turned(List.of(near.get(i), near.get(next), far.get(next), far.get(i)))), false);
      }
      near = far;
    }
    all.append(path(turned(near)), false);
    return outlines(new Area(all));
  }

  // All the same way round, so that no two cancel out.
  private static List<Spot> turned(List<Spot> spots) {
    double area = 0;
    for (int i = 0; i < spots.size(); i++) {
      Spot next = spots.get((i + 1) % spots.size());
      area += spots.get(i).x() * next.y() - next.x() * spots.get(i).y();
    }
    List<Spot> turned = new ArrayList<>(spots);
    if (area < 0) {
      Collections.reverse(turned);
    }
    return turned;
  }

  private double taper(double back) {
    return switch (look.shape()) {
      case TIN, LIDDED_TIN, SWIRL -> 1 - 0.05 * StrictMath.pow(back, 8);
      case HEARTH, ROLL, BATARD -> StrictMath.sqrt(1 - 0.93 * back * back);
      case FLAT -> StrictMath.sqrt(1 - 0.5 * back * back);
      case LAMINATED -> 1 - 0.78 * back;
    };
  }

  private List<Spot> screen(List<Spot> spots, double back) {
    return spots.stream().map(spot -> screen(spot, back)).toList();
  }

  private Spot screen(Spot spot, double back) {
    double size = taper(back);
    Spot depth = look.shape().depth();
    return FOOT.plus(spot.x() * size + depth.x() * back, -spot.y() * size - depth.y() * back);
  }

  private static List<Spot> inset(Look look, List<Spot> face) {
    List<Spot> crumb = new ArrayList<>();
    int n = face.size();
    int sideAndTop = 2 * Outline.SIDE + Outline.TOP;
    double thick = thickness(look);
    for (int i = 0; i < n; i++) {
      Spot before = face.get((i + n - 1) % n);
      Spot after = face.get((i + 1) % n);
      double length = Math.max(0.01, before.distance(after));
      boolean base = i > sideAndTop;
      double deep = base ? thick * 0.8 + 9 * look.more(Trait.BASE_THICKNESS) : thick;
      // The outline runs against the clock, so that inside lies to its left.
      crumb.add(
          face.get(i)
              .plus(
                  -(after.y() - before.y()) / length * deep,
                  (after.x() - before.x()) / length * deep));
    }
    return crumb;
  }

  /** How thick the crust is drawn. */
  static double thickness(Look look) {
    double usual =
        switch (look.shape()) {
          case HEARTH, BATARD -> 6;
          case FLAT, ROLL, LAMINATED -> 4;
          default -> 5;
        };
    double amount = look.amount(Trait.CRUST_THICKNESS);
    return usual * (amount < 0 ? 1 + 0.6 * amount : 1 + 1.7 * amount);
  }

  private static Path2D path(List<Spot> spots) {
    Path2D path = new Path2D.Double();
    path.moveTo(spots.get(0).x(), spots.get(0).y());
    spots.stream().skip(1).forEach(spot -> path.lineTo(spot.x(), spot.y()));
    path.closePath();
    return path;
  }

  // Points closer than the hand would set them are left out.
  private static List<List<Spot>> outlines(Area area) {
    List<List<Spot>> all = new ArrayList<>();
    List<Spot> one = new ArrayList<>();
    double[] at = new double[6];
    for (PathIterator step = area.getPathIterator(null, 0.5); !step.isDone(); step.next()) {
      int kind = step.currentSegment(at);
      if (kind == PathIterator.SEG_MOVETO) {
        one = new ArrayList<>();
        all.add(one);
      }
      Spot spot = new Spot(at[0], at[1]);
      if (kind != PathIterator.SEG_CLOSE
          && (one.isEmpty() || one.get(one.size() - 1).distance(spot) > 3)) {
        one.add(spot);
      }
    }
    return all.stream().filter(outline -> outline.size() > 8).toList();
  }
}
