package crumbtrail.picture;

import crumbtrail.picture.Cells.Cell;
import java.util.ArrayList;
import java.util.List;

/** What some breads have within: a swirl of filling, the leaves of a laminated dough, a pocket. */
final class Inlay {
  private final Ink ink;
  private final Look look;
  private final Loaf loaf;
  private final List<Cell> taken = new ArrayList<>();

  Inlay(Ink ink, Look look, Loaf loaf) {
    this.ink = ink;
    this.look = look;
    this.loaf = loaf;
  }

  /** Draws what the shape has, and tells where no cell may be. */
  List<Cell> draw() {
    if (look.shape() == Shape.SWIRL || look.more(Trait.SWIRL_GAP) > 0) {
      swirl(look.more(Trait.SWIRL_GAP));
    }
    if (look.shape() == Shape.LAMINATED || look.amount(Trait.LAYERS) != 0) {
      leaves(look.less(Trait.LAYERS));
    }
    double pocket = look.more(Trait.PUFF);
    if (look.shape() == Shape.FLAT && pocket > 0) {
      pocket(pocket);
    }
    return taken;
  }

  private void swirl(double gap) {
    List<Spot> outer = new ArrayList<>();
    List<Spot> inner = new ArrayList<>();
    int steps = 46;
    for (int i = 0; i <= steps; i++) {
      double turn = i / (double) steps;
      double angle = -0.6 + turn * 4.4 * Math.PI;
      double reach = 0.12 + 0.56 * turn;
      double thick =
          0.018
              + gap
                  * 0.075
                  * StrictMath.sin(Math.PI * Math.min(1, turn * 1.2))
                  * (0.6 + 0.4 * StrictMath.sin(angle - 1));
      outer.add(around(angle, reach + thick));
      inner.add(0, around(angle, reach - 0.012));
      taken.add(new Cell(around(angle, reach), 3 + thick * 70));
    }
    List<Spot> room = new ArrayList<>(outer);
    room.addAll(inner);
    if (gap > 0) {
      ink.shape(new Strokes().polygon(room), Palette.DEEP, 1);
      Strokes hatch = new Strokes();
      for (int i = 8; i < steps; i++) {
        hatch.stroke(outer.get(i), outer.get(i).towards(inner.get(steps - i), 0.6));
      }
      ink.line(hatch, 0.7);
      ink.seen(Trait.SWIRL_GAP, outer.get(30).towards(inner.get(16), 0.5));
    }
    List<Spot> line = new ArrayList<>(inner);
    ink.line(new Strokes().polyline(line), 3, Palette.FILLING);
  }

  private Spot around(double angle, double reach) {
    Spot middle = loaf.at(0, 0.47);
    return middle.plus(
        StrictMath.cos(angle) * reach * loaf.halfWidth() * 1.18,
        StrictMath.sin(angle) * reach * loaf.height() * 0.56);
  }

  // Arcs that follow the crust, rolled inwards; the fewer and the more broken, the more bready.
  private void leaves(double merged) {
    int many = (int) Math.round(9 - 6 * merged);
    Strokes arcs = new Strokes();
    Strokes rooms = new Strokes();
    for (int i = 0; i < many; i++) {
      double reach = 0.86 - 0.76 * i / Math.max(1, many);
      double gap = 0.062 * (1 - 0.9 * merged);
      List<Spot> arc = new ArrayList<>();
      double span = merged > 0 ? 2 * Math.PI * (1 - 0.62 * merged) : 2 * Math.PI;
      double start = -0.5 + i * 1.7;
      int steps = Math.max(8, (int) (26 * reach * span / (2 * Math.PI)));
      for (int k = 0; k <= steps; k++) {
        arc.add(leaf(start + span * k / steps, reach - 0.05 * k / steps));
      }
      arcs.smooth(arc);
      for (int k = 0; merged < 0.85 && k < steps - 1; k += 2) {
        double from = start + span * k / steps;
        double to = start + span * (k + 1.45) / steps;
        rooms.round(
            List.of(
                leaf(from, reach - 0.02),
                leaf(to, reach - 0.02),
                leaf(to, reach - gap),
                leaf(from, reach - gap)));
      }
    }
    ink.shape(rooms, Palette.CELL, 0.8);
    ink.line(arcs, 1.2);
    if (merged < 0.5) {
      taken.add(new Cell(loaf.at(0, 0.5), loaf.halfWidth()));
      taken.add(new Cell(loaf.at(0, 0.2), loaf.halfWidth()));
    }
    ink.seen(Trait.LAYERS, loaf.at(-0.1, 0.5));
  }

  private Spot leaf(double angle, double reach) {
    List<Spot> edge = loaf.crumb();
    double turn = ((angle / (2 * Math.PI)) % 1 + 1) % 1;
    double at = turn * edge.size();
    int index = (int) at % edge.size();
    Spot rim = edge.get(index).towards(edge.get((index + 1) % edge.size()), at - (int) at);
    return loaf.at(0, 0.47).towards(rim, reach);
  }

  private void pocket(double amount) {
    List<Spot> rim = new ArrayList<>();
    for (int i = 0; i < 14; i++) {
      double angle = 2 * Math.PI * i / 14;
      rim.add(loaf.at(0.86 * StrictMath.cos(angle), 0.5 + 0.33 * amount * StrictMath.sin(angle)));
    }
    ink.shape(new Strokes().round(rim), Palette.DEEP, 1.3);
    taken.add(new Cell(loaf.at(0, 0.5), loaf.halfWidth() * 0.9));
  }
}
