package crumbtrail.bakelog;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import org.apache.lucene.analysis.en.EnglishMinimalStemmer;

/**
 * The words by which a bake is found: small letters, without accents, singular and plural alike.
 * Stored beside the bakes, so a change here needs the log to be written anew.
 */
public final class LogWords {
  private static final int LONGEST = 40;

  /** More words than these say nothing new about a bake. */
  private static final int MOST = 500;

  private LogWords() {}

  /** The words of these texts, each once. */
  public static Set<String> of(String... texts) {
    Set<String> words = new LinkedHashSet<>();
    for (String text : texts) {
      String plain =
          Normalizer.normalize(text, Normalizer.Form.NFKD)
              .replaceAll("\\p{M}+", "")
              .replace("ß", "ss")
              .toLowerCase(Locale.ROOT);
      Arrays.stream(plain.split("[^\\p{L}\\p{N}]+"))
          .filter(word -> !word.isEmpty())
          .map(LogWords::stem)
          .takeWhile(word -> words.size() < MOST)
          .forEach(words::add);
    }
    return words;
  }

  private static String stem(String word) {
    char[] letters = word.toCharArray();
    int length = new EnglishMinimalStemmer().stem(letters, letters.length);
    return new String(letters, 0, Math.min(length, LONGEST));
  }
}
