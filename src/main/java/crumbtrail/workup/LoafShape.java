package crumbtrail.workup;

import crumbtrail.knowledge.Style;
import crumbtrail.oven.Boundary;
import crumbtrail.oven.Loaf;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.BakeProcess.VesselSize;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** The shape of a loaf in the oven, from its style and from what it stands in. */
final class LoafShape {
  /** Inner lengths of a common loaf tin for 900 g, mm (9 × 5 × 2.75 in). */
  private static final List<Double> TIN = List.of(229.0, 127.0, 70.0);

  private static final double TIN_GRAMS = 900;

  /** Thickness of flat bread where the style states none, mm (common practice). */
  private static final double FLAT = 12;

  private LoafShape() {}

  /** Makes loaves of this shape from their weight in grams. */
  static DoubleFunction<Loaf> of(BakeProcess process, Style style) {
    DoubleFunction<Loaf> shape = shape(process.vessel(), style);
    Optional<Boundary> boundary = boundary(process, style);
    return boundary.isEmpty() ? shape : grams -> shape.apply(grams).in(boundary.get());
  }

  private static DoubleFunction<Loaf> shape(BakeProcess.Vessel vessel, Style style) {
    Optional<List<Double>> lengths =
        vessel.size().map(VesselSize::lengths).filter(mm -> mm.size() == 3);
    if (style.tags().contains("flat")) {
      double thickness = style.habits().value("thickness").orElse(FLAT);
      return grams -> Loaf.flat(grams, thickness);
    }
    String kind = vessel.kind().orElse("").toLowerCase(Locale.ROOT);
    if (VesselWorkup.holds(kind) || style.tags().contains("tin")) {
      return grams -> tin(grams, lengths.orElse(TIN), lengths.isPresent());
    }
    if (style.key().contains("baguette")) {
      return Loaf::baguette;
    }
    return style.tags().contains("small") ? Loaf::roll : Loaf::hearth;
  }

  // Of a tin whose size is not told, one in proportion to its dough is taken.
  private static Loaf tin(double grams, List<Double> mm, boolean told) {
    double scale = told ? 1 : Math.cbrt(grams / TIN_GRAMS);
    return Loaf.tin(grams, mm.get(0) * scale, mm.get(1) * scale, mm.get(2) * scale);
  }

  private static Optional<Boundary> boundary(BakeProcess process, Style style) {
    String kind = process.vessel().kind().orElse("").toLowerCase(Locale.ROOT);
    if (kind.contains("glass") || kind.contains("pyrex")) {
      return Optional.of(Boundary.GLASS);
    }
    if (pot(kind) || style.tags().contains("pot-baked")) {
      return Optional.of(Boundary.POT);
    }
    if (kind.contains("dark") || kind.contains("black") || kind.contains("non-stick")) {
      return Optional.of(Boundary.DARK_TIN);
    }
    boolean stone = kind.contains("stone") || kind.contains("steel plate");
    return stone || style.tags().contains("stone")
        ? Optional.of(Boundary.HEARTH)
        : Optional.empty();
  }

  /** Whether the loaf bakes in a pot. */
  static boolean pot(String kind) {
    return kind.contains("pot")
        || kind.contains("dutch")
        || kind.contains("casserole")
        || kind.contains("cloche");
  }
}
