package crumbtrail.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Dough in a glass bowl with a mark where it began. */
final class Bowl {
  private static final Spot FOOT = new Spot(200, 268);
  private static final double RIM = 160;
  private static final double WIDE = 118;
  private static final double MARK = 62;
  private static final double RISEN = 112;

  private final Ink ink;
  private final Look look;

  Bowl(Ink ink, Look look) {
    this.ink = ink;
    this.look = look;
  }

  void draw() {
    double second = look.less(Trait.SECOND_RISE);
    if (second > 0) {
      TwoRises.draw(ink, look, second);
      return;
    }
    boolean mixing = look.more(Trait.SHAGGY) + look.more(Trait.WET) + look.more(Trait.POURS) > 0;
    double rise = look.amount(Trait.RISE);
    double level =
        mixing ? MARK + 14 : rise < 0 ? RISEN + (RISEN - MARK - 6) * rise : RISEN + 62 * rise;
    glass(FOOT, RIM, WIDE);
    content(level);
    if (!mixing) {
      marks(level);
      clock(rise);
    }
    shaggy(look.more(Trait.SHAGGY), level);
    wet(look.more(Trait.WET), level);
    pours(look.more(Trait.POURS), level);
    skin(look.more(Trait.SKIN), level);
    ink.line(sides(FOOT, RIM, WIDE), 2.4);
  }

  private void glass(Spot foot, double high, double wide) {
    Strokes bowl = sides(foot, high, wide);
    ink.shape(bowl, Palette.GLASS, 2.4);
  }

  private static Strokes sides(Spot foot, double high, double wide) {
    return new Strokes()
        .move(foot.plus(-wide, -high))
        .curve(foot.plus(-wide * 0.96, -high * 0.2), foot.plus(-wide * 0.55, 0))
        .line(foot.plus(wide * 0.55, 0))
        .curve(foot.plus(wide * 0.96, -high * 0.2), foot.plus(wide, -high));
  }

  // Half the inner width of the glass at a height above its foot: the wall is a curve of the second
  // degree, walked until it is that high.
  private static double half(double up) {
    double share = 0;
    while (share < 1 && RIM * ((1 - share) * (1 - share) + 0.4 * share * (1 - share)) > up) {
      share += 0.01;
    }
    double rest = 1 - share;
    return WIDE * (rest * rest + 1.92 * share * rest + 0.55 * share * share) - 3;
  }

  private void content(double level) {
    boolean liquid = look.more(Trait.POURS) + look.more(Trait.WET) > 0.4;
    double crown = liquid ? 2 : Math.min(24, 6 + level / 8);
    List<Spot> left = new ArrayList<>();
    for (double up = 4; up < level; up += 8) {
      left.add(FOOT.plus(-half(up), -up));
    }
    left.add(FOOT.plus(-half(level), -level));
    Strokes dough = new Strokes().polyline(left);
    dough.curve(FOOT.plus(0, -level - 2 * crown), FOOT.plus(half(level), -level));
    for (int i = left.size() - 1; i >= 0; i--) {
      dough.line(new Spot(2 * FOOT.x() - left.get(i).x(), left.get(i).y()));
    }
    ink.shape(dough.close(), Palette.DOUGH, 1.8);
    SplittableRandom chance = look.chance(4);
    double gas =
        look.more(Trait.SHAGGY) > 0 ? 0 : Math.max(0.12, 0.6 + 0.6 * look.amount(Trait.RISE));
    Strokes cells = new Strokes();
    Strewn.bubbles(
        cells,
        chance,
        52 * gas,
        () -> {
          double up = level * (0.08 + 0.86 * chance.nextDouble());
          return FOOT.plus((2 * chance.nextDouble() - 1) * (half(up) - 10), -up);
        },
        2 + 7 * gas);
    ink.shape(cells, Palette.CELL, 0.9);
  }

  private void marks(double level) {
    Spot mark = FOOT.plus(-half(MARK) - 14, -MARK);
    ink.line(new Strokes().stroke(mark, FOOT.plus(half(MARK) + 14, -MARK)), 3.2, Palette.DEEP);
    if (Math.abs(level - RISEN) > 3) {
      double wide = half(RISEN);
      ink.ghost(
          new Strokes()
              .move(FOOT.plus(-wide, -RISEN))
              .curve(FOOT.plus(0, -RISEN - 40), FOOT.plus(wide, -RISEN)));
    }
    ink.seen(Trait.RISE, FOOT.plus(-20, -level - 4));
  }

  // Early or late, beside the bowl.
  private void clock(double rise) {
    if (rise == 0) {
      return;
    }
    Spot at = new Spot(366, 140);
    ink.shape(new Strokes().ellipse(at, 30, 30), Palette.FLOUR, 2);
    Strokes ticks = new Strokes();
    for (int i = 0; i < 12; i++) {
      double angle = i * Math.PI / 6;
      ticks.stroke(
          at.plus(26 * StrictMath.sin(angle), -26 * StrictMath.cos(angle)),
          at.plus(23 * StrictMath.sin(angle), -23 * StrictMath.cos(angle)));
    }
    ink.line(ticks, 1.4);
    double hours = rise < 0 ? 2 - 6 * rise : 2 - 1.5 * rise;
    double sweep = hours * Math.PI / 6;
    Strokes wedge = new Strokes().move(at);
    for (double angle = 0; angle <= sweep; angle += 0.15) {
      wedge.line(at.plus(20 * StrictMath.sin(angle), -20 * StrictMath.cos(angle)));
    }
    ink.shape(wedge.close(), Palette.CELL, 1);
  }

