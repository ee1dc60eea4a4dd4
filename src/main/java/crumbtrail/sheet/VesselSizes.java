package crumbtrail.sheet;

import crumbtrail.quantity.Dimension;
import crumbtrail.quantity.PlainText;
import crumbtrail.quantity.Quantities;
import crumbtrail.quantity.Quantity;
import crumbtrail.quantity.Unit;
import crumbtrail.sheet.BakeProcess.VesselSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Reads the size of a tin or pot: "9 x 5 x 2.75 in", "23 cm round", "2 l", "a 2 lb tin". */
final class VesselSizes {

  private static final Pattern BETWEEN =
      Pattern.compile(" ?(?:\\bx\\b|\\*|\\bby\\b) ?|(?<=\\d)x(?=\\d)");
  private static final Pattern DESCRIPTION =
      Pattern.compile(
          "\\b(?:round|square|rectangular|oval|tin|pan|pot|tray|loaf|cake|bread|casserole|diameter"
              + "|dia|across|wide|deep|tall|high|long|top|bottom|length|width|height|depth|in"
              + " diameter|inside|outside|capacity|and|a|an|the)\\b",
          Pattern.CASE_INSENSITIVE);

  /** Vessels are between a centimetre and three metres, and between a thimble and a trough. */
  private static final double SHORTEST = 10;

  private static final double LONGEST = 3000;
  private static final double SMALLEST = 20;
  private static final double LARGEST = 500_000;

  private VesselSizes() {}

  /**
   * Reads a size. A tin named by a weight of dough ("2 lb tin") has neither lengths nor a volume,
   * only its words.
   */
  static Optional<VesselSize> read(String written) {
    if (written.length() > 120) {
      return Optional.empty();
    }
    String plain = PlainText.of(written);
    String bare =
        DESCRIPTION.matcher(plain.replaceAll("(?i)\\bin diameter\\b", "")).replaceAll(" ");
    bare = bare.replaceAll(" {2,}", " ").replaceAll("^[ ,]+|[ ,.-]+$", "");
    Optional<Quantity> volume = Quantities.read(bare, Dimension.VOLUME);
    if (volume.isPresent()) {
      double ml = volume.get().value();
      return ml >= SMALLEST && ml <= LARGEST
          ? Optional.of(new VesselSize(written, List.of(), Optional.of(ml)))
          : Optional.empty();
    }
    if (Quantities.read(bare, Dimension.MASS).filter(q -> q.value() > 0).isPresent()) {
      return Optional.of(new VesselSize(written, List.of(), Optional.empty()));
    }
    return lengths(plain).map(mm -> new VesselSize(written, mm, Optional.empty()));
  }

  /** Reads one to three lengths; the unit may stand at each or only at the last. */
  private static Optional<List<Double>> lengths(String plain) {
    String[] pieces = BETWEEN.split(plain.replace(",  ", ", ").replace(", ", " x "), -1);
    if (pieces.length > 3) {
      return Optional.empty();
    }
    List<Double> mm = new ArrayList<>();
    Optional<Unit> unit = Optional.empty();
    for (int i = pieces.length - 1; i >= 0; i--) {
      String piece = cleaned(pieces[i]);
      Optional<Quantity> length = Quantities.read(piece, Dimension.LENGTH);
      if (length.isPresent()) {
        unit = Optional.of(length.get().unit());
        mm.add(0, length.get().value());
      } else {
        OptionalDouble number = number(piece);
        if (unit.isEmpty() || number.isEmpty()) {
          return Optional.empty();
        }
        mm.add(0, unit.get().toBase(number.getAsDouble()));
      }
    }
    boolean likely = mm.stream().allMatch(length -> length >= SHORTEST && length <= LONGEST);
    return likely ? Optional.of(mm) : Optional.empty();
  }

  /** A piece without words such as "deep"; "in" stays where it is the unit. */
  private static String cleaned(String piece) {
    String out = DESCRIPTION.matcher(piece).replaceAll(" ").replaceAll(" {2,}", " ");
    return out.replaceAll("^[ ,]+|[ ,.-]+$", "");
  }

  private static OptionalDouble number(String piece) {
    return Quantities.read(piece, Dimension.COUNT)
        .filter(count -> count.unit() == Unit.PIECE)
        .map(count -> OptionalDouble.of(count.value()))
        .orElse(OptionalDouble.empty());
  }
}
