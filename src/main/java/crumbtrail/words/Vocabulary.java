package crumbtrail.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
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

  private final Map<String, String> stemOfSpelling = new LinkedHashMap<>();

  /**
   * Spellings with some letters left out, to the words so mangled. Made at the first unknown word,
   * since most bakers spell well and a program should start quickly.
   */
  private volatile Map<String, List<Word>> mangled;

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
    if (spelling.length() >= ONE_SLIP - 1) {
      stemOfSpelling.putIfAbsent(spelling, stem);
    }
  }

  private Map<String, List<Word>> mangled() {
    Map<String, List<Word>> ready = mangled;
    if (ready == null) {
      Map<String, List<Word>> made = new HashMap<>();
      stemOfSpelling.forEach(
          (spelling, stem) -> {
            Word word = new Word(spelling, stem);
            for (String variant : mangle(spelling, slips(spelling))) {
              made.computeIfAbsent(variant, v -> new ArrayList<>(1)).add(word);
            }
          });
      // Two threads may both make it; either is right, so neither has to wait.
      mangled = made;
      ready = made;
    }
    return ready;
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
    Map<String, List<Word>> near = mangled();
    for (String spelling : word.equals(stem) ? List.of(word) : List.of(word, stem)) {
      for (String variant : mangle(spelling, slips(word))) {
        for (Word candidate : near.getOrDefault(variant, List.of())) {
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
    Set<String> variants = new LinkedHashSet<>();
    variants.add(word);
    List<String> last = List.of(word);
    for (int slip = 0; slip < slips; slip++) {
      List<String> next = new ArrayList<>();
      for (String variant : last) {
        for (int i = 0; i < variant.length(); i++) {
          String shorter = variant.substring(0, i) + variant.substring(i + 1);
          if (variants.add(shorter)) {
            next.add(shorter);
          }
        }
      }
      last = next;
    }
    return variants;
  }
}