  private void shaggy(double amount, double level) {
    if (amount == 0) {
      return;
    }
    SplittableRandom chance = look.chance(Trait.SHAGGY);
    Strokes pool = new Strokes();
    double wide = half(level);
    pool.move(FOOT.plus(-wide, -level))
        .curve(FOOT.plus(0, -level + 14), FOOT.plus(wide, -level))
        .curve(FOOT.plus(wide, -level * 0.5), FOOT.plus(60, -12))
        .line(FOOT.plus(-60, -12))
        .curve(FOOT.plus(-wide, -level * 0.5), FOOT.plus(-wide, -level));
    ink.shape(pool, Palette.WATER, 1.2);
    for (int i = 0; i < 9; i++) {
      Spot at = FOOT.plus(-72 + 18 * i, -level * 0.55 - 26 * chance.nextDouble());
      double size = 12 + 11 * amount * chance.nextDouble() + 4;
      List<Spot> lump = Strewn.lump(chance, at, size * 1.15, size * 0.9, 12, 0.2);
      ink.shape(new Strokes().polygon(lump), i % 3 == 1 ? Palette.FLOUR : Palette.DOUGH, 1.5);
    }
    Strokes dust = new Strokes();
    for (int i = 0; i < 50 * amount; i++) {
      dust.dot(FOOT.plus(180 * (chance.nextDouble() - 0.5), -level - 30 * chance.nextDouble()));
    }
    ink.line(dust, 1.8);
    ink.seen(Trait.SHAGGY, FOOT.plus(20, -level * 0.7));
  }

  private void wet(double amount, double level) {
    if (amount == 0) {
      return;
    }
    Strokes shine = new Strokes();
    for (int i = 0; i < 3 + 4 * amount; i++) {
      Spot at = FOOT.plus(-78 + 26 * i, -level * (0.45 + 0.3 * (i % 2)));
      shine.move(at).curve(at.plus(10, -9), at.plus(24, -5));
    }
    ink.line(shine, 4, Palette.FLOUR);
    ink.line(shine, 1);
    Strokes water = new Strokes();
    double wide = half(level);
    water
        .move(FOOT.plus(-wide, -level))
        .curve(FOOT.plus(0, -level - 8), FOOT.plus(wide, -level))
        .curve(FOOT.plus(0, -level + 22 * amount), FOOT.plus(-wide, -level));
    ink.shape(water, Palette.WATER, 1.3);
    Strokes ripples = new Strokes();
    ripples
        .stroke(FOOT.plus(-50, -level + 1), FOOT.plus(-14, -level + 1))
        .stroke(FOOT.plus(8, -level + 3), FOOT.plus(52, -level + 3));
    ink.line(ripples, 1);
    ink.seen(Trait.WET, FOOT.plus(-30, -level));
  }

  private void pours(double amount, double level) {
    if (amount == 0) {
      return;
    }
    Spot spoon = new Spot(196, 62);
    double thick = 6 + 12 * amount;
    Strokes stream = new Strokes();
    stream
        .move(spoon.plus(-thick, 6))
        .curve(spoon.plus(-thick * 0.4, 60), spoon.plus(-thick * 0.5, 268 - level - 66))
        .line(spoon.plus(thick * 0.5, 268 - level - 66))
        .curve(spoon.plus(thick * 0.4, 60), spoon.plus(thick, 6))
        .close();
    ink.shape(stream, Palette.DOUGH, 1.6);
    Strokes rings = new Strokes();
    rings
        .ellipse(new Spot(spoon.x(), FOOT.y() - level), 26, 6)
        .ellipse(new Spot(spoon.x(), FOOT.y() - level), 48, 11);
    ink.line(rings, 1.1);
    ink.shape(
        new Strokes()
            .round(
                List.of(
                    spoon.plus(-34, -6),
                    spoon.plus(0, -14),
                    spoon.plus(34, -6),
                    spoon.plus(24, 14),
                    spoon.plus(-24, 14))),
        Palette.METAL,
        1.8);
    ink.line(new Strokes().stroke(spoon.plus(32, -6), spoon.plus(140, -24)), 6);
    ink.seen(Trait.POURS, spoon.plus(0, 44));
  }

  private void skin(double amount, double level) {
    if (amount == 0) {
      return;
    }
    double wide = half(level);
    Strokes skin = new Strokes();
    double crown = 20;
    skin.move(FOOT.plus(-wide, -level))
        .curve(FOOT.plus(0, -level - 2 * crown), FOOT.plus(wide, -level))
        .line(FOOT.plus(wide, -level + 12 * amount))
        .curve(
            FOOT.plus(0, -level - 2 * crown + 15 * amount), FOOT.plus(-wide, -level + 12 * amount))
        .close();
    ink.shape(skin, Palette.DOUGH_SHADE, 2);
    SplittableRandom chance = look.chance(Trait.SKIN);
    Strokes cracks = new Strokes();
    for (int i = 0; i < 7 + 9 * amount; i++) {
      double x = -0.92 + 1.84 * i / (6 + 9 * amount);
      Spot at = FOOT.plus(x * wide, -level - crown * (1 - x * x));
      cracks.polyline(
          List.of(
              at,
              at.plus(4, 5),
              at.plus(-1, 9),
              at.plus(3, 12 + 8 * amount * chance.nextDouble())));
      cracks.stroke(at.plus(-1, 9), at.plus(-8, 11));
    }
    ink.line(cracks, 1.3);
    ink.seen(Trait.SKIN, FOOT.plus(-20, -level - crown));
  }
}
