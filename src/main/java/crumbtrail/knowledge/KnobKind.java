package crumbtrail.knowledge;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * A quantity of a bake that a baker can turn up or down.
 *
 * @param key short name, words joined by hyphens; the name of its option on the command line
 * @param name plain words, as the subject of a sentence: "salt", "time of the final proof"
 * @param turns what is turned
 * @param pick of an ingredient: which lines it stands for, in order of preference; the first that
 *     finds a line in the formula counts. Each is words joined by "+": a kind of the pantry
 *     ("salt") or a flag of it ("liquid")
 * @param adds of an ingredient: what is put in where the formula has none
 * @param at of a stage: "bulk" or "proof"; of a field: its path below "process"
 * @param reading the reading in which it is told; null where the sheet itself tells it
 * @param unit of its values
 * @param low least value that makes sense
 * @param high greatest value that makes sense
 * @param step what a baker can set it to: 1 for whole degrees
 * @param more what a baker does to turn it up, as an imperative: "Take more salt"
 * @param less what a baker does to turn it down
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record KnobKind(
    String key,
    String name,
    Turns turns,
    List<String> pick,
    String adds,
    String at,
    String reading,
    String unit,
    double low,
    double high,
    double step,
    String more,
    String less) {

  public KnobKind {
    pick = pick == null ? List.of() : List.copyOf(pick);
  }

  /** A value as a baker can set it, within the ends of the knob. */
  public double settable(double value) {
    double stepped = Math.round(value / step) * step;
    double within = Math.max(low, Math.min(high, stepped));
    return BigDecimal.valueOf(within).setScale(4, RoundingMode.HALF_UP).doubleValue();
  }

  /** What a knob turns. */
  public enum Turns {
    /** Grams of some lines of the formula, told as percent of the flour. */
    @JsonProperty("ingredient")
    INGREDIENT,
    /** Percent of protein that the flour has. */
    @JsonProperty("protein")
    PROTEIN,
    /** All weights of the formula. */
    @JsonProperty("dough weight")
    DOUGH_WEIGHT,
    /** Minutes of a rise in the warm. */
    @JsonProperty("warm time")
    WARM_TIME,
    /** Temperature of a rise in the warm. */
    @JsonProperty("warm temperature")
    WARM_TEMPERATURE,
    /** Hours in the refrigerator, in first rise or proof. */
    @JsonProperty("cold time")
    COLD_TIME,
    /** Temperature of the refrigerator. */
    @JsonProperty("cold temperature")
    COLD_TEMPERATURE,
    /** Minutes that the preferments stand. */
    @JsonProperty("preferment time")
    PREFERMENT_TIME,
    /** Temperature at which the preferments stand. */
    @JsonProperty("preferment temperature")
    PREFERMENT_TEMPERATURE,
    /** Temperature of the liquid, and of the dough with it. */
    @JsonProperty("liquid temperature")
    LIQUID_TEMPERATURE,
    /** Heat of the oven, all stages alike. */
    @JsonProperty("oven")
    OVEN,
    /** Minutes of the bake, all stages alike. */
    @JsonProperty("bake time")
    BAKE_TIME,
    /** Volume of the tin. */
    @JsonProperty("tin")
    TIN,
    /** A field of the sheet. */
    @JsonProperty("field")
    FIELD
  }
}
