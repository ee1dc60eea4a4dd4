package crumbtrail.knowledge;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * A loaf that failed for a reason which a learner is to find: a bake as it was, or a sound bake
 * with one thing done wrong.
 *
 * @param cause key of the cause that is to be found
 * @param level how hard it is
 * @param sheet name of the bake in {@code cases}
 * @param turn key of the knob that is turned, null where none is
 * @param to where it is turned to, in its unit
 * @param remark what the baker says that they did, null if nothing
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record MysteryKind(
    String cause, Level level, String sheet, String turn, Double to, String remark) {

  /** How hard a loaf is. */
  public enum Level {
    @JsonProperty("easy")
    EASY,
    @JsonProperty("middling")
    MIDDLING,
    @JsonProperty("hard")
    HARD;

    /** In small letters. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /** Whether the bake is taken as it was, with the signs that its baker saw. */
  public boolean asItWas() {
    return turn == null && remark == null;
  }
}
