package crumbtrail.knowledge;

import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * A number that rules can see.
 *
 * @param name the name used in rule sentences
 * @param group heading under which reports list it; empty where the catalogue gives none
 * @param unit the unit that rule sentences and reports state
 * @param decimals digits after the point in reports
 * @param usual what is usual for every bread whose style says nothing else, null where only styles
 *     can say
 * @param say how a sentence tells it to the baker, {value} standing for number and unit: "your salt
 *     is {value} of the flour"; null where its name must do
 * @param what what it means, one sentence
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ReadingKind(
    String name,
    String group,
    String unit,
    int decimals,
    Style.Range usual,
    String say,
    String what) {
  public ReadingKind {
    group = group == null ? "" : group;
  }
}
