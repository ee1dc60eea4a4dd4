package crumbtrail.words;

import java.util.List;

/** Finds the words of degree that go with a phrase. */
final class Degrees {
  private static final int AFTER = 2;

  private Degrees() {}

  static Degree of(Candidate candidate, List<Token> tokens, Denial denial) {
    boolean slight = candidate.denier() < 0 && denial.softened(candidate);
    boolean marked = candidate.denier() >= 0 && atAll(tokens);
    for (int i = 0; i < tokens.size(); i++) {
      String word = tokens.get(i).word();
      if (candidate.words().get(i) || !goesWith(candidate, tokens, i)) {
        continue;
      }
      slight |= Grammar.SLIGHT.contains(word) || (word.equals("little") && after("a", tokens, i));
      marked |= Grammar.MARKED.contains(word) && candidate.denier() < 0;
    }
    if (slight) {
      return Degree.SLIGHT;
    }
    return marked ? Degree.MARKED : Degree.PLAIN;
  }

  private static boolean after(String word, List<Token> tokens, int i) {
    return i > 0 && tokens.get(i - 1).is(word);
  }

  private static boolean atAll(List<Token> tokens) {
    for (int i = 1; i < tokens.size(); i++) {
      if (tokens.get(i).is("all") && tokens.get(i - 1).is("at")) {
        return true;
      }
    }
    return false;
  }

  /** Straight before one of its words, small words aside, or just after the last. */
  private static boolean goesWith(Candidate candidate, List<Token> tokens, int i) {
    if (i > candidate.last()) {
      return i - candidate.last() <= AFTER && small(tokens, candidate.last() + 1, i);
    }
    int next = i + 1;
    while (next < tokens.size() && !candidate.words().get(next) && small(tokens, next, next + 1)) {
      next++;
    }
    return next < tokens.size() && candidate.words().get(next);
  }

  private static boolean small(List<Token> tokens, int from, int to) {
    for (int i = from; i < to; i++) {
      String word = tokens.get(i).word();
      if (!Grammar.STOP.contains(word)
          && !Grammar.MARKED.contains(word)
          && !Grammar.SLIGHT.contains(word)) {
        return false;
      }
    }
    return true;
  }
}
