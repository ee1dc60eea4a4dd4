package crumbtrail.picture;

import crumbtrail.picture.Cells.Cell;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** What is wrong within the crumb: holes, bands, streaks, raw dough. */
final class CrumbMarks {
  private final Ink ink;
  private final Look look;
  private final Loaf loaf;
  private final List<Cell> taken = new ArrayList<>();

  CrumbMarks(Ink ink, Look look, Loaf loaf) {
    this.ink = ink;
    this.look = look;
    this.loaf = loaf;
  }

  /** Draws what lies under the cells, and tells where no cell may be. */
  List<Cell> draw() {
    flyingCrust(look.more(Trait.FLYING_CRUST));
    denseBand(look.more(Trait.DENSE_BAND));
    raw(look.more(Trait.RAW));
    tunnel(look.more(Trait.TUNNEL));
    holes(look.more(Trait.HOLES));
    streaks(look.more(Trait.STREAKS));
    flourLumps(look.more(Trait.FLOUR_LUMPS));
    return taken;
  }

  private void holes(double amount) {
    SplittableRandom chance = look.chance(Trait.HOLES);
    int many = (int) Math.ceil(4 * amount);
    double size = Math.min(loaf.halfWidth(), loaf.height() * 0.8);
    double[][] places = {{-0.28, 0.62}, {0.4, 0.52}, {-0.42, 0.3}, {0.12, 0.78}};
    for (int i = 0; i < many; i++) {
      double radius = size * (0.1 + 0.12 * amount * (1 - 0.13 * i));
      Spot at = loaf.at(places[i][0], places[i][1]);
      if (loaf.inCrumb(at, radius * 0.8)) {
        cavern(at, radius * 1.35, radius * 0.85, chance.nextDouble() - 0.5, chance);
        ink.seen(Trait.HOLES, at);
      }
    }
  }

  private void tunnel(double amount) {
    if (amount > 0) {
      Spot at = loaf.at(0.02, 0.5);
      double wide = loaf.halfWidth() * (0.3 + 0.4 * amount);
      cavern(at, wide, loaf.height() * (0.06 + 0.06 * amount), -0.12, look.chance(Trait.TUNNEL));
      ink.seen(Trait.TUNNEL, at);
    }
  }

