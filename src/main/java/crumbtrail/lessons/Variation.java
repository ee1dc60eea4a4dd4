package crumbtrail.lessons;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What moves as one knob of a bake is turned, the signs of the bake left out. Written to JSON as it
 * stands.
 *
 * @param title the baker's name for the bake
 * @param dial what was turned
 * @param causes those that became likely anywhere along the range, what moved most first
 * @param readings those that moved, the knob's own first
 * @param signs those to be expected anywhere along the range
 * @param points in order of the knob
 * @param tipping where something changes over, in order of the knob
 * @param shape kind of loaf, by which it is drawn
 * @param turns false if turning the knob changes nothing on this sheet
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Variation(
    String title,
    Dial dial,
    List<Named> causes,
    List<Measure> readings,
    List<Named> signs,
    List<Point> points,
    List<Tipping> tipping,
    String shape,
    boolean turns) {

  /** A cause is a risk from here on: our choice. */
  public static final double RISK = 0.3;

  public Variation {
    causes = List.copyOf(causes);
    readings = List.copyOf(readings);
    signs = List.copyOf(signs);
    points = List.copyOf(points);
    tipping = List.copyOf(tipping);
  }

  /**
   * A knob and its range.
   *
   * @param key of the knob
   * @param name plain words
   * @param unit of its values
   * @param own where the sheet stands, null where it leaves it open
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Dial(
      String key, String name, String unit, double low, double high, @Nullable Double own) {}

  /** Something with a name. */
  public record Named(String key, String name) {}

  /** A reading: its name, its unit and how many decimals it is told to. */
  public record Measure(String name, String unit, int decimals) {}

  /**
   * How things stand at one setting of the knob.
   *
   * @param at the setting
   * @param own whether the sheet stands here
   * @param lead key of the leading cause, null if none is likely
   * @param causes probabilities by key, 0 to 1
   * @param readings values by name
   * @param signs probabilities of predicted signs by key, 0 to 1
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Point(
      double at,
      boolean own,
      @Nullable String lead,
      Map<String, Double> causes,
      Map<String, Double> readings,
      Map<String, Double> signs) {}

  /**
   * A setting at which something changes over.
   *
   * @param at the setting, found by bisection
   * @param kind "lead" or "risk"
   * @param from for a lead: key of the cause that leads below, null if none
   * @param to for a lead: key of the cause that leads above, null if none; for a risk: the cause
   * @param words one sentence
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Tipping(
      double at, String kind, @Nullable String from, @Nullable String to, String words) {}
}
