package crumbtrail.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** What happened to the loaf as a whole, or lies around it: its tin, tears, pools. */
final class Around {
  private final Ink ink;
  private final Look look;
  private final Loaf loaf;

  Around(Ink ink, Look look, Loaf loaf) {
    this.ink = ink;
    this.look = look;
    this.loaf = loaf;
  }

  /** What lies below the loaf. */
  void under() {
    ink.fill(new Strokes().ellipse(Loaf.FOOT.plus(46, 2), 190, 22), Palette.TABLE);
    pool(look.more(Trait.BUTTER_LEAK), Palette.BUTTER, Trait.BUTTER_LEAK);
    pool(look.more(Trait.FILLING_LEAK), Palette.FILLING, Trait.FILLING_LEAK);
    pool(0.6 * look.more(Trait.WET_BASE), Palette.WATER, Trait.WET_BASE);
  }

  private void pool(double amount, String colour, Trait trait) {
    if (amount == 0) {
      return;
    }
    double wide = loaf.halfWidth() * (1.05 + 0.25 * amount);
    List<Spot> rim = new ArrayList<>();
    for (int k = 0; k < 12; k++) {
      double angle = k * Math.PI / 6;
      double out = 1 + 0.14 * Math.sin(k * 2.4);
      rim.add(
          Loaf.FOOT.plus(
              Math.cos(angle) * wide * out, 7 + Math.sin(angle) * (9 + 9 * amount) * out));
    }
    ink.shape(new Strokes().round(rim), colour, 1.3);
    Strokes shine = new Strokes();
    shine
        .move(Loaf.FOOT.plus(-wide * 0.7, 12))
        .curve(Loaf.FOOT.plus(-wide * 0.45, 18), Loaf.FOOT.plus(-wide * 0.1, 17));
    ink.line(shine, 2, Palette.FLOUR);
    ink.seen(trait, Loaf.FOOT.plus(-wide * 0.5, 14));
  }

  /** What lies before the loaf. */
  void over() {
    tin();
    burst(look.more(Trait.SIDE_BURST));
    cap(look.more(Trait.CAP_LIFT));
    stuck(look.more(Trait.STUCK));
    drips(look.more(Trait.FILLING_LEAK));
    fold(look.more(Trait.FOLD_CRACK));
  }

  private void tin() {
    double over = look.more(Trait.OVERFLOW);
    if (over == 0) {
      return;
    }
    Shape.Form form = Shape.TIN.form();
    double rim = form.shoulder() * 0.86;
    Strokes wall = new Strokes();
    Strokes hatch = new Strokes();
    for (int side = -1; side <= 1; side += 2) {
      Spot foot = Loaf.FOOT.plus(side * (form.base() + 2), 1);
      Spot top = Loaf.FOOT.plus(side * (form.side() + 2), -rim);
      wall.polygon(List.of(foot, top, top.plus(side * 5, 0), foot.plus(side * 5, 0)));
    }
    wall.polygon(
        List.of(
            Loaf.FOOT.plus(-form.base() - 7, 0),
            Loaf.FOOT.plus(form.base() + 7, 0),
            Loaf.FOOT.plus(form.base() + 7, 5),
            Loaf.FOOT.plus(-form.base() - 7, 5)));
    ink.shape(wall, Palette.METAL, 1.3);
    for (int side = -1; side <= 1; side += 2) {
      Spot top = Loaf.FOOT.plus(side * (form.side() + 4), -rim);
      double fall = 16 + 44 * over;
      List<Spot> lip =
          List.of(
              top.plus(-side * 8, -22),
              top.plus(side * (10 + 14 * over), -18),
              top.plus(side * (13 + 12 * over), fall * 0.6),
              top.plus(side * 9, fall),
              top.plus(side * 3, fall * 0.7),
              top.plus(side * 1, 2));
      ink.shape(new Strokes().round(lip), Palette.crust(look.amount(Trait.CRUST_COLOUR)), 1.8);
      for (int k = 0; k < 4; k++) {
        hatch.stroke(
            top.plus(side * (6 + k), -8 + k * fall / 6),
            top.plus(side * (13 + 8 * over), -4 + k * fall / 6));
      }
      ink.seen(Trait.OVERFLOW, top.plus(side * 14, fall * 0.3));
    }
    ink.line(hatch, 0.8);
  }

