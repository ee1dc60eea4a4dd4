package crumbtrail.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** The cells of the crumb, strewn so that none runs into another or into what was drawn before. */
final class Cells {
  /** So many cells at most, which also bounds the size of the picture. */
  private static final int MOST = 330;

  private static final int TRIES = 5200;
  private static final int LETTERS = 5600;

  private final Look look;
  private final Loaf loaf;
  private final SplittableRandom chance;
  private final List<Cell> cells = new ArrayList<>();
  private final List<Cell> taken;

  /** A round room in the crumb. */
  record Cell(Spot at, double radius) {}

  private Cells(Look look, Loaf loaf, List<Cell> taken) {
    this.look = look;
    this.loaf = loaf;
    this.taken = taken;
    this.chance = look.chance(2);
  }

  /**
   * Draws them.
   *
   * @param taken where no cell may be
   */
  static void draw(Ink ink, Look look, Loaf loaf, List<Cell> taken) {
    Cells cells = new Cells(look, loaf, taken);
    cells.strew();
    cells.ink(ink);
  }

  private void strew() {
    double usual = look.shape().cell() * StrictMath.pow(2.1, look.amount(Trait.CELL_SIZE));
    double uneven = Math.max(0.05, unevenness() + 0.45 * look.amount(Trait.UNEVEN));
    double apart = 1.42 - 0.3 * look.more(Trait.CELL_NUMBER) + 1.1 * look.less(Trait.CELL_NUMBER);
    for (int i = 0; i < TRIES && cells.size() < MOST; i++) {
      Spot at = loaf.at(2 * chance.nextDouble() - 1, chance.nextDouble());
      double far = (Loaf.FOOT.y() - at.y()) / loaf.height();
      // Cells grow from the crust inwards and from the base up; the weight above presses them.
      double place = 0.72 + 0.5 * StrictMath.sin(Math.PI * Math.min(1, Math.max(0, far)));
      double radius = usual * place * StrictMath.exp(uneven * gauss());
      radius = Math.min(radius, 3.2 * usual);
      // The big ones first: late tries only fill the gaps.
      double late = i / (double) TRIES;
      radius = late > 0.5 ? Math.min(radius, usual * 0.75) : radius;
      if (free(at, Math.max(0.5, radius), apart)) {
        cells.add(new Cell(at, Math.max(0.5, radius)));
      }
    }
  }

  private double unevenness() {
    return switch (look.shape()) {
      case HEARTH, BATARD, FLAT -> 0.5;
      case TIN, ROLL, LAMINATED -> 0.3;
      default -> 0.22;
    };
  }

  private double gauss() {
    return chance.nextDouble() + chance.nextDouble() + chance.nextDouble() - 1.5;
  }

  private boolean free(Spot at, double radius, double apart) {
    if (!loaf.inCrumb(at, radius + 1.5)) {
      return false;
    }
    double gap = 1 + 1.2 * apart;
    for (Cell cell : cells) {
      if (cell.at().distance(at) < (cell.radius() + radius) * apart + gap) {
        return false;
      }
    }
    return taken.stream().allMatch(cell -> cell.at().distance(at) > cell.radius() + radius + 1);
  }

  private void ink(Ink ink) {
    Strokes[] dots = {new Strokes(), new Strokes(), new Strokes(), new Strokes()};
    Strokes rooms = new Strokes();
    int letters = 0;
    for (Cell cell : cells) {
      if (cell.radius() < 2.5) {
        dots[(int) Math.min(3, cell.radius() / 0.65)].dot(cell.at());
      } else if (letters < LETTERS) {
        int before = rooms.length();
        rooms.round(room(cell));
        letters += rooms.length() - before;
      }
    }
    for (int size = 0; size < dots.length; size++) {
      ink.line(dots[size], 1.2 + 1.1 * size, size < 2 ? Palette.DEEP : Palette.CELL);
    }
    ink.shape(rooms, Palette.CELL, 0.8);
  }

  // A cell is no circle: a few corners, drawn out along the way the dough rose.
  private List<Spot> room(Cell cell) {
    int corners = cell.radius() > 6 ? 7 : cell.radius() > 4 ? 5 : 4;
    double turn = chance.nextDouble() * Math.PI;
    double upright = look.amount(Trait.UPRIGHT);
    double stretch = 1 + 0.25 * chance.nextDouble() + 0.5 * Math.abs(upright);
    double lean = direction(cell.at(), upright) + (chance.nextDouble() - 0.5) * 0.9;
    double scale = corners == 4 ? 1.35 : 1.2;
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = turn + 2 * Math.PI * i / corners;
      double out = cell.radius() * scale * (0.82 + 0.36 * chance.nextDouble());
      double along = StrictMath.cos(angle) * out * StrictMath.sqrt(stretch);
      double across = StrictMath.sin(angle) * out / StrictMath.sqrt(stretch);
      spots.add(
          cell.at()
              .plus(
                  along * StrictMath.cos(lean) - across * StrictMath.sin(lean),
                  along * StrictMath.sin(lean) + across * StrictMath.cos(lean)));
    }
    return spots;
  }

  // Along the crust where the cell lies near it, or upwards.
  private double direction(Spot at, double upright) {
    if (upright > 0) {
      return Math.PI / 2;
    }
    Spot middle = loaf.at(0, 0.3);
    return StrictMath.atan2(at.y() - middle.y(), at.x() - middle.x()) + Math.PI / 2;
  }
}
