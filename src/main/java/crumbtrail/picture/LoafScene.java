package crumbtrail.picture;

import crumbtrail.picture.Cells.Cell;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A cut loaf, from what lies farthest to what lies nearest. */
final class LoafScene {
  /** A form off its sound one by less than this needs no ghost. */
  private static final double APART = 0.04;

  private LoafScene() {}

  static void draw(Ink ink, Look look) {
    Loaf loaf = new Loaf(look);
    Around around = new Around(ink, look, loaf);
    around.under();
    Crust crust = new Crust(ink, look, loaf);
    crust.back();
    crust.rim();
    CrumbMarks marks = new CrumbMarks(ink, look, loaf);
    List<Cell> taken = new ArrayList<>(new Inlay(ink, look, loaf).draw());
    taken.addAll(marks.draw());
    Cells.draw(ink, look, loaf, taken);
    new CrumbSurface(ink, look, loaf).draw();
    around.over();
    ghost(ink, look);
    form(ink, loaf);
  }

  // A dashed line where a sound loaf would end.
  private static void ghost(Ink ink, Look look) {
    Map<Trait, Double> due = look.less(Trait.PUFF) > 0 ? Map.of(Trait.PUFF, 1.0) : Map.of();
    Look sound = new Look(Scene.LOAF, look.shape(), due, look.seed());
    boolean fell = look.more(Trait.TOP_FALL) > 0;
    boolean grown =
        Math.abs(Outline.height(look) - 1) > APART || Math.abs(Outline.breadth(look) - 1) > APART;
    if (grown || fell || look.more(Trait.SIDES_IN) > 0) {
      ink.ghost(
          new Strokes()
              .polygon(new Loaf(sound).face().subList(0, 2 * Outline.SIDE + Outline.TOP + 1)));
    }
  }

  private static void form(Ink ink, Loaf loaf) {
    Spot top = loaf.crust(0.6, 0);
    ink.seen(Trait.VOLUME, top);
    ink.seen(Trait.SPRING, top);
    ink.seen(Trait.SPREAD, loaf.crust(0.85, 0));
    ink.seen(Trait.TOP_FALL, loaf.crust(0.5, 0));
    ink.seen(Trait.SIDES_IN, loaf.crust(0.94, 0));
    ink.seen(Trait.LOPSIDED, loaf.crust(0.72, 0));
    ink.seen(Trait.PUFF, loaf.at(0, 0.5));
    ink.seen(Trait.UNEVEN, loaf.at(0.3, 0.35));
    ink.seen(Trait.CELL_SIZE, loaf.at(-0.35, 0.68));
    ink.seen(Trait.CELL_NUMBER, loaf.at(0.4, 0.25));
    ink.seen(Trait.UPRIGHT, loaf.at(0.2, 0.5));
  }
}
