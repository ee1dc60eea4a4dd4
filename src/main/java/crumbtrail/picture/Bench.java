package crumbtrail.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** A piece of dough on the bench, from the side. */
final class Bench {
  private static final Spot FOOT = new Spot(200, 262);

  private final Ink ink;
  private final Look look;

  Bench(Ink ink, Look look) {
    this.ink = ink;
    this.look = look;
  }

  void draw() {
    ink.line(new Strokes().stroke(new Spot(24, 268), new Spot(396, 268)), 2.2);
    if (look.more(Trait.TEARS) > 0) {
      tears(look.more(Trait.TEARS));
      return;
    }
    if (look.more(Trait.SPRINGS_BACK) > 0) {
      springsBack(look.more(Trait.SPRINGS_BACK));
      return;
    }
    double slack = look.more(Trait.SLACK);
    double stiff = look.more(Trait.STIFF);
    double wide = 92 + 70 * slack - 12 * stiff;
    double high = 104 - 66 * slack + 14 * stiff;
    if (slack + stiff > 0.2) {
      ink.ghost(new Strokes().round(DoughScenes.mound(FOOT, 92, 104, 2.2)));
    }
    body(wide, high, slack, stiff);
    greasy(look.more(Trait.GREASY), wide, high);
    sticky(look.more(Trait.STICKY), wide, high);
    ink.seen(Trait.SLACK, FOOT.plus(-wide * 0.7, -high * 0.5));
    ink.seen(Trait.STIFF, FOOT.plus(-10, -high * 0.6));
  }

  private void body(double wide, double high, double slack, double stiff) {
    List<Spot> rim = DoughScenes.mound(FOOT, wide, high, 2.2 + 0.8 * stiff);
    SplittableRandom chance = look.chance(Trait.STIFF);
    if (stiff > 0) {
      List<Spot> knobbly = new ArrayList<>();
      for (Spot spot : rim) {
        knobbly.add(
            spot.plus(
                9 * stiff * (chance.nextDouble() - 0.5), 9 * stiff * (chance.nextDouble() - 0.5)));
      }
      ink.shape(new Strokes().polygon(knobbly), Palette.DOUGH, 2.2);
      Strokes cracks = new Strokes();
      for (int i = 0; i < 3 + 7 * stiff; i++) {
        Spot at =
            FOOT.plus(
                wide * 1.4 * (chance.nextDouble() - 0.5),
                -high * (0.25 + 0.5 * chance.nextDouble()));
        cracks.polyline(List.of(at, at.plus(9, 6), at.plus(7, 15), at.plus(19, 22)));
        cracks.stroke(at.plus(9, 6), at.plus(19, 4));
      }
      ink.line(cracks, 1.6);
    } else {
      DoughScenes.dough(ink, rim);
    }
    DoughScenes.shade(ink, FOOT, wide, high);
    if (slack > 0) {
      Strokes flow = new Strokes();
      for (int side = -1; side <= 1; side += 2) {
        for (int i = 0; i < 3; i++) {
          Spot from = FOOT.plus(side * wide * (0.3 + 0.16 * i), -high * (0.82 - 0.16 * i));
          flow.move(from).curve(from.plus(side * 20, 3), from.plus(side * 34, 14 + 4 * slack));
        }
      }
      ink.line(flow, 1.1);
    }
  }

  private void greasy(double amount, double wide, double high) {
    if (amount == 0) {
      return;
    }
    SplittableRandom chance = look.chance(Trait.GREASY);
    ink.shape(
        new Strokes().ellipse(FOOT.plus(0, 7), wide * (1.05 + 0.3 * amount), 6 + 9 * amount),
        Palette.BUTTER,
        1.4);
    DoughScenes.dough(ink, DoughScenes.mound(FOOT, wide, high, 2.2));
    DoughScenes.shade(ink, FOOT, wide, high);
    Strokes beads = new Strokes();
    Strokes shine = new Strokes();
    for (int i = 0; i < 5 + 9 * amount; i++) {
      double angle = 0.4 + 2.3 * chance.nextDouble();
      double out = 0.3 + 0.55 * chance.nextDouble();
      Spot at = FOOT.plus(StrictMath.cos(angle) * wide * out, -StrictMath.sin(angle) * high * out);
      beads.ellipse(at, 4 + 3 * amount, 3 + 2 * amount);
      shine.move(at.plus(-2, -1)).curve(at.plus(-1, -2.5), at.plus(1.5, -2));
    }
    ink.shape(beads, Palette.BUTTER, 1.2);
    ink.line(shine, 1.2, Palette.FLOUR);
    Strokes light = new Strokes();
    light
        .move(FOOT.plus(-wide * 0.72, -high * 0.5))
        .curve(FOOT.plus(-wide * 0.6, -high * 0.85), FOOT.plus(-wide * 0.2, -high * 0.93));
    ink.line(light, 5, Palette.FLOUR);
    ink.seen(Trait.GREASY, FOOT.plus(-wide * 0.9, 8));
  }

