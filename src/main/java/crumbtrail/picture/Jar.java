package crumbtrail.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** A starter in its glass with a band where it began, and yeast in a cup of water. */
final class Jar {
  private static final Spot FOOT = new Spot(196, 268);
  private static final double BAND = 78;
  private static final double HALF = 72;

  private final Ink ink;
  private final Look look;

  Jar(Ink ink, Look look) {
    this.ink = ink;
    this.look = look;
  }

  void jar() {
    double still = look.less(Trait.LEVEL);
    double thin = look.more(Trait.THIN);
    double level = 150 - 68 * Math.max(still, Math.max(thin * 0.95, 0.8 * look.more(Trait.FUR)));
    level = Math.min(level, 150 - 40 * look.more(Trait.HOOCH));
    Strokes glass = new Strokes();
    glass.polygon(
        List.of(
            FOOT.plus(-HALF, -204),
            FOOT.plus(-HALF, 0),
            FOOT.plus(HALF, 0),
            FOOT.plus(HALF, -204)));
    ink.shape(glass, Palette.GLASS, 2.2);
    starter(level, still, thin);
    hooch(look.more(Trait.HOOCH), level);
    fur(look.more(Trait.FUR), level);
    if (thin > 0) {
      spoon(thin, level);
    }
    ink.line(
        new Strokes().stroke(FOOT.plus(-HALF - 7, -BAND), FOOT.plus(HALF + 7, -BAND)),
        5,
        Palette.DEEP);
    Strokes rim = new Strokes();
    rim.round(
        List.of(
            FOOT.plus(-HALF - 5, -212),
            FOOT.plus(HALF + 5, -212),
            FOOT.plus(HALF + 5, -200),
            FOOT.plus(-HALF - 5, -200)));
    ink.shape(rim, Palette.GLASS, 1.8);
    if (still > 0) {
      ink.ghost(
          new Strokes()
              .move(FOOT.plus(-HALF + 2, -150))
              .curve(FOOT.plus(0, -166), FOOT.plus(HALF - 2, -150)));
    }
    ink.seen(Trait.LEVEL, FOOT.plus(-24, -level));
  }

  private void starter(double level, double still, double thin) {
    double crown = thin > 0 ? 0 : 8 * (1 - still);
    Strokes body = new Strokes();
    body.move(FOOT.plus(-HALF + 3, -3))
        .line(FOOT.plus(-HALF + 3, -level))
        .curve(FOOT.plus(0, -level - 2 * crown), FOOT.plus(HALF - 3, -level))
        .line(FOOT.plus(HALF - 3, -3))
        .close();
    ink.shape(body, Palette.DOUGH, 1.6);
    SplittableRandom chance = look.chance(4);
    Strokes cells = new Strokes();
    double alive = Math.max(0.05, 1 - still - 0.5 * thin);
    Strewn.bubbles(
        cells,
        chance,
        64 * alive,
        () ->
            FOOT.plus(
                (2 * chance.nextDouble() - 1) * (HALF - 12),
                -10 - (level - 20) * chance.nextDouble()),
        2 + 6 * alive);
    ink.shape(cells, Palette.CELL, 0.9);
  }

  private void hooch(double amount, double level) {
    if (amount == 0) {
      return;
    }
    double deep = 12 + 26 * amount;
    Strokes layer = new Strokes();
    layer.polygon(
        List.of(
            FOOT.plus(-HALF + 3, -level),
            FOOT.plus(HALF - 3, -level),
            FOOT.plus(HALF - 3, -level - deep),
            FOOT.plus(-HALF + 3, -level - deep)));
    ink.shape(layer, "#6d6455", 1.5);
    Strokes waves = new Strokes();
    for (double y = 5; y < deep; y += 7) {
      waves
          .move(FOOT.plus(-54, -level - y))
          .curve(FOOT.plus(-28, -level - y - 4), FOOT.plus(0, -level - y))
          .curve(FOOT.plus(28, -level - y + 4), FOOT.plus(54, -level - y));
    }
    ink.line(waves, 1, Palette.PLATE);
    ink.seen(Trait.HOOCH, FOOT.plus(-20, -level - deep / 2));
  }

