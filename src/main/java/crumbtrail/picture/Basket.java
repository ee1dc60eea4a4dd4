package crumbtrail.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** A proofed piece with the basket or cloth it proofed in. */
final class Basket {
  private final Ink ink;
  private final Look look;

  Basket(Ink ink, Look look) {
    this.ink = ink;
    this.look = look;
  }

  void draw() {
    if (look.more(Trait.CLINGS) > 0) {
      clings(look.more(Trait.CLINGS));
    } else {
      sank(look.more(Trait.SANK));
    }
  }

  private void weave(Spot foot, double wide, double high, boolean upsideDown) {
    double way = upsideDown ? -1 : 1;
    Strokes wall = new Strokes();
    wall.move(foot.plus(-wide, -way * high))
        .curve(foot.plus(-wide * 0.95, 0), foot.plus(-wide * 0.5, way * 4))
        .line(foot.plus(wide * 0.5, way * 4))
        .curve(foot.plus(wide * 0.95, 0), foot.plus(wide, -way * high))
        .close();
    ink.shape(wall, Palette.CELL, 2);
    Strokes canes = new Strokes();
    for (int i = 1; i < 6; i++) {
      double up = way * high * i / 6;
      double half = wide * (0.6 + 0.4 * StrictMath.pow(i / 6.0, 0.6));
      canes.move(foot.plus(-half, -up)).curve(foot.plus(0, -up + way * 10), foot.plus(half, -up));
    }
    ink.line(canes, 1.3);
  }

  private void clings(double amount) {
    Spot foot = new Spot(200, 52);
    double wide = 116;
    double deep = 78;
    SplittableRandom chance = look.chance(Trait.CLINGS);
    Spot piece = new Spot(200, 264);
    List<Spot> rim = DoughScenes.mound(piece, 112, 66 + 8 * amount, 2.2);
    DoughScenes.dough(ink, rim);
    DoughScenes.shade(ink, piece, 112, 66);
    Strokes torn = new Strokes();
    int many = (int) Math.ceil(2 + 4 * amount);
    for (int i = 0; i < many; i++) {
      double x = -70 + 140.0 * i / Math.max(1, many - 1);
      Spot from = piece.plus(x * 0.85, -64 + Math.abs(x) * 0.22);
      Spot to = foot.plus(x, deep + 2);
      torn.move(from.plus(-16, 6))
          .curve(from.towards(to, 0.5).plus(-1, 0), to.plus(-12, 0))
          .line(to.plus(12, 0))
          .curve(from.towards(to, 0.5).plus(4, 0), from.plus(16, 6));
    }
    ink.shape(torn, Palette.DOUGH, 1.6);
    Strokes rips = new Strokes();
    for (int i = 0; i < 4 + 6 * amount; i++) {
      Spot at = piece.plus(150 * (chance.nextDouble() - 0.5), -24 - 26 * chance.nextDouble());
      rips.polyline(List.of(at.plus(-9, 0), at.plus(-3, 5), at.plus(3, -1), at.plus(10, 4)));
    }
    ink.line(rips, 1.5);
    weave(foot, wide, deep, true);
    ink.shape(new Strokes().polygon(cloth(foot, wide, deep)), Palette.FLOUR, 1.5);
    ink.seen(Trait.CLINGS, foot.towards(piece, 0.55));
  }

  private static List<Spot> cloth(Spot foot, double wide, double deep) {
    List<Spot> edge = new ArrayList<>();
    for (double x = -wide - 8; x <= wide + 8; x += 8) {
      edge.add(foot.plus(x, deep + 3 + (edge.size() % 2 == 0 ? -2 : 2)));
    }
    for (double x = wide + 8; x >= -wide - 8; x -= 16) {
      edge.add(foot.plus(x, deep - 7));
    }
    return edge;
  }

  private void sank(double amount) {
    Spot foot = new Spot(200, 266);
    double wide = 128;
    double high = 84;
    Strokes dough = new Strokes();
    double dip = 78 * amount;
    List<Spot> upper = new ArrayList<>();
    for (int i = 0; i <= 20; i++) {
      double x = -1 + 0.1 * i;
      double dome =
          high
              + 52 * StrictMath.sqrt(Math.max(0, 1 - x * x))
              - dip * StrictMath.pow(StrictMath.cos(x * Math.PI / 2), 1.3);
      upper.add(foot.plus(x * (wide - 8), -dome));
    }
    List<Spot> all = new ArrayList<>(upper);
    all.add(foot.plus(wide * 0.6, -10));
    all.add(foot.plus(-wide * 0.6, -10));
    ink.shape(dough.polygon(all), Palette.DOUGH, 2);
    if (amount > 0) {
      Strokes ghost = new Strokes();
      List<Spot> dome = new ArrayList<>();
      for (int i = 0; i <= 20; i++) {
        double x = -1 + 0.1 * i;
        dome.add(foot.plus(x * (wide - 8), -high - 52 * StrictMath.sqrt(Math.max(0, 1 - x * x))));
      }
      ink.ghost(ghost.polyline(dome));
      wrinkles(upper, amount);
      Spot at = foot.plus(0, -high - 52 + dip * 0.4);
      ink.line(
          new Strokes()
              .stroke(at.plus(0, -24), at)
              .polyline(List.of(at.plus(-7, -8), at, at.plus(7, -8))),
          2.4);
    }
    weave(foot, wide, high - 30 - 20 * amount, false);
    ink.seen(Trait.SANK, upper.get(8));
  }

  private void wrinkles(List<Spot> upper, double amount) {
    Strokes folds = new Strokes();
    for (int i = 2; i < 19; i += 2) {
      Spot at = upper.get(i);
      folds.move(at.plus(-5, 5)).curve(at.plus(0, 10), at.plus(6, 5));
      if (amount > 0.5) {
        folds.move(at.plus(3, 13)).curve(at.plus(8, 17), at.plus(14, 12));
      }
    }
    ink.line(folds, 1.4);
  }
}
