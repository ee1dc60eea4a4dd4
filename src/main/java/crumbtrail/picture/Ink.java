package crumbtrail.picture;

import java.util.EnumMap;
import java.util.Map;

/**
 * The drawing in the making: paths one over the other, and where each trait can be seen. Ink lines
 * unless told otherwise.
 */
final class Ink {
  static final int WIDTH = 420;
  static final int HEIGHT = 320;

  private final StringBuilder body = new StringBuilder();
  private final Map<Trait, Spot> seen = new EnumMap<>(Trait.class);

  /** A filled shape with an ink outline. */
  Ink shape(Strokes path, String fill, double line) {
    return element(path, " fill=\"" + fill + "\"" + (line == 0 ? " stroke=\"none\"" : width(line)));
  }

  /** A filled shape without outline. */
  Ink fill(Strokes path, String fill) {
    return shape(path, fill, 0);
  }

  /** Ink lines. */
  Ink line(Strokes path, double width) {
    return element(path, width(width));
  }

  /** Lines of a colour. */
  Ink line(Strokes path, double width, String colour) {
    return element(path, " stroke=\"" + colour + "\"" + width(width));
  }

  /** A dashed outline of what should be there. */
  Ink ghost(Strokes path) {
    return element(path, width(1.4) + " stroke-dasharray=\"1 5\"");
  }

  /** Remembers where a trait can be seen; the first place counts. */
  Ink seen(Trait trait, Spot at) {
    seen.putIfAbsent(trait, at);
    return this;
  }

  Map<Trait, Spot> seen() {
    return seen;
  }

  String body() {
    return body.toString();
  }

  private static String width(double width) {
    return width == 1 ? "" : " stroke-width=\"" + Strokes.text(width) + "\"";
  }

  private Ink element(Strokes path, String how) {
    if (!path.isEmpty()) {
      body.append("<path d=\"").append(path).append('"').append(how).append("/>");
    }
    return this;
  }
}