  // Crumb wells out of a ragged tear low on the left side.
  private void burst(double amount) {
    if (amount == 0) {
      return;
    }
    SplittableRandom chance = look.chance(Trait.SIDE_BURST);
    List<Spot> rim = new ArrayList<>();
    double reach = 10 + 24 * amount;
    Spot low = loaf.crust(0.985, 0);
    Spot high = loaf.crust(look.shape().inTin() ? 0.9 : 0.84, 0);
    rim.add(high.plus(7, 0));
    int corners = 6;
    for (int i = 0; i <= corners; i++) {
      double share = i / (double) corners;
      double out =
          reach * Math.sin(Math.PI * (0.12 + 0.8 * share)) * (0.8 + 0.4 * chance.nextDouble());
      rim.add(high.towards(low, share).plus(-out, 0));
    }
    rim.add(low.plus(9, 0));
    ink.shape(new Strokes().round(rim), Palette.crust(-0.9), 2);
    Strokes shreds = new Strokes();
    for (int i = 1; i < 7; i++) {
      Spot from = high.towards(low, i / 7.0).plus(4, 0);
      shreds
          .move(from)
          .curve(
              from.plus(-reach * 0.3, -3),
              from.plus(-reach * (0.5 + 0.3 * chance.nextDouble()), 1));
    }
    ink.line(shreds, 1.1);
    Strokes lips = new Strokes();
    lips.polyline(List.of(high.plus(-9, -7), high.plus(0, -1), high.plus(-6, 4), high.plus(3, 7)));
    ink.line(lips, 2.6);
    ink.seen(Trait.SIDE_BURST, high.towards(low, 0.5).plus(-reach * 0.6, 0));
  }

  // The top crust hinged up on the right, torn on the left.
  private void cap(double amount) {
    if (amount == 0) {
      return;
    }
    List<Spot> face = loaf.face();
    int from = Outline.SIDE + 2;
    int to = Outline.SIDE + Outline.TOP - 2;
    Spot hinge = face.get(from);
    double turn = 0.1 + 0.22 * amount;
    List<Spot> lid = new ArrayList<>();
    List<Spot> under = new ArrayList<>();
    for (int i = from; i <= to; i++) {
      lid.add(turned(face.get(i), hinge, turn));
      under.add(0, turned(loaf.crumb().get(i).plus(0, 3), hinge, turn));
    }
    List<Spot> gap = new ArrayList<>();
    for (int i = from; i <= to; i++) {
      gap.add(loaf.crumb().get(i).plus(0, 5));
    }
    List<Spot> room = new ArrayList<>(gap);
    for (int i = 0; i < under.size(); i++) {
      room.add(under.get(i));
    }
    ink.shape(new Strokes().polygon(room), Palette.DEEP, 1.4);
    Strokes threads = new Strokes();
    for (int i = 3; i < gap.size() - 1; i += 2) {
      threads.stroke(
          gap.get(i), gap.get(i).towards(under.get(under.size() - 1 - i), i % 4 == 1 ? 0.9 : 0.5));
    }
    ink.line(threads, 1, Palette.DOUGH);
    lid.addAll(under);
    ink.shape(new Strokes().polygon(lid), Palette.crust(look.amount(Trait.CRUST_COLOUR)), 1.8);
    Strokes hatch = new Strokes();
    for (int i = 0; i < under.size(); i += 2) {
      hatch.stroke(lid.get(i), under.get(under.size() - 1 - i));
    }
    ink.line(hatch, 0.8);
    ink.seen(
        Trait.CAP_LIFT,
        gap.get((int) (gap.size() * 0.8)).towards(under.get((int) (under.size() * 0.2)), 0.5));
  }

