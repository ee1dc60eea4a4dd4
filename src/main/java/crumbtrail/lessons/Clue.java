package crumbtrail.lessons;

/**
 * Something that a learner can ask about a mystery loaf.
 *
 * @param key short name: "recipe", "proof", "crumb"
 * @param stage the stage of the bake that it belongs to, a heading
 * @param ask what the learner does, an imperative: "Look at the crumb"
 */
public record Clue(String key, String stage, String ask) {}