  private void fur(double amount, double level) {
    if (amount == 0) {
      return;
    }
    SplittableRandom chance = look.chance(Trait.FUR);
    Strokes hair = new Strokes();
    for (int i = 0; i < Math.ceil(1 + 3 * amount); i++) {
      Spot at = FOOT.plus(-44 + 32 * i, -level);
      double size = 9 + 8 * amount * chance.nextDouble();
      ink.shape(new Strokes().ellipse(at.plus(0, -3), size * 1.2, size * 0.7), Palette.MOULD, 1);
      for (int k = 0; k < 13; k++) {
        double angle = Math.PI + Math.PI * k / 12;
        double out = size * (1.3 + 0.5 * chance.nextDouble());
        hair.stroke(
            at.plus(StrictMath.cos(angle) * size * 0.8, -3 + StrictMath.sin(angle) * size * 0.5),
            at.plus(StrictMath.cos(angle) * out, -3 + StrictMath.sin(angle) * out));
      }
      ink.seen(Trait.FUR, at.plus(0, -6));
    }
    ink.line(hair, 1.1);
    Strokes streaks = new Strokes();
    for (int i = 0; i < 3; i++) {
      Spot at = FOOT.plus(-50 + 36 * i, -level + 14 + 6 * i);
      streaks
          .move(at)
          .curve(at.plus(12, 7), at.plus(26, -2))
          .curve(at.plus(34, -8), at.plus(46, 0));
    }
    ink.line(streaks, 4.4, "#d9776a");
    ink.line(streaks, 1);
  }

  private void spoon(double thin, double level) {
    Spot bowl = new Spot(196, 40);
    Strokes stream = new Strokes();
    double half = 3 + 5 * thin;
    stream
        .move(bowl.plus(-half, 6))
        .line(bowl.plus(-half * 0.6, 268 - level - 42))
        .line(bowl.plus(half * 0.6, 268 - level - 42))
        .line(bowl.plus(half, 6))
        .close();
    ink.shape(stream, Palette.DOUGH, 1.5);
    ink.line(
        new Strokes()
            .ellipse(FOOT.plus(0, -level + 5), 20, 4)
            .ellipse(FOOT.plus(0, -level + 7), 42, 8),
        1);
    ink.shape(
        new Strokes()
            .round(
                List.of(
                    bowl.plus(-34, -7),
                    bowl.plus(0, -12),
                    bowl.plus(34, -7),
                    bowl.plus(22, 13),
                    bowl.plus(-22, 13))),
        Palette.METAL,
        1.8);
    ink.line(new Strokes().stroke(bowl.plus(32, -6), bowl.plus(150, -20)), 6);
    ink.seen(Trait.THIN, bowl.plus(0, 70));
  }

  void cup() {
    double flat = look.less(Trait.FOAM);
    Spot foot = new Spot(190, 268);
    ink.line(
        new Strokes()
            .move(foot.plus(86, -116))
            .curve(foot.plus(150, -112), foot.plus(146, -66))
            .curve(foot.plus(138, -26), foot.plus(80, -38)),
        9);
    ink.line(
        new Strokes()
            .move(foot.plus(86, -116))
            .curve(foot.plus(150, -112), foot.plus(146, -66))
            .curve(foot.plus(138, -26), foot.plus(80, -38)),
        5.4,
        Palette.GLASS);
    Strokes glass = new Strokes();
    glass.polygon(
        List.of(foot.plus(-96, -160), foot.plus(-84, 0), foot.plus(84, 0), foot.plus(96, -160)));
    ink.shape(glass, Palette.GLASS, 2.2);
    double level = 96;
    ink.shape(
        new Strokes()
            .polygon(
                List.of(
                    foot.plus(-90, -level),
                    foot.plus(-82, -4),
                    foot.plus(82, -4),
                    foot.plus(90, -level))),
        Palette.WATER,
        1.5);
    SplittableRandom chance = look.chance(Trait.FOAM);
    double head = 46 * (1 - flat);
    List<Spot> foam = new ArrayList<>();
    for (int i = 0; i < 30 * (1 - flat); i++) {
      foam.add(foot.plus(170 * (chance.nextDouble() - 0.5), -level - head * chance.nextDouble()));
    }
    Strokes bubbles = new Strokes();
    foam.forEach(
        at -> bubbles.ellipse(at, 6 + 5 * chance.nextDouble(), 6 + 3 * chance.nextDouble()));
    ink.shape(bubbles, Palette.DOUGH, 1.2);
    if (flat > 0) {
      ink.ghost(
          new Strokes()
              .move(foot.plus(-92, -level))
              .curve(foot.plus(-90, -level - 52), foot.plus(0, -level - 50))
              .curve(foot.plus(90, -level - 52), foot.plus(92, -level)));
      Strokes mud = new Strokes();
      mud.move(foot.plus(-82, -4))
          .curve(foot.plus(-40, -10 - 22 * flat), foot.plus(0, -12))
          .curve(foot.plus(46, -10 - 18 * flat), foot.plus(82, -4))
          .close();
      ink.shape(mud, Palette.CELL, 1.4);
      Strokes specks = new Strokes();
      for (int i = 0; i < 24 * flat; i++) {
        specks.dot(
            foot.plus(
                150 * (chance.nextDouble() - 0.5),
                -18 - 70 * chance.nextDouble() * chance.nextDouble()));
      }
      ink.line(specks, 2.4, Palette.DEEP);
    }
    ink.seen(Trait.FOAM, foot.plus(-20, -level));
  }
}
