package crumbtrail.workup;

import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.BakeProcess.VesselSize;
import crumbtrail.workup.Reading.Known;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Pieces and the room that the tin gives them. */
final class VesselWorkup {
  /**
   * A tin of three stated lengths holds this share of the straight box: a real 8.5 × 4.5 in tin
   * holds 1440 cm³, the straight box of 8.5 × 4.5 × 2.5 in 1567 cm³ (wordloaf, Size matters).
   */
  private static final double TAPER = 0.92;

  private VesselWorkup() {}

  static void work(BakeProcess process, ReadingList readings) {
    pieceWeight(process, readings);
    OptionalDouble room = volume(process.vessel());
    Optional<Reading> piece = readings.get("piece weight");
    if (room.isPresent() && piece.isPresent() && piece.get().value() > 0) {
      Reading weight = piece.get();
      readings.put(
          "tin room",
          room.getAsDouble() / weight.value(),
          room.getAsDouble() / weight.high() * 0.95,
          room.getAsDouble() / Math.max(1, weight.low()) * 1.05,
          weight.known() == Known.ASSUMED ? Known.ASSUMED : Known.WORKED_OUT);
    }
  }

  private static void pieceWeight(BakeProcess process, ReadingList readings) {
    if (process.shaping().pieceWeight().isPresent()) {
      readings.measured("piece weight", process.shaping().pieceWeight());
      return;
    }
    readings
        .get("dough weight")
        .ifPresent(
            dough -> {
              int pieces = Math.max(1, process.shaping().pieces().orElse(1));
              readings.put(
                  "piece weight",
                  dough.value() / pieces,
                  dough.low() / pieces,
                  dough.high() / pieces,
                  process.shaping().pieces().isPresent() ? Known.WORKED_OUT : Known.ASSUMED);
            });
  }

  /**
   * Volume of the tin in cm³; empty where the vessel does not hold the loaf's shape or its size is
   * not told.
   */
  static OptionalDouble volume(BakeProcess.Vessel vessel) {
    String kind = vessel.kind().orElse("tin").toLowerCase(Locale.ROOT);
    boolean holds =
        List.of("tin", "pan", "mould", "mold", "form", "pullman").stream().anyMatch(kind::contains);
    if (vessel.size().isEmpty() || !holds) {
      return OptionalDouble.empty();
    }
    VesselSize size = vessel.size().get();
    if (size.millilitres().isPresent()) {
      return OptionalDouble.of(size.millilitres().get());
    }
    List<Double> mm = size.lengths();
    return switch (mm.size()) {
      case 3 -> OptionalDouble.of(TAPER * mm.get(0) * mm.get(1) * mm.get(2) / 1000);
      case 2 -> OptionalDouble.of(Math.PI / 4 * mm.get(0) * mm.get(0) * mm.get(1) / 1000);
      default -> OptionalDouble.empty();
    };
  }
}
