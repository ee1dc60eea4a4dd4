package crumbtrail.knowledge;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A style of bread: what is usual for it.
 *
 * @param key stable name, words joined by hyphens
 * @param name plain words
 * @param tags families that rules speak of: tin, hearth, enriched, sourdough …
 * @param phrases how people name the bread
 * @param ranges usual range by name of the reading
 * @param habits what is assumed where the sheet is silent
 */
public record Style(
    String key,
    String name,
    List<String> tags,
    List<String> phrases,
    Map<String, Range> ranges,
    Habits habits) {

  public Style {
    tags = tags == null ? List.of() : List.copyOf(tags);
    phrases = phrases == null ? List.of() : List.copyOf(phrases);
    ranges = ranges == null ? Map.of() : Map.copyOf(ranges);
    habits = habits == null ? new Habits(null, null, null, Map.of()) : habits;
  }

  /** The usual range of a reading for this bread, if it matters. */
  public Optional<Range> range(String reading) {
    return Optional.ofNullable(ranges.get(reading));
  }

  /**
   * A usual range, in the unit of its reading.
   *
   * @param source ids of the bibliography or "common practice"
   */
  public record Range(double low, double high, String source) {
    /** The middle of the range. */
    public double middle() {
      return (low + high) / 2;
    }
  }

  /** A stretch of time at a temperature: minutes and degrees Celsius. */
  public record Spell(double minutes, double celsius) {}

  /**
   * What is assumed where the sheet is silent.
   *
   * @param bulk usual bulk fermentation, null if the style has none
   * @param proof usual final proof, null if the style has none
   * @param oven usual bake, null if the style has none
   * @param values other assumed numbers, by name of the reading
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Habits(
      Spell bulk,
      Spell proof,
      Spell oven,
      @JsonAnyGetter @JsonAnySetter Map<String, Double> values) {
    public Habits {
      values = values == null ? Map.of() : Map.copyOf(values);
    }

    /** An assumed number by name, if the style states one. */
    public Optional<Double> value(String name) {
      return Optional.ofNullable(values.get(name));
    }
  }
}
