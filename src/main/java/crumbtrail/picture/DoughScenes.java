package crumbtrail.picture;

import java.util.ArrayList;
import java.util.List;

/** Dough, starter and yeast, each in its vessel. */
final class DoughScenes {
  private DoughScenes() {}

  static void draw(Ink ink, Look look) {
    ink.fill(new Strokes().ellipse(new Spot(210, 276), 186, 22), Palette.TABLE);
    switch (look.scene()) {
      case BOWL -> new Bowl(ink, look).draw();
      case BENCH -> new Bench(ink, look).draw();
      case BASKET -> new Basket(ink, look).draw();
      case JAR -> new Jar(ink, look).jar();
      case CUP -> new Jar(ink, look).cup();
      case SHEET -> sheet(ink, look);
      case LOAF -> throw new IllegalArgumentException("a loaf is no dough");
    }
  }

  /** A body of dough with its outline and a little shade at its foot on the right. */
  static void dough(Ink ink, List<Spot> rim) {
    ink.shape(new Strokes().round(rim), Palette.DOUGH, 2);
  }

  /** Points of an ellipse, as corners for a round curve; only the upper half if so told. */
  static List<Spot> mound(Spot foot, double wide, double high, double square) {
    List<Spot> rim = new ArrayList<>();
    for (int i = 0; i <= 16; i++) {
      double angle = Math.PI * i / 16;
      double x =
          Math.signum(StrictMath.cos(angle))
              * StrictMath.pow(Math.abs(StrictMath.cos(angle)), 2 / square);
      double y = StrictMath.pow(Math.abs(StrictMath.sin(angle)), 2 / square);
      rim.add(foot.plus(-x * wide, -y * high));
    }
    rim.add(foot.plus(wide * 0.9, 6));
    rim.add(foot.plus(-wide * 0.9, 6));
    return rim;
  }

  /** Short lines that follow the right flank of a mound. */
  static void shade(Ink ink, Spot foot, double wide, double high) {
    Strokes hatch = new Strokes();
    for (int i = 0; i < 9; i++) {
      double angle = 0.12 + 0.11 * i;
      double x = StrictMath.cos(angle) * wide;
      double y = StrictMath.sin(angle) * high;
      hatch.stroke(foot.plus(x * 0.94, -y * 0.94), foot.plus(x * 0.8 - 3, -y * 0.8 + 5));
    }
    ink.line(hatch, 0.9);
  }

  // Layers of dough and butter, edge on.
  private static void sheet(Ink ink, Look look) {
    double broken = look.more(Trait.BUTTER_PIECES);
    var chance = look.chance(Trait.BUTTER_PIECES);
    Spot left = new Spot(64, 128);
    double wide = 292;
    double high = 120;
    Strokes block = new Strokes();
    block.round(
        List.of(
            left.plus(-8, -6),
            left.plus(wide / 2, -10),
            left.plus(wide + 8, -6),
            left.plus(wide + 8, high + 6),
            left.plus(wide / 2, high + 9),
            left.plus(-8, high + 6)));
    ink.shape(block, Palette.DOUGH, 2);
    Strokes butter = new Strokes();
    for (int layer = 0; layer < 4; layer++) {
      double y = left.y() + 18 + layer * 27;
      double from = left.x() + 8;
      double end = left.x() + wide - 8;
      while (from < end - 12) {
        double length = broken == 0 ? end - from : 16 + (1.15 - broken) * 90 * chance.nextDouble();
        double to = Math.min(end, from + length);
        double tilt = broken * 9 * (chance.nextDouble() - 0.5);
        butter.polygon(
            List.of(
                new Spot(from, y - 4.5), new Spot(to, y - 4.5 + tilt),
                new Spot(to - 2 * broken, y + 4.5 + tilt), new Spot(from + 2, y + 4.5)));
        ink.seen(Trait.BUTTER_PIECES, new Spot(from + 150, y));
        from = to + 5 + 16 * broken * chance.nextDouble();
      }
    }
    ink.shape(butter, Palette.BUTTER, 1.2);
    Strokes through = new Strokes();
    for (int i = 0; i < Math.ceil(4 * broken); i++) {
      Spot at = left.plus(44 + 66 * i, -8);
      through.round(
          List.of(
              at.plus(-11, 9), at.plus(-6, -8), at.plus(5, -10), at.plus(13, 5), at.plus(4, 14)));
    }
    ink.shape(through, Palette.BUTTER, 1.6);
  }
}
