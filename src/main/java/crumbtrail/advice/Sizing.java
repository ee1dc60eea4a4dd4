package crumbtrail.advice;

import crumbtrail.findings.Reasoning;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Remedy.Aim;
import crumbtrail.knowledge.Style;
import crumbtrail.pantry.Pantry;
import crumbtrail.quantity.Amounts;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetFields;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Makes a dough larger or smaller: for a number of loaves, for a tin, to a weight. A piece that
 * becomes heavier or lighter gets another time in the oven: the same share of the time that such a
 * piece wants.
 */
final class Sizing {
  private static final String TIN_ROOM = "tin room";
  private static final String PIECE = "piece weight";
  private static final String SHARE = "bake share";

  /** A piece that changes by less than this share bakes as before. Our choice. */
  private static final double SAME_PIECE = 0.05;

  private final Reasoning reasoning;
  private final Knobs knobs;
  private final List<String> notes = new ArrayList<>();

  Sizing(Reasoning reasoning, Catalogue catalogue, Pantry pantry) {
    this.reasoning = reasoning;
    this.knobs = new Knobs(catalogue, pantry);
  }

  /** What was done and what could not be, in sentences. */
  List<String> notes() {
    return List.copyOf(notes);
  }

  /** The sheet at the size that is wished. */
  BakeSheet sized(BakeSheet sheet, Wish wish) {
    if (!wish.sizes()) {
      return sheet;
    }
    Workup before = reasoning.work(sheet);
    Knob dough = knobs.named("dough-weight").orElseThrow();
    if (!dough.turns(sheet, before)) {
      notes.add("The dough cannot be made larger or smaller: the sheet gives no weights.");
      return sheet;
    }
    int pieces = sheet.process().shaping().pieces().orElse(1);
    double piece =
        Knob.reading(before, PIECE)
            .orElse(before.formula().doughGrams().value() / Math.max(1, pieces));
    BakeSheet set = sheet;
    if (wish.tin().isPresent()) {
      set = inTin(set, wish.tin().get());
      piece = pieceFor(set, before).orElse(piece);
    }
    int loaves = wish.loaves().orElse(pieces);
    double grams = wish.doughGrams().orElse(piece * loaves);
    set = dough.turned(set, reasoning.work(set), grams);
    set = pieces(set, loaves, grams / loaves);
    notes.add(
        loaves == 1
            ? "One piece of " + grams(grams) + "."
            : loaves + " pieces of " + grams(grams / loaves) + ", " + grams(grams) + " in all.");
    return baked(set, before);
  }

  private static String grams(double grams) {
    return Amounts.quantity((double) Math.round(grams), "g");
  }

  private static BakeSheet inTin(BakeSheet sheet, String size) {
    BakeSheet sized = SheetFields.with(sheet, "vessel.size", size).sheet().orElse(sheet);
    // A basket or a stone gives a loaf no walls.
    boolean tin = sized.process().vessel().kind().filter(kind -> kind.contains("tin")).isPresent();
    return tin ? sized : SheetFields.with(sized, "vessel.kind", "tin").sheet().orElse(sized);
  }

  private OptionalDouble pieceFor(BakeSheet set, Workup before) {
    Workup now = reasoning.work(set);
    Optional<Double> room = Knob.reading(now, TIN_ROOM);
    Optional<Double> piece = Knob.reading(now, PIECE);
    if (room.isEmpty() || piece.isEmpty()) {
      notes.add(
          "How much this tin holds cannot be told. Write its three lengths, such as 23 x 13 x 7 cm,"
              + " or what it holds, such as 1.8 l.");
      return OptionalDouble.empty();
    }
    double wanted = wanted(now, before);
    notes.add(
        "The tin holds "
            + Amounts.quantity(10.0 * Math.round(room.get() * piece.get() / 10), "ml")
            + "; this bread wants "
            + Amounts.quantity(Amounts.rounded(wanted, 1), "cm3/g")
            + " of room.");
    return OptionalDouble.of(room.get() * piece.get() / wanted);
  }

  // As it was, if that was right; else the middle of what is usual.
  private static double wanted(Workup now, Workup before) {
    Optional<Style.Range> usual = Knob.usual(now, TIN_ROOM);
    Optional<Double> was = Knob.reading(before, TIN_ROOM);
    if (usual.isEmpty()) {
      return Workup.OPEN_TIN_ROOM;
    }
    Style.Range range = usual.get();
    return was.filter(room -> room >= range.low() && room <= range.high()).orElse(range.middle());
  }

  private static BakeSheet pieces(BakeSheet sheet, int loaves, double grams) {
    BakeSheet set = sheet;
    if (loaves > 1 || sheet.process().shaping().pieces().isPresent()) {
      set = SheetFields.with(set, "shaping.pieces", String.valueOf(loaves)).sheet().orElse(set);
    }
    return sheet.process().shaping().pieceWeight().isPresent()
        ? SheetFields.with(set, "shaping.pieceWeight", Math.round(grams) + " g").sheet().orElse(set)
        : set;
  }

  private BakeSheet baked(BakeSheet sheet, Workup before) {
    Workup now = reasoning.work(sheet);
    Optional<Double> was = Knob.reading(before, PIECE);
    Optional<Double> is = Knob.reading(now, PIECE);
    Optional<Double> share = Knob.reading(before, SHARE);
    Knob time = knobs.named("bake-time").orElseThrow();
    Optional<Double> minutes = time.value(sheet, now);
    if (was.isEmpty() || is.isEmpty() || share.isEmpty() || minutes.isEmpty()) {
      return sheet;
    }
    if (Math.abs(is.get() / was.get() - 1) < SAME_PIECE) {
      return sheet;
    }
    Aim aim = new Aim(SHARE, String.valueOf(share.get()), null);
    OptionalDouble value = new Turner(reasoning, Trial.of(reasoning, sheet), aim, time).value();
    if (value.isEmpty()) {
      return sheet;
    }
    notes.add(
        "A piece of this weight bakes "
            + Amounts.quantity(value.getAsDouble(), "min")
            + ", where it was "
            + Amounts.quantity(minutes.get(), "min")
            + "; go by the warmth of the middle.");
    return time.turned(sheet, now, value.getAsDouble());
  }
}
