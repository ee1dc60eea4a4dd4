package crumbtrail.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.text.similarity.DamerauLevenshteinDistance;

/**
 * The words that a book of phrases knows, and the mending of misspellings: one slip in words of
 * five letters or more, two in words of nine or more. Filled first, then only read.
 */
final class Vocabulary {
  private static final int ONE_SLIP = 5;
  private static final int TWO_SLIPS = 9;
  private static final int LONGEST = 18;
  private static final DamerauLevenshteinDistance ONE = new DamerauLevenshteinDistance(1);
  private static final DamerauLevenshteinDistance TWO = new DamerauLevenshteinDistance(2);

  private final Set<String> stems = new HashSet<>();

  /** Spelling with some letters left out to the words so mangled, each with its stem. */
  private final Map<String, List<Word>> mangled = new HashMap<>();

  private final Set<String> spellings = new HashSet<>();

  private record Word(String spelling, String stem) {}

  /** Takes in a word of a phrase. */
  void learn(String word, String stem) {
    stems.add(stem);
    learnSpelling(word, stem);
    learnSpelling(stem, stem);
  }

  boolean knows(String stem) {
    return stems.contains(stem);
  }

  private void learnSpelling(String spelling, String stem) {
    if (spelling.length() >= ONE_SLIP - 1 && spellings.add(spelling)) {
      Word word = new Word(spelling, stem);
      for (String variant : mangle(spelling, slips(spelling))) {
        mangled.computeIfAbsent(variant, v -> new ArrayList<>(1)).add(word);
      }
    }
  }

  /**
   * The stems under which phrases may know a word: its own, for "flatter" that of "flat", and if
   * nobody knows the word, that of the word it was probably meant to be.
   */
  List<String> stems(String word, Stems stemmer) {
    String stem = stemmer.of(word);
    String base = stemmer.ofBase(word);
    if (base != null) {
      return List.of(stem, base);
    }
    if (knows(stem)
        || word.length() < ONE_SLIP
        || word.length() > LONGEST
        || CommonWords.known(stem)) {
      return List.of(stem);
    }
    String meant = nearest(word, stem);
    return meant == null ? List.of(stem) : List.of(stem, meant);
  }

  private String nearest(String word, String stem) {
    String best = null;
    int least = slips(word) + 1;
    for (String spelling : word.equals(stem) ? List.of(word) : List.of(word, stem)) {
      for (String variant : mangle(spelling, slips(word))) {
        for (Word candidate : mangled.getOrDefault(variant, List.of())) {
          int away = distance(spelling, candidate.spelling, least - 1);
          if (away >= 0 && away < least) {
            least = away;
            best = candidate.stem;
          }
        }
      }
    }
    return best;
  }

  private static int distance(String one, String other, int allowed) {
    if (allowed < 1) {
      return one.equals(other) ? 0 : -1;
    }
    return (allowed == 1 ? ONE : TWO).apply(one, other);
  }

  private static int slips(String word) {
    return word.length() >= TWO_SLIPS ? 2 : 1;
  }

  /** The word, and the word with up to so many letters left out. */
  private static Set<String> mangle(String word, int slips) {
    Set<String> variants = new HashSet<>();
    variants.add(word);
    Set<String> last = variants;
    for (int slip = 0; slip < slips; slip++) {
      Set<String> next = new HashSet<>();
      for (String variant : last) {
        for (int i = 0; i < variant.length(); i++) {
          next.add(variant.substring(0, i) + variant.substring(i + 1));
        }
      }
      variants = union(variants, next);
      last = next;
    }
    return variants;
  }

  private static Set<String> union(Set<String> one, Set<String> other) {
    Set<String> both = new HashSet<>(one);
    both.addAll(other);
    return both;
  }
}
