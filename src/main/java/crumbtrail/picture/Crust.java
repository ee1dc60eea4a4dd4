package crumbtrail.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** The crust: the loaf behind the cut, the rim of the cut face, and what lies on them. */
final class Crust {
  private final Ink ink;
  private final Look look;
  private final Loaf loaf;
  private final double dark;

  Crust(Ink ink, Look look, Loaf loaf) {
    this.ink = ink;
    this.look = look;
    this.loaf = loaf;
    this.dark = look.amount(Trait.CRUST_COLOUR);
  }

  /** The loaf behind the cut. */
  void back() {
    Strokes body = new Strokes();
    loaf.body().forEach(body::polygon);
    ink.shape(body, Palette.crust(dark), 3.4);
    ink.fill(body, Palette.crust(dark));
    tones();
    patches(look.more(Trait.PATCHY));
    shade();
    new CrustMarks(ink, look, loaf).draw();
  }

  /** The rim of the cut face. */
  void rim() {
    List<Spot> face = loaf.face();
    List<Spot> crumb = loaf.crumb();
    ink.shape(new Strokes().polygon(face), Palette.crust(dark), 2);
    base(face, crumb);
    double heavy = Math.max(look.less(Trait.CELL_NUMBER), 0.6 * look.more(Trait.WET_BASE));
    ink.shape(new Strokes().polygon(crumb), Palette.crumb(look.more(Trait.GREY), heavy * 0.7), 0.7);
    Strokes hatch = new Strokes();
    int last = 2 * Outline.SIDE + Outline.TOP;
    int step = dark > 0.4 ? 1 : dark > -0.3 ? 2 : 4;
    for (int i = 1; i < face.size(); i += step) {
      boolean base = i > last;
      double darkness = base ? Math.max(dark, look.amount(Trait.BASE_COLOUR)) : dark;
      if (!base || darkness > -0.3) {
        hatch.stroke(face.get(i), face.get(i).towards(crumb.get(i), dark < -0.3 ? 0.6 : 1));
      }
    }
    ink.line(hatch, 0.8);
    seen(face, crumb);
  }

  private void seen(List<Spot> face, List<Spot> crumb) {
    int left = Outline.SIDE + (int) (Outline.TOP * 0.72);
    Spot rim = face.get(left).towards(crumb.get(left), 0.5);
    ink.seen(Trait.CRUST_COLOUR, loaf.crust(0.5, 0.5));
    ink.seen(Trait.CRUST_THICKNESS, rim);
    int base = 2 * Outline.SIDE + Outline.TOP + Outline.BASE / 2;
    Spot low = face.get(base).towards(crumb.get(base), 0.5);
    ink.seen(Trait.BASE_COLOUR, low);
    ink.seen(Trait.BASE_THICKNESS, low);
    ink.seen(Trait.WET_BASE, low);
  }

  // The base has a colour of its own.
  private void base(List<Spot> face, List<Spot> crumb) {
    double colour = look.amount(Trait.BASE_COLOUR);
    double thick = look.more(Trait.BASE_THICKNESS);
    if (colour == 0 && thick == 0 && look.more(Trait.WET_BASE) == 0) {
      return;
    }
    int last = 2 * Outline.SIDE + Outline.TOP;
    List<Spot> strip = new ArrayList<>();
    for (int i = last; i < face.size() + 1; i++) {
      strip.add(face.get(i % face.size()));
    }
    for (int i = face.size(); i >= last; i--) {
      Spot edge = crumb.get(i % face.size());
      strip.add(edge.plus(0, -(5 * Math.abs(colour) + 3 * look.more(Trait.WET_BASE))));
    }
    double own = colour < 0 ? -1 : Math.max(dark, colour);
    ink.shape(new Strokes().polygon(strip), Palette.crust(own), 1);
    if (colour > 0) {
      Strokes burnt = new Strokes();
      for (double x = strip.get(0).x(); x < strip.get(Outline.BASE).x(); x += 3) {
        burnt.stroke(new Spot(x, Loaf.FOOT.y() - 2), new Spot(x + 5, Loaf.FOOT.y() - 9));
      }
      ink.line(burnt, 1.2);
    }
    double wet = look.more(Trait.WET_BASE);
    if (wet > 0) {
      wet(wet);
    }
  }

