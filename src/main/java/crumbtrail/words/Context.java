package crumbtrail.words;

import java.util.BitSet;
import java.util.List;
import java.util.Set;

/**
 * What the words around a phrase say about it.
 *
 * @param subjects stems of the parts that a sentence can be about: crumb, crust, dough …
 * @param praise words that make a phrase a good report when they stand before it: "a nice dark
 *     crust"
 * @param approval words that end a good report: "the crumb was open and even"
 */
record Context(Set<String> subjects, Set<String> praise, Set<String> approval) {

  Context {
    subjects = Set.copyOf(subjects);
    praise = Set.copyOf(praise);
    approval = Set.copyOf(approval);
  }

  boolean subject(Token token) {
    return subjects.contains(token.stems().get(0));
  }

  boolean anySubject(List<Token> tokens) {
    return tokens.stream().anyMatch(this::subject);
  }

  /**
   * Whether a phrase about one part takes a word that was said of another: "crumb … hard" in "crumb
   * soft and crust hard".
   */
  boolean speaksOfOther(BitSet words, List<Token> tokens) {
    boolean ownSubject = false;
    int last = words.length() - 1;
    for (int i = words.nextSetBit(0); i < last; i++) {
      Token token = tokens.get(i);
      if (words.get(i)) {
        ownSubject |= subject(token);
      } else if (ownSubject && subject(token) && !belongs(i, tokens, words)) {
        return true;
      }
    }
    return false;
  }

  /** "the middle of the crumb", "the bottom crust": two names of one thing. */
  private boolean belongs(int i, List<Token> tokens, BitSet words) {
    int before = i - 1;
    while (before > 0 && (tokens.get(before).is("the") || tokens.get(before).is("my"))) {
      before--;
    }
    Token link = tokens.get(before);
    return link.is("of")
        || link.is("in")
        || link.is("on")
        || link.is("under")
        || (before == i - 1 && words.get(before) && subject(link));
  }

  /** Whether nothing telling is said besides. */
  boolean alone(BitSet words, List<Token> tokens) {
    for (int i = words.nextClearBit(0); i < tokens.size(); i = words.nextClearBit(i + 1)) {
      String word = tokens.get(i).word();
      if (!Grammar.STOP.contains(word)
          && !Grammar.FILLER.contains(word)
          && !Grammar.DENIERS.contains(word)
          && !Grammar.MARKED.contains(word)
          && !Grammar.SLIGHT.contains(word)) {
        return false;
      }
    }
    return true;
  }

  /** Whether a row of words is plain praise. */
  boolean praise(List<Token> tokens) {
    boolean good = false;
    for (int i = 0; i < tokens.size(); i++) {
      Token token = tokens.get(i);
      if (i + 1 < tokens.size()
          && Grammar.DENIERS.contains(token.word())
          && Grammar.BLAME.contains(tokens.get(i + 1).word())) {
        return true;
      }
      if (Grammar.DENIERS.contains(token.word()) || token.is("too")) {
        return false;
      }
      good |= praise.contains(token.word()) || approval.contains(token.word());
    }
    return good;
  }

  /** Whether a phrase was meant as praise: "nice and thin", "open and even". */
  boolean praised(Candidate candidate, List<Token> tokens) {
    if (candidate.denier() >= 0) {
      return false;
    }
    BitSet words = candidate.words();
    for (int i = candidate.first(); i <= candidate.last(); i++) {
      if (words.get(i) && !words.get(Math.max(0, i - 1)) && praisedBefore(i, words, tokens)) {
        return true;
      }
    }
    int after = candidate.last() + 1;
    return after + 1 < tokens.size()
        && tokens.get(after).is("and")
        && (praise.contains(tokens.get(after + 1).word())
            || approval.contains(tokens.get(after + 1).word()))
        && !anySubject(tokens.subList(after + 1, tokens.size()));
  }

  private boolean praisedBefore(int i, BitSet words, List<Token> tokens) {
    int before = i - 1;
    while (before >= 0
        && !words.get(before)
        && (tokens.get(before).is("and") || tokens.get(before).is("very"))) {
      before--;
    }
    return before >= 0
        && !words.get(before)
        && praise.contains(tokens.get(before).word())
        && !(before > 0 && Grammar.DENIERS.contains(tokens.get(before - 1).word()));
  }
}
