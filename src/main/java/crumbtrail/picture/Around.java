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
      double out = 1 + 0.14 * StrictMath.sin(k * 2.4);
      rim.add(
          Loaf.FOOT.plus(
              StrictMath.cos(angle) * wide * out,
              7 + StrictMath.sin(angle) * (9 + 9 * amount) * out));
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
    double reach = 10 + 22 * amount;
    double from = look.shape().inTin() ? 0.87 : 0.8;
    List<Spot> out = new ArrayList<>();
    List<Spot> wound = new ArrayList<>();
    int corners = 8;
    for (int i = 0; i <= corners; i++) {
      double share = i / (double) corners;
      Spot edge = loaf.crust(from + (0.99 - from) * share, 0);
      double swell = StrictMath.pow(StrictMath.sin(Math.PI * (0.06 + 0.88 * share)), 0.7);
      out.add(edge.plus(-reach * swell * (0.9 + 0.2 * chance.nextDouble()), reach * 0.12 * swell));
      wound.add(0, edge.plus(7 + 5 * swell, 0));
    }
    List<Spot> all = new ArrayList<>(out);
    all.addAll(wound);
    ink.shape(new Strokes().round(all), Palette.crust(-1), 2);
    // Torn crumb: cells laid open, strings across the wound.
    Strokes cells = new Strokes();
    Strewn.bubbles(
        cells,
        chance,
        5 + 9 * amount,
        () -> {
          int i = 1 + chance.nextInt(corners - 1);
          return wound.get(corners - i).towards(out.get(i), 0.3 + 0.5 * chance.nextDouble());
        },
        4.5);
    ink.shape(cells, Palette.CELL, 0.9);
    Strokes shreds = new Strokes();
    for (int i = 1; i < corners; i++) {
      Spot root = wound.get(corners - i);
      shreds.move(root).curve(root.plus(-5, -3), root.plus(-9 - 5 * chance.nextDouble(), -1));
    }
    ink.line(shreds, 1.2);
    // The lips of the crust on either side.
    Strokes lips = new Strokes();
    Spot high = out.get(0);
    Spot low = out.get(corners);
    lips.polyline(List.of(high.plus(4, -7), high.plus(-8, -4), high.plus(-3, 1), high.plus(6, 4)));
    lips.polyline(List.of(low.plus(8, 1), low.plus(-9, 1), low.plus(-3, -5), low.plus(5, -4)));
    ink.shape(lips, Palette.crust(look.amount(Trait.CRUST_COLOUR)), 2);
    ink.seen(Trait.SIDE_BURST, out.get(corners / 2).plus(reach * 0.5, 0));
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
        x * StrictMath.cos(angle) - y * StrictMath.sin(angle),
        x * StrictMath.sin(angle) + y * StrictMath.cos(angle));
  }

  // A piece of the foot stayed behind.
  private void stuck(double amount) {
    if (amount == 0) {
      return;
    }
    SplittableRandom chance = look.chance(Trait.STUCK);
    double half = 0.16 + 0.2 * amount;
    List<Spot> patch =
        Strewn.lump(chance, new Spot(0.085, 0.5), 0.08, half, 22, 0.17).stream()
            .map(place -> loaf.crust(place.x(), place.y()))
            .toList();
    ink.shape(new Strokes().polygon(patch), Palette.crumb(0, 0.3), 1.8);
    Strokes holes = new Strokes();
    Strewn.bubbles(
        holes,
        chance,
        16 * amount,
        () ->
            loaf.crust(
                0.05 + 0.07 * chance.nextDouble(), 0.5 + 1.3 * half * (chance.nextDouble() - 0.5)),
        4.5);
    ink.shape(holes, Palette.CELL, 0.9);
    // What stayed in the tin: a strip of its wall with the crust on it.
    Spot wall = new Spot(316, 286);
    ink.shape(
        new Strokes()
            .polygon(
                List.of(
                    wall.plus(-56, -9), wall.plus(62, -16), wall.plus(62, 2), wall.plus(-56, 9))),
        Palette.METAL,
        1.6);
    ink.shape(
        new Strokes().polygon(Strewn.lump(chance, wall.plus(4, -3), 38 * half / 0.36, 7, 16, 0.16)),
        Palette.crust(look.amount(Trait.CRUST_COLOUR)),
        1.4);
    ink.seen(Trait.STUCK, loaf.crust(0.1, 0.5));
  }

  private void drips(double amount) {
    Strokes drips = new Strokes();
    double[] places = {0.12, 0.9, 0.2};
    for (int i = 0; i < Math.ceil(3 * amount); i++) {
      Spot at = loaf.crust(places[i], i == 2 ? 0.45 : 0);
      double fall = (Loaf.FOOT.y() + (i == 2 ? -18 : 4) - at.y()) * Math.min(1, 0.4 + 0.7 * amount);
      drips.round(
          List.of(
              at.plus(-6, -5),
              at.plus(6, -6),
              at.plus(5, fall * 0.4),
              at.plus(3, fall * 0.7),
              at.plus(7, fall),
              at.plus(-7, fall),
              at.plus(-2, fall * 0.7),
              at.plus(-5, fall * 0.35)));
    }
    ink.shape(drips, Palette.FILLING, 1.3);
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
