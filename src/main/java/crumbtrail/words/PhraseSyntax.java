package crumbtrail.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Reads the notation of phrases: {@code <class>}, {@code one|other}, {@code "side by side"}, {@code
 * not}, {@code first > second} and {@code alone}.
 */
final class PhraseSyntax {
  private static final int MOST_SEQUENCES = 400;

  private final Map<String, List<String>> classes;
  private final Map<String, List<List<String>>> terms = new HashMap<>();
  private final Map<String, List<List<String>>> expanded = new HashMap<>();

  /** What is being read, for messages. */
  private String key = "";

  private String phrase = "";

  /**
   * A phrase taken apart.
   *
   * @param terms by how they are written, each a set of alternatives, each of these one or more
   *     words side by side
   */
  record Parsed(
      Map<String, List<List<String>>> terms, boolean ordered, boolean denied, boolean alone) {}

  PhraseSyntax(Map<String, List<String>> classes) {
    this.classes = classes;
  }

  /**
   * @throws IllegalArgumentException naming key and phrase if the phrase cannot be read
   */
  Parsed parse(String ofKey, String written) {
    key = ofKey;
    phrase = written;
    Map<String, List<List<String>>> own = new LinkedHashMap<>();
    boolean ordered = false;
    boolean denied = false;
    boolean alone = false;
    for (String term : split(phrase, ' ')) {
      switch (term) {
        case "not" -> denied = true;
        case "alone" -> alone = true;
        case ">" -> ordered = true;
        case "no", "never", "without" -> throw bad("write 'not' instead of '" + term + "'");
        default -> own.put(term, cached(term));
      }
    }
    if (own.isEmpty()) {
      throw bad("it has no words to look for");
    }
    return new Parsed(own, ordered, denied, alone);
  }

  private List<List<String>> cached(String term) {
    List<List<String>> known = terms.get(term);
    if (known == null) {
      known = term(term);
      terms.put(term, known);
    }
    return known;
  }

  private List<List<String>> term(String term) {
    Set<List<String>> alternatives = new LinkedHashSet<>();
    for (String alternative : split(term, '|')) {
      if (alternative.startsWith("\"")) {
        if (alternative.length() < 3 || !alternative.endsWith("\"")) {
          throw bad("a quotation mark is not closed in '" + alternative + "'");
        }
        alternatives.addAll(sequences(alternative.substring(1, alternative.length() - 1)));
      } else {
        alternatives.addAll(words(alternative));
      }
    }
    return List.copyOf(alternatives);
  }

  /** All sequences that a quotation with alternatives inside allows. */
  private List<List<String>> sequences(String quoted) {
    List<List<String>> sequences = List.of(List.of());
    for (String place : split(quoted.trim(), ' ')) {
      List<List<String>> longer = new ArrayList<>();
      for (List<String> sequence : sequences) {
        for (String alternative : split(place, '|')) {
          for (List<String> words : words(alternative)) {
            List<String> joined = new ArrayList<>(sequence);
            joined.addAll(words);
            longer.add(joined);
          }
        }
      }
      if (longer.size() > MOST_SEQUENCES) {
        throw bad("the quotation has more than " + MOST_SEQUENCES + " readings");
      }
      sequences = longer;
    }
    return sequences;
  }

  /** The words of a class, or of one plain word, which may fall into several. */
  private List<List<String>> words(String written) {
    if (!written.startsWith("<")) {
      return List.of(plain(written));
    }
    if (!written.endsWith(">")) {
      throw bad("a class is not closed in '" + written + "'");
    }
    String name = written.substring(1, written.length() - 1);
    List<List<String>> known = expanded.get(name);
    if (known == null) {
      if (!classes.containsKey(name)) {
        throw bad("there is no word class '" + name + "'");
      }
      known = classes.get(name).stream().map(this::plain).toList();
      expanded.put(name, known);
    }
    return known;
  }

  private List<String> plain(String written) {
    if (written.isBlank()) {
      throw bad("an alternative is empty");
    }
    if (!written.equals(written.toLowerCase(Locale.ROOT))) {
      throw bad("'" + written + "' is not in lower case");
    }
    for (int i = 0; i < written.length(); i++) {
      char c = written.charAt(i);
      if (!Character.isLetterOrDigit(c) && " -'".indexOf(c) < 0) {
        throw bad("'" + c + "' has no meaning in '" + written + "'");
      }
    }
    List<String> words = new ArrayList<>();
    for (Clause clause : Tokens.clauses(written)) {
      clause.tokens().forEach(token -> words.add(token.word()));
    }
    if (words.isEmpty()) {
      throw bad("'" + written + "' has no word");
    }
    return List.copyOf(words);
  }

  /** Parts at a separator outside quotation marks. */
  private static List<String> split(String text, char separator) {
    List<String> pieces = new ArrayList<>();
    StringBuilder piece = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      }
      if (c == separator && !quoted) {
        pieces.add(piece.toString());
        piece.setLength(0);
      } else {
        piece.append(c);
      }
    }
    pieces.add(piece.toString());
    if (separator == ' ') {
      pieces.removeIf(String::isBlank);
    }
    return pieces;
  }

  private IllegalArgumentException bad(String why) {
    return new IllegalArgumentException("phrase \"" + phrase + "\" of " + key + ": " + why);
  }
}
