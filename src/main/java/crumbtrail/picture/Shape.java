package crumbtrail.picture;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Kinds of loaf, by the outline of their cut face. Lengths are units of the picture, up to 155 high
 * for a sound loaf; the proportions are our choice, after loaves as they are sold.
 */
public enum Shape {
  TIN("tin", "tin loaf", 3.4),
  LIDDED_TIN("lidded-tin", "lidded tin loaf", 3),
  HEARTH("hearth", "hearth loaf", 4.2),
  BATARD("batard", "long loaf", 4.4),
  ROLL("roll", "roll", 3.2),
  FLAT("flat", "flat bread", 4.6),
  LAMINATED("laminated", "laminated roll", 4),
  SWIRL("swirl", "filled tin loaf", 3.2);

  private final String key;
  private final String words;
  private final double cell;

  Shape(String key, String words, double cell) {
    this.key = key;
    this.words = words;
    this.cell = cell;
  }

  /**
   * A sound outline.
   *
   * @param base half the width at the foot
   * @param side half the greatest width
   * @param shoulder height at which the top begins
   * @param dome height of the top above it
   * @param square how square the top is, 2 an ellipse
   * @param bulge how far the side bows out between foot and shoulder, as part of its width
   */
  record Form(
      double base, double side, double shoulder, double dome, double square, double bulge) {}

  /** The name under which pictures.yaml and callers know it. */
  public String key() {
    return key;
  }

  /** Plain words. */
  public String words() {
    return words;
  }

  Form form() {
    return switch (this) {
      case TIN, SWIRL -> new Form(84, 95, 114, 38, 2.6, 0);
      case LIDDED_TIN -> new Form(88, 90, 128, 5, 14, 0);
      case HEARTH -> new Form(92, 126, 48, 98, 2, 0.16);
      case BATARD -> new Form(72, 102, 44, 90, 2, 0.16);
      case ROLL -> new Form(78, 106, 48, 82, 2, 0.14);
      case FLAT -> new Form(122, 136, 20, 27, 5, 0.1);
      case LAMINATED -> new Form(62, 100, 58, 82, 2, 0.2);
    };
  }

  /** How long the loaf goes on behind the cut, to the right and, as it is seen, up. */
  Spot depth() {
    return switch (this) {
      case TIN, LIDDED_TIN, SWIRL -> new Spot(126, 58);
      case HEARTH -> new Spot(112, 86);
      case BATARD -> new Spot(146, 100);
      case ROLL -> new Spot(96, 70);
      case FLAT -> new Spot(92, 80);
      case LAMINATED -> new Spot(150, 36);
    };
  }

  /** Radius of a usual cell of the crumb. */
  double cell() {
    return cell;
  }

  boolean inTin() {
    return this == TIN || this == LIDDED_TIN || this == SWIRL;
  }

  /** The shape of this name. */
  public static Optional<Shape> of(String key) {
    return Arrays.stream(values()).filter(shape -> shape.key.equals(key)).findFirst();
  }

  /**
   * The shape that goes with a bread.
   *
   * @param tags families of its style: tin, hearth, small …
   * @param words what else is known of it, such as the name of the style and of the vessel; looked
   *     through for words like "baguette" or "lid"
   * @return a hearth loaf where nothing tells
   */
  public static Shape fitting(Collection<String> tags, String words) {
    String said = words == null ? "" : words.toLowerCase(Locale.ROOT);
    if (tags.contains("laminated")) {
      return LAMINATED;
    }
    if (says(said, "baguette", "batard", "ciabatta", "braid", "plait")) {
      return BATARD;
    }
    if (says(said, "cinnamon", "swirl", "filled")) {
      return SWIRL;
    }
    if (tags.contains("flat")) {
      return FLAT;
    }
    if (tags.contains("small") || tags.contains("boiled") || tags.contains("fried")) {
      return ROLL;
    }
    boolean tin = tags.contains("tin") || tags.contains("machine");
    if (tin || says(said, " tin", "loaf pan", "pullman")) {
      return says(said, "lid", "pullman") ? LIDDED_TIN : TIN;
    }
    return HEARTH;
  }

  private static boolean says(String said, String... words) {
    return List.of(words).stream().anyMatch((" " + said)::contains);
  }
}
