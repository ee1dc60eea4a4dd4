package crumbtrail.rules;

/**
 * A fact about the bake that is no number.
 *
 * @param name the catalogue key as rule sentences write it, with spaces
 * @param words what the baker said, or the field of the sheet that says so
 */
public record CircumstanceFact(String name, String words) {}