  private void sticky(double amount, double wide, double high) {
    if (amount == 0) {
      return;
    }
    Spot blade = FOOT.plus(66, -high - 46);
    Strokes strings = new Strokes();
    int many = (int) Math.ceil(3 + 5 * amount);
    for (int i = 0; i < many; i++) {
      double share = many == 1 ? 0.5 : i / (many - 1.0);
      Spot from = FOOT.plus(wide * (0.05 + 0.62 * share), -high * (0.97 - 0.3 * share));
      Spot to = blade.plus(-34 + 68 * share, 6);
      strings
          .move(from.plus(-4, 2))
          .curve(from.towards(to, 0.5).plus(0, 5), to.plus(-3, 0))
          .line(to.plus(3, 0))
          .curve(from.towards(to, 0.5).plus(2, 5), from.plus(5, 2));
    }
    ink.shape(strings, Palette.DOUGH, 1.3);
    ink.shape(
        new Strokes()
            .polygon(
                List.of(
                    blade.plus(-44, -34),
                    blade.plus(44, -34),
                    blade.plus(42, 2),
                    blade.plus(-42, 2))),
        Palette.METAL,
        1.8);
    ink.shape(
        new Strokes()
            .round(
                List.of(
                    blade.plus(-46, -46),
                    blade.plus(46, -46),
                    blade.plus(46, -30),
                    blade.plus(-46, -30))),
        Palette.FILLING,
        1.6);
    ink.shape(
        new Strokes()
            .round(
                List.of(
                    blade.plus(-42, -4),
                    blade.plus(0, -12),
                    blade.plus(42, -4),
                    blade.plus(36, 10),
                    blade.plus(0, 6),
                    blade.plus(-36, 10))),
        Palette.DOUGH,
        1.4);
    ink.seen(Trait.STICKY, blade.plus(-18, 28));
  }

  private void springsBack(double amount) {
    double reach = 150;
    double left = reach * (1 - 0.5 * amount);
    Spot middle = FOOT.plus(0, -40);
    ink.ghost(new Strokes().ellipse(middle.plus(0, 14), reach, 34));
    double thick = 14 + 16 * amount;
    Strokes disc = new Strokes();
    disc.ellipse(middle.plus(0, 14 + thick * 0.5), left, 34 * left / reach + 6);
    ink.shape(disc, Palette.DOUGH_SHADE, 2);
    ink.shape(
        new Strokes().ellipse(middle.plus(0, 14 - thick * 0.4), left, 34 * left / reach + 6),
        Palette.DOUGH,
        2);
    Strokes arrows = new Strokes();
    for (int side = -1; side <= 1; side += 2) {
      Spot from = middle.plus(side * (reach - 4), 14);
      Spot to = middle.plus(side * (left + 9), 14);
      arrows.stroke(from, to).polyline(List.of(to.plus(side * 11, -7), to, to.plus(side * 11, 7)));
    }
    ink.line(arrows, 2.4);
    Spot pin = new Spot(200, 112);
    ink.shape(
        new Strokes()
            .polygon(
                List.of(
                    pin.plus(-92, -15), pin.plus(92, -15), pin.plus(92, 15), pin.plus(-92, 15))),
        Palette.CELL,
        2);
    ink.shape(
        new Strokes()
            .round(
                List.of(pin.plus(-128, -7), pin.plus(-90, -7), pin.plus(-90, 7), pin.plus(-128, 7)))
            .round(List.of(pin.plus(128, -7), pin.plus(90, -7), pin.plus(90, 7), pin.plus(128, 7))),
        Palette.FILLING,
        1.8);
    ink.line(
        new Strokes()
            .stroke(pin.plus(-70, -7), pin.plus(60, -7))
            .stroke(pin.plus(-50, 6), pin.plus(74, 6)),
        1);
    ink.seen(Trait.SPRINGS_BACK, middle.plus(-left - 22, 14));
  }

  // A sheet held up by its corners, ripped in the middle.
  private void tears(double amount) {
    Spot top = new Spot(70, 78);
    Strokes sheet = new Strokes();
    sheet
        .move(top)
        .curve(top.plus(130, 30), top.plus(260, 0))
        .curve(top.plus(236, 80), top.plus(224, 176))
        .curve(top.plus(130, 190), top.plus(36, 176))
        .curve(top.plus(26, 80), top)
        .close();
    ink.shape(sheet, Palette.DOUGH, 2.2);
    SplittableRandom chance = look.chance(Trait.TEARS);
    Strokes pull = new Strokes();
    for (int i = 0; i < 7; i++) {
      Spot from = top.plus(22 + 6 * i, 18 + 9 * i);
      pull.move(from).curve(from.plus(10, 12), from.plus(14, 30));
      Spot other = top.plus(238 - 6 * i, 18 + 9 * i);
      pull.move(other).curve(other.plus(-10, 12), other.plus(-14, 30));
    }
    ink.line(pull, 1);
    List<Spot> rip =
        Strewn.lump(chance, top.plus(130, 100), 22 + 34 * amount, 26 + 44 * amount, 16, 0.3);
    ink.shape(new Strokes().polygon(rip), Palette.PLATE, 2.2);
    ink.line(
        new Strokes()
            .polyline(List.of(rip.get(0), rip.get(0).plus(20, -8), rip.get(0).plus(28, 2)))
            .polyline(List.of(rip.get(9), rip.get(9).plus(-20, -6), rip.get(9).plus(-26, -16))),
        1.6);
    for (int side = -1; side <= 1; side += 2) {
      Spot hand = top.plus(side < 0 ? -4 : 264, 4);
      List<Spot> fist = new ArrayList<>();
      for (int k = 0; k < 8; k++) {
        fist.add(hand.plus(StrictMath.cos(k * 0.785) * 22, StrictMath.sin(k * 0.785) * 17));
      }
      ink.shape(new Strokes().round(fist), "#e8c9a4", 1.8);
      ink.line(
          new Strokes()
              .stroke(hand.plus(-6, -9), hand.plus(-6, 3))
              .stroke(hand.plus(2, -9), hand.plus(2, 4))
              .stroke(hand.plus(9, -7), hand.plus(9, 3)),
          1.2);
    }
    ink.seen(Trait.TEARS, top.plus(130, 80 - 30 * amount));
  }
}