  private static Spot turned(Spot spot, Spot about, double angle) {
    double x = spot.x() - about.x();
    double y = spot.y() - about.y();
    return about.plus(
        x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle));
  }

  // A piece of the foot stayed behind.
  private void stuck(double amount) {
    if (amount == 0) {
      return;
    }
    SplittableRandom chance = look.chance(Trait.STUCK);
    double wide = loaf.halfWidth() * (0.35 + 0.5 * amount);
    double high = 10 + 20 * amount;
    List<Spot> tear = new ArrayList<>();
    List<Spot> piece = new ArrayList<>();
    Spot left = loaf.at(-0.55, 0);
    tear.add(left.plus(-8, 3));
    piece.add(left.plus(-4, 0));
    for (int k = 0; k <= 8; k++) {
      double rise = high * (k % 2 == 0 ? 0.6 : 1.1) * (0.75 + 0.4 * chance.nextDouble());
      tear.add(left.plus(wide * k / 8, -rise));
      piece.add(left.plus(wide * k / 8, -rise * 0.7));
    }
    tear.add(left.plus(wide + 8, 3));
    piece.add(left.plus(wide + 4, 0));
    ink.shape(new Strokes().polygon(tear), Palette.TABLE, 1.8);
    Spot drop = new Spot(0, 0);
    List<Spot> fallen = piece.stream().map(spot -> spot.plus(drop.x(), 24)).toList();
    Strokes sheet = new Strokes();
    sheet.polygon(
        List.of(
            left.plus(-26, 24),
            left.plus(wide + 26, 24),
            left.plus(wide + 26, 30),
            left.plus(-26, 30)));
    ink.shape(new Strokes().polygon(fallen), Palette.crust(-0.6), 1.4);
    ink.shape(sheet, Palette.METAL, 1.3);
    ink.seen(Trait.STUCK, left.plus(wide / 2, -high * 0.3));
  }

  private void drips(double amount) {
    Strokes drips = new Strokes();
    double[] places = {0.9, 0.12, 0.78};
    for (int i = 0; i < Math.ceil(3 * amount); i++) {
      Spot at = loaf.crust(places[i], 0);
      drips.round(
          List.of(
              at.plus(-7, -7),
              at.plus(7, -8),
              at.plus(6, 20),
              at.plus(3, 44 * amount + 10),
              at.plus(-5, 44 * amount + 8),
              at.plus(-6, 14)));
    }
    ink.shape(drips, Palette.FILLING, 1.2);
  }

  // A second round, folded, with its break.
  private void fold(double amount) {
    if (amount == 0) {
      return;
    }
    Spot at = new Spot(120, 150);
    Strokes bread = new Strokes();
    bread
        .move(at.plus(-86, 40))
        .curve(at.plus(-92, -34), at.plus(0, -52))
        .curve(at.plus(92, -34), at.plus(96, 40))
        .line(at.plus(74, 44))
        .curve(at.plus(60, -2), at.plus(4, -20))
        .curve(at.plus(-52, -2), at.plus(-62, 44))
        .close();
    ink.shape(bread, Palette.crust(-0.6), 2);
    SplittableRandom chance = look.chance(Trait.FOLD_CRACK);
    Strokes cracks = new Strokes();
    for (int i = 0; i < 2 + 5 * amount; i++) {
      Spot from = at.plus(-40 + 84 * i / (1 + 5 * amount), -50 + 9 * Math.abs(i - 3));
      cracks.polyline(
          List.of(
              from,
              from.plus(4, 9),
              from.plus(-2, 16),
              from.plus(3 + 4 * chance.nextDouble(), 30 * amount)));
    }
    ink.line(cracks, 2.2);
    ink.seen(Trait.FOLD_CRACK, at.plus(-2, -38));
  }
}
