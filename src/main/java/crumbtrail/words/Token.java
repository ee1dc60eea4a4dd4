package crumbtrail.words;

import java.util.List;

/**
 * One word of a sentence.
 *
 * @param word lower case, without accents, contractions opened ("didn't" gives "did" and "not")
 * @param start where it begins in the baker's text
 * @param end where it ends
 * @param compound whether a hyphen ties it to the next word, so that "no" in "no-knead" denies
 *     nothing
 * @param stems what phrases may know it as
 */
record Token(String word, int start, int end, boolean compound, List<String> stems) {

  Token withStems(List<String> known) {
    return new Token(word, start, end, compound, known);
  }

  boolean is(String other) {
    return word.equals(other);
  }
}
