package crumbtrail.words;

import java.util.List;

/**
 * A compiled phrase.
 *
 * @param key what it stands for
 * @param terms numbers of its terms in the book, as written
 * @param ordered whether the terms must come in this order
 * @param denied whether it holds {@code not}
 * @param alone whether nothing else may be said in the sentence
 */
record Phrase(String key, List<Integer> terms, boolean ordered, boolean denied, boolean alone) {

  Phrase {
    terms = List.copyOf(terms);
  }

  /** How many terms it has, {@code not} included. */
  int size() {
    return terms.size() + (denied ? 1 : 0);
  }
}
