package crumbtrail.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** What lies over the cells of the crumb: smears, cracks, crumbs, threads, a swirl, layers. */
final class CrumbSurface {
  private final Ink ink;
  private final Look look;
  private final Loaf loaf;

  CrumbSurface(Ink ink, Look look, Loaf loaf) {
    this.ink = ink;
    this.look = look;
    this.loaf = loaf;
  }

  void draw() {
    fruit(look.more(Trait.FRUIT));
    dry(look.more(Trait.DRY));
    crumbs(Math.max(look.more(Trait.CRUMBLY), 0.4 * look.more(Trait.DRY)));
    gummy(look.more(Trait.GUMMY));
    grey(look.more(Trait.GREY));
    rope(look.more(Trait.ROPE));
    mould(look.more(Trait.MOULD));
  }

  private void fruit(double amount) {
    SplittableRandom chance = look.chance(Trait.FRUIT);
    Strokes fruit = new Strokes();
    for (int i = 0; i < 14 * amount; i++) {
      Spot at = loaf.at(1.4 * (chance.nextDouble() - 0.5), 0.08 + 0.16 * chance.nextDouble());
      fruit.ellipse(at, 5.5, 4);
      ink.seen(Trait.FRUIT, at);
    }
    ink.shape(fruit, Palette.FILLING, 1);
  }

  private void dry(double amount) {
    SplittableRandom chance = look.chance(Trait.DRY);
    Strokes cracks = new Strokes();
    for (int i = 0; i < 2 + 6 * amount && amount > 0; i++) {
      Spot at = loaf.at(1.3 * (chance.nextDouble() - 0.5), 0.2 + 0.55 * chance.nextDouble());
      double way = Math.PI * (0.3 + 0.4 * chance.nextDouble());
      List<Spot> crack = new ArrayList<>(List.of(at));
      for (int k = 0; k < 5; k++) {
        Spot next =
            crack
                .get(k)
                .plus(
                    9 * StrictMath.cos(way) * (0.5 + amount),
                    7 * StrictMath.sin(way) * (0.5 + amount));
        way += (chance.nextDouble() - 0.5) * 2.2;
        if (!loaf.inCrumb(next, 2)) {
          break;
        }
        crack.add(next);
      }
      cracks.polyline(crack);
      ink.seen(Trait.DRY, at);
    }
    ink.line(cracks, 1.5);
  }

  // Broken out at the corner, and lying about.
  private void crumbs(double amount) {
    if (amount == 0) {
      return;
    }
    SplittableRandom chance = look.chance(Trait.CRUMBLY);
    Strokes crumbs = new Strokes();
    for (int i = 0; i < 10 + 26 * amount; i++) {
      double out = loaf.halfWidth() * (1.9 * chance.nextDouble() - 1.2);
      Spot at = Loaf.FOOT.plus(out, 4 + 12 * chance.nextDouble());
      double size = 1.5 + 3.5 * chance.nextDouble() * chance.nextDouble();
      crumbs.polygon(
          List.of(
              at.plus(-size, 0.3),
              at.plus(-0.3 * size, -size),
              at.plus(size, -0.5),
              at.plus(0.4 * size, size)));
    }
    ink.shape(crumbs, Palette.DOUGH, 0.9);
    double crumbly = look.more(Trait.CRUMBLY);
    if (crumbly > 0) {
      bites(crumbly, chance);
    }
  }

  private void bites(double amount, SplittableRandom chance) {
    double[][] places = {{0.9, 0.16}, {-0.86, 0.6}, {0.3, 0.55}, {-0.4, 0.24}, {0.75, 0.72}};
    Strokes bites = new Strokes();
    Strokes marks = new Strokes();
    for (int i = 0; i < Math.ceil(5 * amount); i++) {
      Spot at = loaf.at(places[i][0], places[i][1]);
      double size = 8 + 10 * amount * (1 - 0.12 * i);
      bites.polygon(Strewn.lump(chance, at, size * 1.25, size, 15, 0.24));
      for (int k = 0; k < 10; k++) {
        marks.dot(Strewn.lump(chance, at, size * 0.7, size * 0.6, 3, 0.6).get(0));
      }
      ink.seen(Trait.CRUMBLY, at);
    }
    ink.shape(bites, Palette.DOUGH_SHADE, 1.3);
    ink.line(marks, 2.2, Palette.DEEP);
  }

