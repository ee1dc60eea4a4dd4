package crumbtrail.knowledge;

import com.fasterxml.jackson.annotation.JsonFormat;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a baker can do about a cause.
 *
 * @param cause key of the cause
 * @param does the change in words, as an imperative; of a knob it may be left out, for the knob has
 *     words of its own
 * @param turn key of the knob to turn
 * @param until name of the reading that is to reach its aim; the knob's own where it is left out
 * @param to the aim: "usual" (well within what is usual for the bread, and no further), "middle",
 *     "low" or "high" of what is usual, or a number
 * @param step how far to turn where the reading has no aim to reach or is there already: "-20 %",
 *     "+3"
 * @param set fields below "process" and the text to write there
 * @param hold circumstances that are true once the baker has done so
 * @param drop circumstances that are no longer true
 * @param swap an ingredient for another
 * @param breads families of bread that it fits; empty for all
 * @param not families of bread that it does not fit
 * @param why cause and effect, one sentence
 * @param source ids of the bibliography, or "common practice"
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Remedy(
    String cause,
    String does,
    String turn,
    String until,
    String to,
    String step,
    Map<String, String> set,
    @JsonFormat(with = JsonFormat.Feature.ACCEPT_SINGLE_VALUE_AS_ARRAY) List<String> hold,
    @JsonFormat(with = JsonFormat.Feature.ACCEPT_SINGLE_VALUE_AS_ARRAY) List<String> drop,
    Swap swap,
    @JsonFormat(with = JsonFormat.Feature.ACCEPT_SINGLE_VALUE_AS_ARRAY) List<String> breads,
    @JsonFormat(with = JsonFormat.Feature.ACCEPT_SINGLE_VALUE_AS_ARRAY) List<String> not,
    String why,
    String source) {

  public Remedy {
    set = set == null ? Map.of() : Map.copyOf(set);
    hold = hold == null ? List.of() : List.copyOf(hold);
    drop = drop == null ? List.of() : List.copyOf(drop);
    breads = breads == null ? List.of() : List.copyOf(breads);
    not = not == null ? List.of() : List.copyOf(not);
  }

  /** Whether it makes sense for a bread of these families. */
  public boolean fits(List<String> tags) {
    return (breads.isEmpty() || breads.stream().anyMatch(tags::contains))
        && not.stream().noneMatch(tags::contains);
  }

  /** How far its knob is to be turned. */
  public Aim aim() {
    return new Aim(until, to, step == null ? null : Step.of(step));
  }

  /**
   * How far a knob is to be turned.
   *
   * @param until name of the reading that is to reach the aim; null for the knob's own
   * @param to the aim as a remedy writes it, null where there is none
   * @param step which way, and how far where the aim is no help; null where it does not say
   */
  public record Aim(String until, String to, Step step) {}

  /**
   * A step as a remedy writes it: "+3" in the unit of the knob, "-20 %" of where it stands.
   *
   * @param amount below nought to turn down
   * @param share whether the amount is a percentage of where the knob stands
   */
  public record Step(double amount, boolean share) {
    private static final Pattern FORM = Pattern.compile("([+-]\\d+(?:\\.\\d+)?)( %)?");

    /** Whether a text is a step. */
    static boolean isStep(String text) {
      return FORM.matcher(text.strip()).matches();
    }

    /**
     * @throws IllegalArgumentException if it is none
     */
    static Step of(String text) {
      Matcher form = FORM.matcher(text.strip());
      if (!form.matches()) {
        throw new IllegalArgumentException("no step: " + text);
      }
      return new Step(Double.parseDouble(form.group(1)), form.group(2) != null);
    }

    /** Whether it turns the knob down. */
    public boolean down() {
      return amount < 0;
    }

    /** Where a knob comes to stand. */
    public double from(double value) {
      return share ? value * (1 + amount / 100) : value + amount;
    }
  }

  /**
   * One ingredient in place of another, as much of it as does the same work.
   *
   * @param pick which lines, as a knob picks them
   * @param with name of the other ingredient
   * @param share how much of it goes, above 0; all of it where nothing is written
   */
  public record Swap(String pick, @JsonProperty("for") String with, Double share) {
    public Swap {
      share = share == null ? 1 : share;
    }
  }
}
