package crumbtrail.words;

import java.util.BitSet;

/**
 * A phrase found in a row of words.
 *
 * @param phrase which one
 * @param words the words it uses, those of {@code not} included
 * @param first the first of its own words
 * @param last the last of its own words
 * @param denier the word that satisfies {@code not}, or -1
 * @param gap how many other telling words stand between
 */
record Candidate(Phrase phrase, BitSet words, int first, int last, int denier, int gap) {

  /** How specific it is: how many words it makes sense of. */
  int weight() {
    return words.cardinality();
  }

  boolean covers(Candidate other) {
    BitSet left = (BitSet) other.words.clone();
    left.andNot(words);
    return left.isEmpty();
  }
}
