package crumbtrail.picture;

import crumbtrail.memory.Recent;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A picture of bread or dough.
 *
 * @param svg a whole SVG element with title and description, scalable, without script or style
 *     sheet; may stand in a page or in a file of its own
 * @param title what it is: "Cut tin loaf"
 * @param description what it shows, in words
 * @param undrawn keys of signs that were asked for and cannot be seen in it
 */
public record LoafPicture(String svg, String title, String description, List<String> undrawn) {
  /** More than all signs on all loaves; some ten kilobytes each. */
  private static final int KEPT = 256;

  // To draw those of a page of findings took a third as long as the diagnosis, and more by the
  // clock.
  private static final Recent<Asked, LoafPicture> LATELY = new Recent<>(KEPT);

  /** All that a picture hangs on. */
  private record Asked(Look look, List<String> undrawn) {}

  public LoafPicture {
    undrawn = List.copyOf(undrawn);
  }

  /** The picture of a look. */
  public static LoafPicture of(Look look) {
    return of(look, List.of());
  }

  static LoafPicture of(Look look, List<String> undrawn) {
    return LATELY.of(
        new Asked(look, List.copyOf(undrawn)), asked -> draw(asked.look(), asked.undrawn()));
  }

  private static LoafPicture draw(Look look, List<String> undrawn) {
    Ink ink = new Ink();
    if (look.scene() == Scene.LOAF) {
      LoafScene.draw(ink, look);
    } else {
      DoughScenes.draw(ink, look);
    }
    String title = title(look);
    String description = description(look);
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 "
            + Ink.WIDTH
            + " "
            + Ink.HEIGHT
            + "\" role=\"img\" aria-label=\""
            + title
            + ". "
            + description
            + "\">"
            + "<title>"
            + title
            + "</title><desc>"
            + description
            + "</desc>"
            + "<rect x=\"1\" y=\"1\" width=\"418\" height=\"318\" rx=\"10\" fill=\""
            + Palette.PLATE
            + "\" stroke=\""
            + Palette.EDGE
            + "\" stroke-width=\"2\"/>"
            + "<g fill=\"none\" stroke=\""
            + Palette.INK
            + "\" stroke-linecap=\"round\" stroke-linejoin=\"round\">"
            + ink.body()
            + "</g>"
            + "<g fill=\"none\" stroke=\""
            + Palette.INK
            + "\" stroke-linecap=\"round\""
            + " font-family=\"sans-serif\" font-size=\"17\">"
            + Labels.draw(look, ink.seen())
                .replace("<text ", "<text fill=\"" + Palette.INK + "\" stroke=\"none\" ")
            + "</g></svg>";
    return new LoafPicture(svg, title, description, undrawn);
  }

  private static String title(Look look) {
    return look.scene() == Scene.LOAF
        ? look.scene().words() + " " + look.shape().words()
        : look.scene().words();
  }

  private static String description(Look look) {
    String words =
        look.traits().entrySet().stream()
            .map(trait -> degree(trait.getKey(), trait.getValue()))
            .collect(Collectors.joining("; "));
    return words.isEmpty() ? "As it should be." : upper(words) + ".";
  }

  private static String degree(Trait trait, double amount) {
    String words = trait.words(amount);
    return Math.abs(amount) < 0.4 ? words + " (slightly)" : words;
  }

  private static String upper(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
