package crumbtrail.knowledge;

/**
 * A number that rules can see.
 *
 * @param name the name used in rule sentences
 * @param unit the unit that rule sentences and reports state
 * @param decimals digits after the point in reports
 * @param what what it means, one sentence
 */
public record ReadingKind(String name, String unit, int decimals, String what) {}
