package crumbtrail.lessons;

import crumbtrail.findings.Reasoning;
import crumbtrail.lessons.Variation.Point;
import crumbtrail.picture.LoafPictures;
import crumbtrail.picture.Shape;
import crumbtrail.sheet.BakeSheet.Degree;
import crumbtrail.workup.Heard;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Loaves as they would look, and as far as they have been looked at. */
public final class Drawings {
  /**
   * A sign that is predicted with this chance is drawn in full. Chances above it are rare, since no
   * sign stands in every table (our choice).
   */
  private static final double PLAIN = 0.4;

  private static final double SLIGHT = 0.5;

  private final Pipeline pipeline;
  private final LoafPictures pictures;

  Drawings(Pipeline pipeline) {
    this.pipeline = pipeline;
    this.pictures = LoafPictures.of(pipeline.catalogue());
  }

  /** The loaf at both ends of a range, and where the sheet stands. */
  public List<Drawn> of(Variation variation) {
    List<Point> points = variation.points();
    if (!variation.turns() || points.isEmpty()) {
      return List.of();
    }
    Shape shape = Shape.of(variation.shape()).orElse(Shape.HEARTH);
    List<Drawn> drawn = new ArrayList<>();
    for (int place = 0; place < points.size(); place++) {
      Point point = points.get(place);
      if (place == 0 || place == points.size() - 1 || point.own()) {
        Map<String, Double> strengths = new HashMap<>();
        point.signs().forEach((sign, chance) -> strengths.put(sign, Math.min(1, chance / PLAIN)));
        String at = Numbers.plain(point.at()) + " " + unit(variation);
        drawn.add(
            new Drawn(
                point.own() ? "The sheet, " + at : "At " + at, pictures.of(shape, strengths)));
      }
    }
    return drawn;
  }

  private static String unit(Variation variation) {
    return variation.dial().unit().equals("C") ? "°C" : variation.dial().unit();
  }

  /** The loaf of a mystery as far as it is known; empty where nothing that was told can be seen. */
  public Optional<Drawn> of(MysteryRound round) {
    try (Reasoning reasoning = pipeline.open()) {
      Workup workup = reasoning.work(Clues.known(round));
      Map<String, Double> strengths = new HashMap<>();
      for (Heard.Sign sign : workup.heard().signs()) {
        if (sign.seen()) {
          strengths.put(sign.key(), sign.degree() == Degree.SLIGHT ? SLIGHT : 1);
        }
      }
      return strengths.keySet().stream().anyMatch(pictures::draws)
          ? Optional.of(
              new Drawn(
                  "As far as it has been looked at",
                  pictures.of(pipeline.shape(workup, round.loaf().whole()), strengths)))
          : Optional.empty();
    }
  }
}
