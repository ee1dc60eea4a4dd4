package crumbtrail.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** A few words on the plate, each with a line to what it names. */
final class Labels {
  private static final int MOST = 2;

  /** A trait this much fainter than the strongest needs no words on the plate. */
  private static final double WORTH = 0.55;

  // Corners: x, y, and which end of the words stands there.
  private static final List<Corner> CORNERS =
      List.of(
          new Corner(new Spot(12, 25), "start"),
          new Corner(new Spot(408, 25), "end"),
          new Corner(new Spot(12, 310), "start"),
          new Corner(new Spot(408, 310), "end"));

  private Labels() {}

  private record Corner(Spot at, String anchor) {
    Spot lead() {
      return at.plus(anchor.equals("start") ? 40 : -40, at.y() < 100 ? 7 : -16);
    }
  }

  /** Labels for the strongest traits that can be pointed at. */
  static String draw(Look look, Map<Trait, Spot> seen) {
    List<Trait> named =
        look.traits().keySet().stream()
            .filter(seen::containsKey)
            .filter(trait -> Math.abs(look.amount(trait)) >= WORTH * strongest(look))
            .sorted(
                Comparator.comparingDouble((Trait trait) -> -Math.abs(look.amount(trait)))
                    .thenComparing(Comparator.naturalOrder()))
            .limit(MOST)
            .toList();
    List<Corner> free = new ArrayList<>(CORNERS);
    StringBuilder text = new StringBuilder();
    for (Trait trait : named) {
      Spot at = seen.get(trait);
      Corner corner =
          free.stream()
              .min(Comparator.comparingDouble(one -> one.lead().distance(at)))
              .orElseThrow();
      // Long words fill their whole row.
      free.removeIf(one -> one.at().y() == corner.at().y());
      text.append(label(corner, at, trait.words(look.amount(trait))));
    }
    return text.toString();
  }

  private static double strongest(Look look) {
    return look.traits().values().stream().mapToDouble(Math::abs).max().orElse(0);
  }

  private static String label(Corner corner, Spot at, String words) {
    String line = new Strokes().stroke(corner.lead(), at).toString();
    String dot = new Strokes().dot(at).toString();
    return "<path d=\""
        + line
        + "\" stroke=\""
        + Palette.PLATE
        + "\" stroke-width=\"3.4\"/>"
        + "<path d=\""
        + line
        + "\"/>"
        + "<path d=\""
        + dot
        + "\" stroke=\""
        + Palette.PLATE
        + "\" stroke-width=\"8\"/>"
        + "<path d=\""
        + dot
        + "\" stroke-width=\"5\"/>"
        + "<text x=\""
        + Strokes.text(corner.at().x())
        + "\" y=\""
        + Strokes.text(corner.at().y())
        + "\" text-anchor=\""
        + corner.anchor()
        + "\">"
        + words
        + "</text>";
  }
}