  // Dragged by the blade, which lies smeared before the loaf.
  private void gummy(double amount) {
    if (amount == 0) {
      return;
    }
    SplittableRandom chance = look.chance(Trait.GUMMY);
    Strokes smears = new Strokes();
    for (int i = 0; i < 6 + 12 * amount; i++) {
      Spot at = loaf.at(-0.62 + 0.9 * chance.nextDouble(), 0.14 + 0.56 * chance.nextDouble());
      double long1 = 16 + 26 * amount * chance.nextDouble();
      if (loaf.inCrumb(at, 3) && loaf.inCrumb(at.plus(long1, 2), 3)) {
        smears.move(at).curve(at.plus(long1 / 2, -3), at.plus(long1, 2));
      }
    }
    ink.line(smears, 4.2, Palette.DOUGH_SHADE);
    ink.line(smears, 0.9);
    ink.seen(Trait.GUMMY, loaf.at(-0.36, 0.74));
    Spot hilt = new Spot(356, 289);
    Strokes blade = new Strokes();
    blade.move(hilt).line(hilt.plus(-116, 0)).curve(hilt.plus(-104, 11), hilt.plus(0, 11)).close();
    ink.shape(blade, Palette.METAL, 1.3);
    ink.shape(
        new Strokes()
            .round(
                List.of(
                    hilt.plus(-2, -2), hilt.plus(50, -3), hilt.plus(52, 13), hilt.plus(-2, 13))),
        Palette.FILLING,
        1.3);
    Strokes gum = new Strokes();
    for (int i = 0; i < 3 + 4 * amount; i++) {
      Spot at = hilt.plus(-18 - 14 * i, 4 + 3 * chance.nextDouble());
      gum.round(
          List.of(at.plus(-7, -5), at.plus(6, -6), at.plus(8, 5), at.plus(1, 9), at.plus(-8, 4)));
    }
    ink.shape(gum, Palette.DOUGH_SHADE, 1);
  }

  // Grey is told by dots in print.
  private void grey(double amount) {
    SplittableRandom chance = look.chance(Trait.GREY);
    Strokes dots = new Strokes();
    for (int i = 0; i < 150 * amount; i++) {
      Spot at = loaf.at(2 * chance.nextDouble() - 1, chance.nextDouble());
      if (loaf.inCrumb(at, 2)) {
        dots.dot(at);
        ink.seen(Trait.GREY, loaf.at(0.1, 0.5));
      }
    }
    ink.line(dots, 0.9);
  }

  private void rope(double amount) {
    if (amount == 0) {
      return;
    }
    Spot at = loaf.at(-0.05, 0.42);
    double wide = loaf.halfWidth() * (0.28 + 0.22 * amount);
    double high = loaf.height() * (0.13 + 0.1 * amount);
    ink.shape(new Strokes().ellipse(at, wide, high), Palette.CELL, 1.2);
    Strokes hatch = new Strokes();
    for (double x = -0.8; x < 0.85; x += 0.16) {
      double half = StrictMath.sqrt(1 - x * x) * high * 0.85;
      hatch.stroke(at.plus(x * wide - 3, half), at.plus(x * wide + 3, -half));
    }
    ink.line(hatch, 0.8);
    // A finger's worth of crumb pulled off, threads behind it.
    Spot lump = new Spot(at.x() - 14, 292);
    Strokes threads = new Strokes();
    for (int i = 0; i < 4 + 5 * amount; i++) {
      double from = -0.6 + 1.2 * i / (4 + 5 * amount);
      threads
          .move(at.plus(from * wide, high * 0.6))
          .curve(new Spot(lump.x() + from * 26, lump.y() - 26), lump.plus(from * 22, -4));
    }
    ink.line(threads, 2.6, Palette.FLOUR);
    ink.line(threads, 1.1);
    ink.shape(
        new Strokes()
            .round(
                List.of(
                    lump.plus(-24, -4),
                    lump.plus(0, -9),
                    lump.plus(24, -4),
                    lump.plus(20, 11),
                    lump.plus(-20, 11))),
        Palette.CELL,
        1.3);
    ink.seen(Trait.ROPE, at.plus(-wide * 0.3, -high * 0.4));
  }

  private void mould(double amount) {
    double[][] places = {{0.44, 0.34}, {-0.5, 0.62}, {-0.1, 0.2}, {0.12, 0.72}, {0.7, 0.6}};
    SplittableRandom chance = look.chance(Trait.MOULD);
    Strokes fur = new Strokes();
    for (int i = 0; i < Math.ceil(5 * amount); i++) {
      Spot at = loaf.at(places[i][0], places[i][1]);
      double size = 7 + 9 * amount * (1 - 0.1 * i);
      ink.fill(new Strokes().ellipse(at, size, size * 0.85), Palette.MOULD);
      for (int k = 0; k < 16; k++) {
        double angle = k * Math.PI / 8 + 0.2 * chance.nextDouble();
        double out = size * (1.15 + 0.3 * chance.nextDouble());
        fur.stroke(
            at.plus(StrictMath.cos(angle) * size * 0.6, StrictMath.sin(angle) * size * 0.5),
            at.plus(StrictMath.cos(angle) * out, StrictMath.sin(angle) * out * 0.85));
      }
      ink.seen(Trait.MOULD, at);
    }
    ink.line(fur, 1);
  }
}
