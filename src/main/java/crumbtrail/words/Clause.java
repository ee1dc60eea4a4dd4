package crumbtrail.words;

import java.util.List;

/**
 * A stretch of a sentence between full breaks, and the places inside it where it may be parted.
 *
 * @param tokens its words
 * @param parts where each part begins, as indexes into the words, the first being 0; parts are
 *     divided by commas, "and" and the like
 */
record Clause(List<Token> tokens, List<Integer> parts) {

  Clause {
    tokens = List.copyOf(tokens);
    parts = List.copyOf(parts);
  }

  int end(int part) {
    return part + 1 < parts.size() ? parts.get(part + 1) : tokens.size();
  }

  List<Token> part(int part) {
    return tokens.subList(parts.get(part), end(part));
  }
}
