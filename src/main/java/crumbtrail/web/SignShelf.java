package crumbtrail.web;

import crumbtrail.knowledge.SignKind;
import crumbtrail.picture.LoafPictures;
import crumbtrail.picture.Scene;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The signs that can be picked from pictures, by the stage of the day at which they show.
 *
 * @param stages those that have any sign, in the order of the day
 */
record SignShelf(List<Shelf> stages) {

  SignShelf {
    stages = List.copyOf(stages);
  }

  /** When a sign shows. */
  enum Moment {
    AHEAD,
    DOUGH,
    FIRST_RISE,
    LAST_RISE,
    SHAPE,
    CRUST,
    CUT,
    KEPT;

    /** Its id on the page, also the key of its text. */
    String id() {
      return "pick-" + name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
  }

  /** Signs of one moment. */
  record Shelf(Moment moment, List<SignKind> signs) {
    Shelf {
      signs = List.copyOf(signs);
    }
  }

  /** All signs of which there is a picture. */
  static SignShelf of(LoafPictures pictures) {
    Map<Moment, List<SignKind>> byMoment = new EnumMap<>(Moment.class);
    for (SignKind sign : pictures.drawn()) {
      Scene scene = pictures.scene(sign.key()).orElse(Scene.LOAF);
      byMoment.computeIfAbsent(moment(sign, scene), m -> new ArrayList<>()).add(sign);
    }
    return new SignShelf(
        byMoment.entrySet().stream().map(all -> new Shelf(all.getKey(), all.getValue())).toList());
  }

  /**
   * Which picture belongs to which sign. A style sheet says it and not the page, since browsers
   * fetch every picture of a page at once where no script runs, those folded away too.
   */
  String styleSheet() {
    return stages.stream()
        .flatMap(shelf -> shelf.signs().stream())
        .map(SignKind::key)
        .filter(key -> key.matches("[a-z0-9-]+"))
        .map(key -> ".look-" + key + "{background-image:url(/pictures/" + key + ".svg)}\n")
        .collect(Collectors.joining());
  }

  private static Moment moment(SignKind sign, Scene scene) {
    if (scene == Scene.JAR || scene == Scene.CUP) {
      return Moment.AHEAD;
    }
    return switch (sign.place()) {
      case "dough" -> Moment.DOUGH;
      // A second rise and a piece in its basket are the last; a bowl stands for the first.
      case "proof" ->
          scene == Scene.BASKET || sign.key().contains("second")
              ? Moment.LAST_RISE
              : Moment.FIRST_RISE;
      case "crust" -> Moment.CRUST;
      case "crumb" -> Moment.CUT;
      case "keeping" -> Moment.KEPT;
      case "starter" -> Moment.AHEAD;
      default -> Moment.SHAPE;
    };
  }
}
