package crumbtrail.knowledge;

/**
 * A number that rules can see.
 *
 * @param name the name used in rule sentences
 * @param group heading under which reports list it; empty where the catalogue gives none
 * @param unit the unit that rule sentences and reports state
 * @param decimals digits after the point in reports
 * @param what what it means, one sentence
 */
public record ReadingKind(String name, String group, String unit, int decimals, String what) {
  public ReadingKind {
    group = group == null ? "" : group;
  }
}