  // A hole with its depth in hatching, open towards the light.
  private void cavern(Spot at, double wide, double high, double lean, SplittableRandom chance) {
    List<Spot> rim = new ArrayList<>();
    int corners = 9;
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * i / corners;
      double out = 1.05 + 0.3 * (chance.nextDouble() - 0.5);
      double x = StrictMath.cos(angle) * wide * out;
      double y = StrictMath.sin(angle) * high * out;
      rim.add(
          at.plus(
              x * StrictMath.cos(lean) - y * StrictMath.sin(lean),
              x * StrictMath.sin(lean) + y * StrictMath.cos(lean)));
    }
    ink.shape(new Strokes().round(rim), Palette.DEEP, 1.5);
    // The wall seen through the hole.
    List<Spot> wall = rim.stream().map(spot -> at.towards(spot, 0.74).plus(2, 3)).toList();
    ink.fill(new Strokes().round(wall), Palette.CELL);
    Strokes hatch = new Strokes();
    for (double x = -0.7; x < 0.75; x += 5 / wide) {
      double drop = StrictMath.sqrt(1 - x * x) * high;
      hatch.stroke(
          at.plus(x * wide, -drop * 0.85 + x * wide * lean),
          at.plus(x * wide + 1.5, -drop * 0.15 + x * wide * lean));
    }
    ink.line(hatch, 0.8);
    for (double x = -1; x <= 1; x += 0.5) {
      taken.add(new Cell(at.plus(x * wide * 0.8, x * wide * 0.8 * lean), high * 1.25 + 1));
    }
  }

  private void flyingCrust(double amount) {
    if (amount == 0) {
      return;
    }
    List<Spot> edge = loaf.crumb();
    int from = Outline.SIDE + 5;
    int to = Outline.SIDE + Outline.TOP - 5;
    List<Spot> roof = new ArrayList<>();
    List<Spot> floor = new ArrayList<>();
    double deep = loaf.height() * (0.07 + 0.17 * amount);
    for (int i = from; i <= to; i++) {
      double share = (i - from) / (double) (to - from);
      Spot spot = edge.get(i).plus(0, 1.5);
      roof.add(spot);
      double wave = 1 + 0.13 * StrictMath.sin(i * 1.3) + 0.1 * StrictMath.sin(i * 0.7);
      floor.add(0, spot.plus(0, deep * StrictMath.sin(Math.PI * share) * wave));
    }
    List<Spot> all = new ArrayList<>(roof);
    all.addAll(floor);
    ink.shape(new Strokes().polygon(all), Palette.DEEP, 1.5);
    Strokes hatch = new Strokes();
    for (int i = 1; i < roof.size() - 1; i++) {
      Spot low = floor.get(floor.size() - 1 - i);
      hatch.stroke(roof.get(i), roof.get(i).towards(low, 0.55 + 0.2 * (i % 2)));
      taken.add(new Cell(roof.get(i).towards(low, 0.5), roof.get(i).distance(low) * 0.55 + 2));
    }
    ink.line(hatch, 0.8);
    ink.seen(Trait.FLYING_CRUST, roof.get(roof.size() / 2).plus(0, deep * 0.6));
  }

  // Glassy and without cells; level lines tell it in print.
  private void denseBand(double amount) {
    if (amount == 0) {
      return;
    }
    double deep = loaf.height() * (0.08 + 0.2 * amount);
    List<Spot> edge = loaf.crumb();
    double left =
        edge.stream()
            .filter(s -> s.y() > Loaf.FOOT.y() - deep)
            .mapToDouble(Spot::x)
            .min()
            .orElse(0);
    double right =
        edge.stream()
            .filter(s -> s.y() > Loaf.FOOT.y() - deep)
            .mapToDouble(Spot::x)
            .max()
            .orElse(0);
    double low = edge.stream().mapToDouble(Spot::y).max().orElse(0) - 1;
    Strokes lines = new Strokes();
    List<Spot> upper = new ArrayList<>();
    for (double x = left; x <= right; x += 6) {
      upper.add(new Spot(x, low - deep + 2.5 * StrictMath.sin(x / 11)));
    }
    List<Spot> band = new ArrayList<>(upper);
    double inset = Math.max(0, (right - left) / 2 - (loaf.halfWidth() * 0.72));
    band.add(new Spot(right, low - deep * 0.5));
    band.add(new Spot(right - inset * 0.5, low));
    band.add(new Spot(left + inset * 0.5, low));
    band.add(new Spot(left, low - deep * 0.5));
    band = band.stream().map(this::within).toList();
    ink.fill(new Strokes().polygon(band), Palette.DOUGH_SHADE);
    for (double y = low - 3; y > low - deep + 3; y -= 4) {
      level(lines, y, left, right);
    }
    ink.line(lines, 0.8, Palette.DEEP);
    ink.line(new Strokes().smooth(upper.stream().map(this::within).toList()), 1.1);
    for (double x = left; x <= right; x += deep * 0.6) {
      taken.add(new Cell(new Spot(x, low - deep * 0.35), deep * 0.72));
    }
    ink.seen(Trait.DENSE_BAND, new Spot(Loaf.FOOT.x() - 20, low - deep / 2));
  }

  private void level(Strokes lines, double y, double left, double right) {
    double from = left;
    double to = right;
    while (from < to && !loaf.inCrumb(new Spot(from, y), 1)) {
      from += 2;
    }
    while (to > from && !loaf.inCrumb(new Spot(to, y), 1)) {
      to -= 2;
    }
    if (to - from > 8) {
      lines.stroke(new Spot(from + 2, y), new Spot(to - 2, y));
    }
  }

  private Spot within(Spot spot) {
    Spot middle = loaf.at(0, 0.4);
    Spot held = spot;
    for (int i = 0; i < 40 && !loaf.inCrumb(held, 0.2); i++) {
      held = held.towards(middle, 0.02);
    }
    return held;
  }

  private void raw(double amount) {
    if (amount == 0) {
      return;
    }
    Spot at = loaf.at(0, 0.42);
    double wide = loaf.halfWidth() * (0.3 + 0.3 * amount);
    double high = loaf.height() * (0.14 + 0.14 * amount);
    SplittableRandom chance = look.chance(Trait.RAW);
    List<Spot> rim = new ArrayList<>();
    for (int i = 0; i < 11; i++) {
      double out = 1 + 0.2 * (chance.nextDouble() - 0.5);
      double angle = 2 * Math.PI * i / 11;
      rim.add(at.plus(StrictMath.cos(angle) * wide * out, StrictMath.sin(angle) * high * out));
    }
    ink.shape(new Strokes().round(rim), "#d9cfb4", 1.4);
    Strokes waves = new Strokes();
    for (double y = -0.7; y <= 0.75; y += 7 / high) {
      double half = StrictMath.sqrt(1 - y * y) * wide * 0.8;
      List<Spot> wave = new ArrayList<>();
      for (double x = -half; x <= half; x += 9) {
        wave.add(at.plus(x, y * high + (wave.size() % 2 == 0 ? -2.2 : 2.2)));
      }
      if (wave.size() > 2) {
        waves.smooth(wave);
      }
    }
    ink.line(waves, 1);
    for (double x = -0.7; x <= 0.7; x += 0.35) {
      taken.add(new Cell(at.plus(x * wide, 0), high * StrictMath.sqrt(1 - x * x) + 2));
    }
    ink.seen(Trait.RAW, at);
  }

  private void streaks(double amount) {
    SplittableRandom chance = look.chance(Trait.STREAKS);
    int many = amount == 0 ? 0 : (int) Math.ceil(1 + 3 * amount);
    for (int i = 0; i < many; i++) {
      double up = 0.22 + 0.58 * i / Math.max(1, many - 1);
      double half = 0.62 - 0.25 * up;
      List<Spot> upper = new ArrayList<>();
      List<Spot> lower = new ArrayList<>();
      for (double x = -half; x <= half + 0.01; x += half / 5) {
        double thick =
            (2 + 4.5 * amount)
                * (1 - StrictMath.pow(x / half, 2))
                * (0.6 + 0.8 * chance.nextDouble());
        Spot spot = loaf.at(x, up - 0.16 * x * x + 0.035 * StrictMath.sin(7 * x + 2 * i));
        upper.add(spot.plus(0, -thick / 2));
        lower.add(0, spot.plus(0, thick / 2));
        taken.add(new Cell(spot, thick / 2 + 1));
      }
      upper.addAll(lower);
      ink.shape(new Strokes().round(upper), Palette.DEEP, 0.9);
      ink.seen(Trait.STREAKS, loaf.at(0.1, up));
    }
    if (amount > 0.5) {
      core(loaf.at(0.45, 0.36), 6 + 5 * amount);
      core(loaf.at(-0.5, 0.5), 4 + 4 * amount);
    }
  }

  // A knot: ring within ring.
  private void core(Spot at, double radius) {
    if (loaf.inCrumb(at, radius)) {
      ink.shape(new Strokes().ellipse(at, radius, radius * 0.8), Palette.DOUGH_SHADE, 1.2);
      ink.line(new Strokes().ellipse(at, radius * 0.55, radius * 0.4), 1);
      taken.add(new Cell(at, radius + 1));
    }
  }

  private void flourLumps(double amount) {
    SplittableRandom chance = look.chance(Trait.FLOUR_LUMPS);
    double[][] places = {
      {-0.35, 0.55}, {0.4, 0.35}, {0.22, 0.7}, {-0.55, 0.27}, {0, 0.2}, {0.6, 0.58}, {-0.05, 0.44}
    };
    Strokes dust = new Strokes();
    for (int i = 0; i < Math.ceil(7 * amount); i++) {
      Spot at = loaf.at(places[i][0], places[i][1]);
      double radius = 6 + 7 * amount * chance.nextDouble();
      if (loaf.inCrumb(at, radius)) {
        List<Spot> rim = Strewn.lump(chance, at, radius * 1.3, radius, 9, 0.22);
        ink.shape(new Strokes().polygon(rim), Palette.FLOUR, 1.6);
        for (int k = 0; k < 8; k++) {
          Spot speck = Strewn.lump(chance, at, radius * 0.7, radius * 0.6, 3, 0.6).get(0);
          dust.dot(speck);
        }
        taken.add(new Cell(at, radius * 1.3 + 1));
        ink.seen(Trait.FLOUR_LUMPS, at);
      }
    }
    ink.line(dust, 1.3);
  }
}
