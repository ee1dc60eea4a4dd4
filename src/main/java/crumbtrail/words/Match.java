package crumbtrail.words;

/**
 * One thing that a baker said.
 *
 * @param key the key whose phrase was found
 * @param negated whether the baker said that it was not so: "the crumb is not dense"
 * @param degree how strongly it was said
 * @param terms how many terms the phrase had; more terms mean a more specific phrase
 * @param spoken the part of the sentence that was understood so, as the baker wrote it
 */
public record Match(String key, boolean negated, Degree degree, int terms, String spoken) {}
