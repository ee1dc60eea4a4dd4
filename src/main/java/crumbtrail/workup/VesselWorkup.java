package crumbtrail.workup;

import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.BakeProcess.VesselSize;
import crumbtrail.vessel.CommonTins;
import crumbtrail.vessel.Tin;
import crumbtrail.vessel.TinRoom;
import crumbtrail.workup.Reading.Known;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Pieces and the room that the tin gives them. */
final class VesselWorkup {
  private static final List<String> HOLDERS =
      List.of("tin", "pan", "mould", "mold", "form", "pullman");
  private static final List<String> ROUND =
      List.of("round", "cake", "springform", "diameter", "panettone", "across");

  // Share by which a volume from lengths may be off: as measured, and with a slope that is guessed.
  private static final double MEASURED = 0.05;
  private static final double SLOPED = 0.07;

  /** Lengths this near are one, mm. */
  private static final double SAME = 4;

  /** Depth of loaf tins on their width: 0.54 to 0.63 in the six published ones. */
  private static final double DEPTH = 0.59;

  private VesselWorkup() {}

  static void work(BakeProcess process, ReadingList readings) {
    pieceWeight(process, readings);
    Optional<Held> held = held(process.vessel());
    Optional<Reading> piece = readings.get("piece weight");
    if (held.isPresent() && piece.isPresent() && piece.get().value() > 0) {
      Reading weight = piece.get();
      Held tin = held.get();
      double room = TinRoom.of(tin.value(), weight.value());
      boolean assumed = tin.named() || weight.known() == Known.ASSUMED;
      readings.put(
          "tin room",
          room,
          tin.low() / Math.max(1, weight.high()),
          tin.high() / Math.max(1, weight.low()),
          !TinRoom.covers(room) ? Known.EXTRAPOLATED : assumed ? Known.ASSUMED : Known.WORKED_OUT);
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
   * Volume of the tin in ml; empty where the vessel does not hold the loaf's shape or its size is
   * not told.
   */
  static OptionalDouble volume(BakeProcess.Vessel vessel) {
    return held(vessel).map(held -> OptionalDouble.of(held.value())).orElse(OptionalDouble.empty());
  }

  /** What a tin holds, ml; named if its size is only a name such as "2 lb". */
  private record Held(double low, double value, double high, boolean named) {
    static Held of(double value, double spread) {
      return new Held(value * (1 - spread), value, value * (1 + spread), false);
    }

    static Held of(CommonTins.Named tin) {
      return new Held(tin.low(), tin.volume(), tin.high(), true);
    }
  }

  private static Optional<Held> held(BakeProcess.Vessel vessel) {
    String kind = vessel.kind().orElse("tin").toLowerCase(Locale.ROOT);
    if (!holds(kind)) {
      return Optional.empty();
    }
    if (vessel.size().isEmpty()) {
      return CommonTins.named(kind).map(Held::of);
    }
    VesselSize size = vessel.size().get();
    if (size.millilitres().isPresent()) {
      return Optional.of(Held.of(size.millilitres().get(), MEASURED));
    }
    String words = kind + " " + size.written().toLowerCase(Locale.ROOT);
    List<Double> mm = size.lengths();
    return switch (mm.size()) {
      case 3 -> Optional.of(box(mm, words, straight(mm, words, vessel)));
      case 2 -> Optional.of(two(mm, words));
      case 0 -> CommonTins.named(words).map(Held::of);
      default -> Optional.empty();
    };
  }

  private static Held box(List<Double> mm, String words, boolean straight) {
    return Held.of(tin(mm, words, straight).volume(), straight ? MEASURED : SLOPED);
  }

  /**
   * Whether such a vessel gives the loaf its shape.
   *
   * @param kind the baker's words in small letters
   */
  static boolean holds(String kind) {
    return HOLDERS.stream().anyMatch(kind::contains);
  }

  /** The tin, where its three lengths are told. */
  static Optional<Tin> tin(BakeProcess.Vessel vessel) {
    String kind = vessel.kind().orElse("tin").toLowerCase(Locale.ROOT);
    return vessel
        .size()
        .filter(size -> holds(kind))
        .filter(size -> size.lengths().size() == 3)
        .map(
            size -> {
              String words = kind + " " + size.written().toLowerCase(Locale.ROOT);
              return tin(size.lengths(), words, straight(size.lengths(), words, vessel));
            });
  }

  // Lidded tins are straight, and so are those as high as wide; other loaf tins slope.
  private static boolean straight(List<Double> mm, String words, BakeProcess.Vessel vessel) {
    double width = Math.min(mm.get(0), mm.get(1));
    return vessel.lid().orElse(false)
        || words.contains("pullman")
        || words.contains("lidded")
        || words.contains("straight")
        || words.contains("square")
        || Math.abs(mm.get(2) - width) < SAME;
  }

  private static Tin tin(List<Double> mm, String words, boolean straight) {
    if (words.contains("oval")) {
      return Tin.oval(mm.get(0), mm.get(1), mm.get(2));
    }
    return straight
        ? Tin.straight(mm.get(0), mm.get(1), mm.get(2))
        : Tin.flared(mm.get(0), mm.get(1), mm.get(2));
  }

  // Two lengths are diameter and height, or the rim of a loaf tin whose depth goes without saying.
  private static Held two(List<Double> mm, String words) {
    double length = Math.max(mm.get(0), mm.get(1));
    double width = Math.min(mm.get(0), mm.get(1));
    boolean round = ROUND.stream().anyMatch(words::contains);
    boolean loaf = length / width >= 1.5 && length / width <= 2.6 && width >= 60;
    if (round || !loaf) {
      return Held.of(Tin.round(mm.get(0), mm.get(1)).volume(), MEASURED);
    }
    return CommonTins.named(length, width)
        .map(Held::of)
        .orElseGet(() -> Held.of(Tin.flared(length, width, DEPTH * width).volume(), 0.15));
  }
}
