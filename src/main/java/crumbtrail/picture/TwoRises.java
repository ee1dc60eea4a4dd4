package crumbtrail.picture;

import java.util.List;
import java.util.SplittableRandom;

/** The bulk well risen on the left, the tin hardly on the right. */
final class TwoRises {
  private TwoRises() {}

  static void draw(Ink ink, Look look, double amount) {
    Spot jar = new Spot(112, 268);
    ink.shape(
        new Strokes()
            .polyline(
                List.of(
                    jar.plus(-70, -170), jar.plus(-64, 0), jar.plus(64, 0), jar.plus(70, -170))),
        Palette.GLASS,
        2.2);
    Strokes risen = new Strokes();
    risen
        .move(jar.plus(-62, -4))
        .line(jar.plus(-66, -118))
        .curve(jar.plus(0, -160), jar.plus(66, -118))
        .line(jar.plus(62, -4))
        .close();
    ink.shape(risen, Palette.DOUGH, 1.8);
    SplittableRandom chance = look.chance(4);
    Strokes cells = new Strokes();
    Strewn.bubbles(
        cells,
        chance,
        44,
        () -> jar.plus(112 * (chance.nextDouble() - 0.5), -12 - 108 * chance.nextDouble()),
        7);
    ink.shape(cells, Palette.CELL, 0.9);
    ink.line(new Strokes().stroke(jar.plus(-80, -60), jar.plus(80, -60)), 3, Palette.DEEP);
    Spot tin = new Spot(306, 268);
    double level = 78 - 48 * amount;
    DoughScenes.dough(ink, DoughScenes.mound(tin.plus(0, -6), 76, level, 3.4));
    ink.ghost(new Strokes().move(tin.plus(-80, -84)).curve(tin.plus(0, -150), tin.plus(80, -84)));
    Strokes wall = new Strokes();
    wall.polyline(
        List.of(tin.plus(-92, -92), tin.plus(-82, 0), tin.plus(82, 0), tin.plus(92, -92)));
    ink.line(wall, 4.5, Palette.METAL);
    ink.line(
        new Strokes()
            .polyline(
                List.of(tin.plus(-95, -92), tin.plus(-84, 3), tin.plus(84, 3), tin.plus(95, -92))),
        1.5);
    ink.line(
        new Strokes()
            .stroke(new Spot(194, 170), new Spot(212, 170))
            .polyline(List.of(new Spot(206, 164), new Spot(213, 170), new Spot(206, 176))),
        2);
    ink.seen(Trait.SECOND_RISE, tin.plus(0, -level - 2));
  }
}
