/**
 * Understands what bakers say: phrases of the knowledge files are compiled into a {@link
 * crumbtrail.words.PhraseBook}, which finds them in free sentences, with their negation and degree.
 * Knows nothing of bread; the vocabulary comes from the files under {@code rules/}.
 */
package crumbtrail.words;
