package crumbtrail.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds where the terms of all phrases stand in a row of words. Filled first, then only read. */
final class TermIndex {
  private final Map<String, Integer> numbers = new HashMap<>();
  private final Map<String, List<Entry>> byFirstStem = new HashMap<>();
  private final Vocabulary vocabulary;
  private final Stems stemmer;

  private record Entry(int term, List<String> rest) {}

  /** A place where a term stands: {@code width} words from {@code start}. */
  record Place(int start, int width) {
    int end() {
      return start + width;
    }
  }

  TermIndex(Vocabulary vocabulary, Stems stemmer) {
    this.vocabulary = vocabulary;
    this.stemmer = stemmer;
  }

  /**
   * The number of a term, which is given a new one if it has none yet.
   *
   * @param written how the phrases write it
   * @param alternatives what it stands for
   */
  int number(String written, List<List<String>> alternatives) {
    Integer known = numbers.get(written);
    if (known != null) {
      return known;
    }
    int number = numbers.size();
    numbers.put(written, number);
    Set<List<String>> seen = new HashSet<>();
    for (List<String> words : alternatives) {
      List<String> stems = words.stream().map(stemmer::of).toList();
      for (int i = 0; i < words.size(); i++) {
        vocabulary.learn(words.get(i), stems.get(i));
      }
      if (seen.add(stems)) {
        byFirstStem
            .computeIfAbsent(stems.get(0), s -> new ArrayList<>())
            .add(new Entry(number, stems.subList(1, stems.size())));
      }
    }
    return number;
  }

  /** All places of all terms, each list in the order of the words. */
  Map<Integer, List<Place>> find(List<Token> tokens) {
    Map<Integer, List<Place>> found = new HashMap<>();
    for (int i = 0; i < tokens.size(); i++) {
      for (String stem : tokens.get(i).stems()) {
        for (Entry entry : byFirstStem.getOrDefault(stem, List.of())) {
          if (follows(tokens, i + 1, entry.rest)) {
            found
                .computeIfAbsent(entry.term, t -> new ArrayList<>(2))
                .add(new Place(i, 1 + entry.rest.size()));
          }
        }
      }
    }
    return found;
  }

  private static boolean follows(List<Token> tokens, int from, List<String> stems) {
    if (from + stems.size() > tokens.size()) {
      return false;
    }
    for (int i = 0; i < stems.size(); i++) {
      if (!tokens.get(from + i).stems().contains(stems.get(i))) {
        return false;
      }
    }
    return true;
  }
}
