package crumbtrail.quantity;

import java.util.List;
import java.util.Set;

/** A place in a list of tokens that moves forward as tokens are taken. */
final class TokenCursor {

  private static final Token END = new Token(Token.Kind.MARK, "\n", 0, -1, -1);

  private final List<Token> tokens;
  private int at;

  TokenCursor(List<Token> tokens) {
    this.tokens = tokens;
  }

  int at() {
    return at;
  }

  void backTo(int place) {
    at = place;
  }

  boolean atEnd() {
    return at >= tokens.size();
  }

  /** The token that many places ahead; an end mark beyond the last. */
  Token ahead(int places) {
    int i = at + places;
    return i >= 0 && i < tokens.size() ? tokens.get(i) : END;
  }

  Token next() {
    return ahead(0);
  }

  void skip(int count) {
    at += count;
  }

  boolean takeWord(String word) {
    if (next().isWord(word)) {
      at++;
      return true;
    }
    return false;
  }

  boolean takeAnyWord(Set<String> words) {
    if (next().kind() == Token.Kind.WORD
        && words.contains(next().text().toLowerCase(java.util.Locale.ROOT))) {
      at++;
      return true;
    }
    return false;
  }

  /** Takes these words when all of them follow each other here. */
  boolean takeWords(String... words) {
    for (int i = 0; i < words.length; i++) {
      if (!ahead(i).isWord(words[i])) {
        return false;
      }
    }
    at += words.length;
    return true;
  }

  boolean takeMark(char mark) {
    if (next().isMark(mark)) {
      at++;
      return true;
    }
    return false;
  }

  /** Whether nothing stands between the last token taken and the next. */
  boolean touching() {
    return at > 0 && !atEnd() && tokens.get(at - 1).end() == tokens.get(at).start();
  }

  /** Where the last token taken ends in the text; -1 before the first. */
  int end() {
    return at == 0 ? -1 : tokens.get(Math.min(at, tokens.size()) - 1).end();
  }
}
