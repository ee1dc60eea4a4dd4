package crumbtrail.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** What lies on the crust of the loaf behind the cut: cuts, blisters, cracks, wrinkles, spots. */
final class CrustMarks {
  private final Ink ink;
  private final Look look;
  private final Loaf loaf;

  CrustMarks(Ink ink, Look look, Loaf loaf) {
    this.ink = ink;
    this.look = look;
    this.loaf = loaf;
  }

  void draw() {
    cuts();
    segments();
    wrinkles(look.more(Trait.WRINKLES));
    cracks(look.more(Trait.CRACKS));
    spots(look.more(Trait.SPOTS));
    dull(look.more(Trait.DULL));
    rough(look.more(Trait.ROUGH));
    blisters(look.more(Trait.BLISTERS));
  }

  // Hearth loaves are cut along the top; tin loaves break along the rim.
  private void cuts() {
    double open = 0.55 + 0.45 * look.amount(Trait.CUTS) - 0.25 * look.less(Trait.SPRING);
    switch (look.shape()) {
      case HEARTH -> cut(0.45, 0.05, 0.8, open);
      case BATARD -> {
        cut(0.47, 0.03, 0.3, open);
        cut(0.44, 0.27, 0.55, open);
        cut(0.4, 0.52, 0.8, open);
      }
      case TIN, SWIRL -> shred(Math.max(0, open));
      default -> {}
    }
    ink.seen(Trait.CUTS, look.shape().inTin() ? loaf.crust(0.2, 0.5) : loaf.crust(0.5, 0.45));
  }

  private void cut(double along, double from, double to, double open) {
    List<Spot> near = new ArrayList<>();
    List<Spot> far = new ArrayList<>();
    double half = 0.12 * Math.max(0, open);
    for (int i = 0; i <= 8; i++) {
      double share = i / 8.0;
      double back = from + (to - from) * share;
      double bow = StrictMath.sin(Math.PI * share);
      near.add(loaf.crust(along - half * bow, back));
      far.add(0, loaf.crust(along + half * 0.7 * bow, back));
    }
    if (open > 0.08) {
      List<Spot> all = new ArrayList<>(near);
      all.addAll(far);
      ink.shape(new Strokes().polygon(all), Palette.crust(-0.75), 1.2);
      Strokes hatch = new Strokes();
      for (int i = 1; i < 8; i++) {
        hatch.stroke(near.get(i), near.get(i).towards(far.get(8 - i), 0.6));
      }
      ink.line(hatch, 0.7);
      // The ear: the lifted edge of the crust.
      ink.line(new Strokes().smooth(far), 1.2 + 2.4 * open);
    } else {
      ink.line(new Strokes().smooth(near), 1.5);
    }
  }

  private void shred(double open) {
    Strokes shred = new Strokes();
    SplittableRandom chance = look.chance(Trait.CUTS);
    for (double back = 0.04; back < 0.96 && open > 0.12; back += 0.03) {
      double long1 = 0.05 * open * (0.6 + 0.8 * chance.nextDouble());
      shred.stroke(loaf.crust(0.19 - long1, back), loaf.crust(0.19 + long1, back + 0.01));
    }
    ink.line(shred, 1.6, Palette.crust(-0.85));
    Strokes edge = new Strokes();
    for (double back = 0.04; back < 0.96 && open > 0.12; back += 0.06) {
      edge.stroke(
          loaf.crust(0.19, back),
          loaf.crust(0.19 + 0.02 * (chance.nextDouble() - 0.5), back + 0.05));
    }
    ink.line(edge, 1);
  }

  // A rolled-up triangle shows its steps.
  private void segments() {
    if (look.shape() == Shape.LAMINATED) {
      Strokes steps = new Strokes();
      for (double back = 0.2; back < 0.95; back += 0.2) {
        List<Spot> arc = new ArrayList<>();
        for (double along = 0.02; along < 0.66; along += 0.08) {
          arc.add(loaf.crust(along, back + 0.04 * StrictMath.sin(along * 4)));
        }
        steps.smooth(arc);
      }
      ink.line(steps, 1.7);
    }
  }

  private void wrinkles(double amount) {
    SplittableRandom chance = look.chance(Trait.WRINKLES);
    Strokes lines = new Strokes();
    for (int i = 0; i < 4 + 11 * amount && amount > 0; i++) {
      Loaf.Place place = loaf.somewhere(chance);
      List<Spot> fold = new ArrayList<>();
      for (int k = -3; k < 3; k++) {
        double along = place.along() + 0.035 * k;
        if (loaf.facing(along, place.back() + 0.04)) {
          fold.add(loaf.crust(along, place.back() + 0.035 * (k % 2 == 0 ? 1 : -1)));
        }
      }
      if (fold.size() > 2) {
        lines.smooth(fold);
      }
    }
    ink.line(lines, 1.5);
    ink.seen(Trait.WRINKLES, loaf.crust(0.4, 0.5));
  }

