package crumbtrail.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * The outline of a cut face: from the right end of the base up the right side, over the top, down
 * the left side and back along the base. In units of the picture, x from the middle, y upwards from
 * the base.
 */
final class Outline {
  /** Points along each side, the top and the base. */
  static final int SIDE = 9;

  static final int TOP = 40;
  static final int BASE = 10;

  private Outline() {}

  /** How wide a loaf is against a sound one. */
  static double breadth(Look look) {
    if (look.shape().inTin()) {
      return 1 - 0.04 * look.less(Trait.VOLUME);
    }
    return (1 + 0.1 * look.amount(Trait.VOLUME))
        * (1 + 0.2 * look.more(Trait.SPREAD) - 0.22 * look.less(Trait.SPREAD));
  }

  /** How high a loaf is against a sound one, before its top falls. */
  static double height(Look look) {
    double volume = look.amount(Trait.VOLUME);
    double spring = look.amount(Trait.SPRING);
    double grown = (1 + (volume < 0 ? 0.46 : 0.22) * volume) * (1 + 0.24 * spring);
    boolean flat = look.shape() == Shape.FLAT;
    double puffed = flat ? 1 - 0.25 * look.less(Trait.PUFF) + 1.4 * look.more(Trait.PUFF) : 1;
    return puffed * grown * (1 - 0.46 * look.more(Trait.SPREAD) + 0.2 * look.less(Trait.SPREAD));
  }

  /** The outline of a look. */
  static List<Spot> of(Look look) {
    Shape.Form form = look.shape().form();
    double wide = breadth(look);
    double high = height(look);
    double side = form.side() * wide;
    double foot = form.base() * wide * (1 - 0.4 * look.less(Trait.SPREAD));
    double shoulder = form.shoulder() * high;
    double dome = form.dome() * high * (1 - 0.5 * look.less(Trait.SPRING));
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < SIDE; i++) {
      double up = i / (double) SIDE;
      double out = form.bulge() > 0.05 ? StrictMath.pow(StrictMath.sin(up * Math.PI / 2), 0.8) : up;
      double in =
          0.36 * look.more(Trait.SIDES_IN) * StrictMath.sin(Math.PI * StrictMath.pow(up, 0.8));
      spots.add(new Spot((foot + (side - foot) * out) * (1 - in), shoulder * up));
    }
    for (int i = 0; i <= TOP; i++) {
      double angle = Math.PI * i / TOP;
      double x =
          Math.signum(StrictMath.cos(angle)) * power(StrictMath.cos(angle), form.square()) * side;
      double y = shoulder + power(StrictMath.sin(angle), form.square()) * dome;
      spots.add(new Spot(x, y));
    }
    for (int i = SIDE - 1; i >= 0; i--) {
      spots.add(new Spot(-spots.get(i).x(), spots.get(i).y()));
    }
    for (int i = 1; i < BASE; i++) {
      spots.add(new Spot(-foot + 2 * foot * i / BASE, 0));
    }
    return spots.stream().map(new Warp(look, side, shoulder + dome)::bend).toList();
  }

  private static double power(double value, double square) {
    return StrictMath.pow(Math.abs(value), 2 / square);
  }

  // What bends an even outline: a fallen top, a lean, a lip over the rim, and the hand.
  private record Warp(Look look, double side, double height, List<Double> phases) {
    Warp(Look look, double side, double height) {
      this(look, side, height, phases(look.chance(1)));
    }

    private static List<Double> phases(SplittableRandom chance) {
      return chance.doubles(4, 0, 2 * Math.PI).boxed().toList();
    }

    Spot bend(Spot spot) {
      double up = spot.y() / height;
      double across = spot.x() / side;
      double hand = up > 0.02 ? 1 : 0;
      double x = spot.x() + hand * 1.1 * StrictMath.sin(spot.y() / 13 + phases.get(0));
      double y = spot.y() + hand * up * 1.3 * StrictMath.sin(spot.x() / 15 + phases.get(1));
      double inside = Math.max(0, 1 - Math.abs(across) / 0.86);
      double bowl = StrictMath.pow(StrictMath.sin(inside * Math.PI / 2), 1.4);
      y -= look.more(Trait.TOP_FALL) * 0.56 * height * up * up * bowl;
      double lean = look.more(Trait.LOPSIDED);
      y *= 1 + lean * 0.3 * across;
      x += lean * up * (9 - 14 * Math.max(0, -across));
      y += lean * 9 * up * StrictMath.sin(spot.x() / 17 + phases.get(2));
      double lip =
          look.more(Trait.OVERFLOW) * StrictMath.exp(-StrictMath.pow((up - 0.8) / 0.13, 2));
      x += Math.signum(x) * lip * 24 * Math.min(1, Math.abs(across));
      y -= look.more(Trait.OVERFLOW) * 16 * up * StrictMath.pow(Math.abs(across), 6);
      double rough = hand * look.more(Trait.ROUGH) * 2.6;
      x += rough * StrictMath.sin(spot.y() * 1.1 + phases.get(3));
      y += rough * up * StrictMath.sin(spot.x() * 0.9 + phases.get(3));
      return new Spot(x, Math.max(0, y));
    }
  }
}