  private void wet(double wet) {
    Strokes waves = new Strokes();
    for (int row = 0; row < 2; row++) {
      List<Spot> wave = new ArrayList<>();
      for (double x = -0.85; x <= 0.86; x += 0.1) {
        wave.add(loaf.at(x, 0).plus(0, -4 - 5 * row + (wave.size() % 2 == 0 ? -2 : 2)));
      }
      waves.smooth(wave);
    }
    Strokes pool = new Strokes();
    pool.ellipse(Loaf.FOOT.plus(0, 5), loaf.halfWidth() * (0.9 + 0.3 * wet), 7 * wet + 2);
    ink.line(waves, 1.1);
  }

  // Light from the upper left: the flank darker, a light along the shoulder of the top.
  private void tones() {
    double deeper = Math.min(1, dark + 0.16);
    ink.fill(stripe(0, 0.17), Palette.crust(deeper));
    if (dark < 0.7) {
      ink.fill(stripe(0.36, 0.5), Palette.crust(dark - 0.14));
    }
  }

  // A stripe of the crust from the cut back to where it turns away.
  private Strokes stripe(double from, double to) {
    List<Spot> near = new ArrayList<>();
    List<Spot> far = new ArrayList<>();
    for (int step = 0; step <= 7; step++) {
      double back = 0.005 + 0.141 * step;
      if (loaf.facing(from + 0.01, back) && loaf.facing(to, back)) {
        near.add(loaf.crust(from, back));
        far.add(0, loaf.crust(to, back));
      }
    }
    near.addAll(far);
    return near.size() > 3 ? new Strokes().polygon(near) : new Strokes();
  }

  // Lines along the loaf, the more the darker; fewer on the lit left.
  private void shade() {
    SplittableRandom chance = look.chance(3);
    Strokes lines = new Strokes();
    int many = (int) Math.round(9 + 16 * Math.max(-0.5, dark));
    for (int i = 0; i < many; i++) {
      double along = 0.06 + 0.62 * i / many + 0.02 * chance.nextDouble();
      double from = 0.04 + 0.3 * chance.nextDouble() * (along > 0.35 ? 1.6 : 0.4);
      double to = Math.min(0.97, from + 0.25 + 0.6 * chance.nextDouble());
      if (loaf.facing(along, to) && loaf.facing(along, from)) {
        bent(lines, along, from, to);
      }
    }
    ink.line(lines, 0.8, dark > 0.6 ? "#8d6a4a" : Palette.INK);
  }

  private void bent(Strokes lines, double along, double from, double to) {
    lines
        .move(loaf.crust(along, from))
        .curve(loaf.crust(along, from * 0.4 + to * 0.6), loaf.crust(along, to));
  }

  private void patches(double amount) {
    if (amount == 0) {
      return;
    }
    double[][] places = {
      {0.2, 0.3, 1}, {0.46, 0.5, -1}, {0.62, 0.25, 1}, {0.3, 0.74, -1}, {0.1, 0.62, 1}
    };
    for (double[] place : places) {
      List<Spot> rim = new ArrayList<>();
      for (int k = 0; k < 8; k++) {
        double angle = k * Math.PI / 4;
        double out = 0.85 + 0.3 * StrictMath.sin(k * 2.2 + place[0] * 9);
        rim.add(
            loaf.crust(
                place[0] + 0.085 * out * StrictMath.cos(angle),
                place[1] + 0.2 * out * StrictMath.sin(angle)));
      }
      ink.fill(new Strokes().round(rim), Palette.crust(dark + place[2] * 0.65 * amount));
      if (place[2] > 0) {
        Strokes hatch = new Strokes();
        for (double x = -0.07; x < 0.08; x += 0.014) {
          hatch.stroke(
              loaf.crust(place[0] + x, place[1] - 0.12),
              loaf.crust(place[0] + x + 0.02, place[1] + 0.13));
        }
        ink.line(hatch, 0.9);
      }
    }
    ink.seen(Trait.PATCHY, loaf.crust(0.46, 0.5));
  }
}
