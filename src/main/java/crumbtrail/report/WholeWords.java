package crumbtrail.report;

import java.util.Collection;
import java.util.Locale;

/** Finds words in a text as whole words, so that there is no ham in graham flour. */
final class WholeWords {
  private WholeWords() {}

  /** Whether a word or phrase stands in the text, singular or plural, in large or small letters. */
  static boolean holds(String text, String word) {
    return find(text.toLowerCase(Locale.ROOT), word.toLowerCase(Locale.ROOT)) >= 0;
  }

  /** The text in small letters without some phrases. */
  static String without(String text, Collection<String> phrases) {
    String left = text.toLowerCase(Locale.ROOT);
    for (String phrase : phrases) {
      String small = phrase.toLowerCase(Locale.ROOT);
      for (int at = find(left, small); at >= 0; at = find(left, small)) {
        left = left.substring(0, at) + " " + left.substring(end(left, at + small.length()));
      }
    }
    return left;
  }

  private static int find(String text, String word) {
    for (int at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
      boolean starts = at == 0 || !Character.isLetter(text.charAt(at - 1));
      if (starts && end(text, at + word.length()) >= 0) {
        return at;
      }
    }
    return -1;
  }

  // Where the word ends, its plural with it; -1 if it goes on.
  private static int end(String text, int after) {
    for (String plural : new String[] {"", "s", "es"}) {
      int end = after + plural.length();
      if (text.startsWith(plural, after)
          && (end == text.length() || !Character.isLetter(text.charAt(end)))) {
        return end;
      }
    }
    return -1;
  }
}