  private void cracks(double amount) {
    SplittableRandom chance = look.chance(Trait.CRACKS);
    Strokes lines = new Strokes();
    Strokes flakes = new Strokes();
    for (int i = 0; i < 4 + 9 * amount && amount > 0; i++) {
      Loaf.Place place = loaf.somewhere(chance);
      double along = place.along();
      double back = place.back();
      List<Spot> crack = new ArrayList<>();
      for (int k = 0; k < 6 && (k < 1 || loaf.facing(along, back)); k++) {
        crack.add(loaf.crust(along, back));
        along += 0.07 * (chance.nextDouble() - 0.4);
        back = Math.min(0.95, back + 0.07 * (chance.nextDouble() - 0.2));
      }
      lines.polyline(crack);
      Spot at = crack.get(crack.size() / 2);
      if (loaf.facing(along - 0.09, back)) {
        lines.stroke(at, loaf.crust(along - 0.09, back));
      }
      if (i % 2 == 0) {
        flakes.polygon(List.of(at, at.plus(7, -3), at.plus(10, 3), at.plus(3, 5)));
      }
    }
    ink.shape(flakes, Palette.crust(-0.8), 1);
    ink.line(lines, 1.3);
    ink.seen(Trait.CRACKS, loaf.crust(0.35, 0.5));
  }

  private void spots(double amount) {
    SplittableRandom chance = look.chance(Trait.SPOTS);
    Strokes dark = new Strokes();
    Strokes light = new Strokes();
    for (int i = 0; i < 8 + 26 * amount && amount > 0; i++) {
      Spot at = loaf.crust(loaf.somewhere(chance));
      double size = 1.6 + 2.4 * chance.nextDouble();
      (i % 3 == 0 ? light : dark).ellipse(at, size * 1.3, size);
    }
    ink.shape(light, Palette.FLOUR, 0.9);
    ink.fill(dark, Palette.INK);
    ink.seen(Trait.SPOTS, loaf.crust(0.35, 0.5));
  }

  private void dull(double amount) {
    SplittableRandom chance = look.chance(Trait.DULL);
    Strokes dust = new Strokes();
    for (int i = 0; i < 40 + 170 * amount && amount > 0; i++) {
      dust.dot(loaf.crust(loaf.somewhere(chance)));
    }
    ink.line(dust, 1.9, "#d8cfbd");
    ink.seen(Trait.DULL, loaf.crust(0.4, 0.5));
  }

  private void rough(double amount) {
    SplittableRandom chance = look.chance(Trait.ROUGH);
    Strokes torn = new Strokes();
    for (int i = 0; i < 5 + 12 * amount && amount > 0; i++) {
      Spot at = loaf.crust(loaf.somewhere(chance));
      double size = (4 + 6 * amount) * (0.6 + 0.6 * chance.nextDouble());
      List<Spot> rim = Strewn.lump(chance, at, size * 1.5, size * 0.8, 9, 0.35);
      torn.polygon(rim);
    }
    ink.shape(torn, Palette.crust(-0.7), 1.2);
    ink.seen(Trait.ROUGH, loaf.crust(0.3, 0.5));
  }

  // Domes with a light from the left.
  private void blisters(double amount) {
    SplittableRandom chance = look.chance(Trait.BLISTERS);
    Strokes domes = new Strokes();
    Strokes lights = new Strokes();
    for (int i = 0; i < 8 + 22 * amount && amount > 0; i++) {
      Spot at = loaf.crust(loaf.somewhere(chance));
      double size = 2.6 + (2 + 3 * amount) * chance.nextDouble();
      domes.ellipse(at, size * 1.15, size * 0.85);
      lights
          .move(at.plus(-size * 0.6, 0))
          .curve(at.plus(-size * 0.4, -size * 0.55), at.plus(size * 0.2, -size * 0.5));
    }
    ink.shape(domes, Palette.crust(look.amount(Trait.CRUST_COLOUR) - 0.45), 1.2);
    ink.line(lights, 1.4, Palette.FLOUR);
    ink.seen(Trait.BLISTERS, loaf.crust(0.35, 0.5));
  }
}
