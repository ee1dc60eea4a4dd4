package crumbtrail.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A number, a word or a single mark of a plain text, with its place in it.
 *
 * @param value the number; zero for words and marks
 */
record Token(Kind kind, String text, double value, int start, int end) {

  enum Kind {
    NUMBER,
    WORD,
    MARK
  }

  /** More digits than this are no baker's number; they are read as infinite and so refused. */
  private static final int MOST_DIGITS = 15;

  boolean isNumber() {
    return kind == Kind.NUMBER;
  }

  boolean isWord(String lowerCase) {
    return kind == Kind.WORD && text.toLowerCase(Locale.ROOT).equals(lowerCase);
  }

  boolean isMark(char c) {
    return kind == Kind.MARK && text.charAt(0) == c;
  }

  boolean isWhole() {
    return isNumber() && value == Math.rint(value);
  }

  /** Takes a plain text apart from a place on. */
  static List<Token> of(String text, int from) {
    List<Token> tokens = new ArrayList<>();
    int i = from;
    while (i < text.length()) {
      char c = text.charAt(i);
      int end;
      if (isDigit(c) || (c == '.' && isDigit(text, i + 1))) {
        end = numberEnd(text, i);
        tokens.add(new Token(Kind.NUMBER, text.substring(i, end), number(text, i, end), i, end));
      } else if (Character.isLetter(c)) {
        end = i + 1;
        while (end < text.length() && Character.isLetter(text.charAt(end))) {
          end++;
        }
        tokens.add(new Token(Kind.WORD, text.substring(i, end), 0, i, end));
      } else {
        end = i + 1;
        if (c != ' ') {
          tokens.add(new Token(Kind.MARK, text.substring(i, end), 0, i, end));
        }
      }
      i = end;
    }
    return tokens;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isDigit(String text, int i) {
    return i < text.length() && isDigit(text.charAt(i));
  }

  private static int digitsEnd(String text, int from) {
    int i = from;
    while (isDigit(text, i)) {
      i++;
    }
    return i;
  }

  private static int numberEnd(String text, int from) {
    int end = digitsEnd(text, from);
    while (groupsThousands(text, from, end)) {
      end += 4;
    }
    boolean separator = end < text.length() && (text.charAt(end) == '.' || text.charAt(end) == ',');
    return separator && isDigit(text, end + 1) ? digitsEnd(text, end + 1) : end;
  }

  /** "1,600" is sixteen hundred; "0,125" and "1,5" have a decimal comma. */
  private static boolean groupsThousands(String text, int from, int comma) {
    return comma < text.length()
        && text.charAt(comma) == ','
        && comma > from
        && text.charAt(from) != '0'
        && (comma - from <= 3 || text.substring(from, comma).indexOf(',') > 0)
        && digitsEnd(text, comma + 1) == comma + 4;
  }

  private static double number(String text, int from, int end) {
    StringBuilder plain = new StringBuilder();
    int whole = -1;
    for (int i = from; i < end; i++) {
      char c = text.charAt(i);
      if (isDigit(c)) {
        plain.append(c);
      } else if (!groupsThousands(text, from, i)) {
        whole = plain.length();
        plain.append('.');
      }
    }
    if ((whole < 0 ? plain.length() : whole) > MOST_DIGITS) {
      return Double.POSITIVE_INFINITY;
    }
    if (plain.length() > 2 * MOST_DIGITS) {
      plain.setLength(2 * MOST_DIGITS);
    }
    return Double.parseDouble(plain.toString());
  }
}
