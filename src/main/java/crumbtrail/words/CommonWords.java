package crumbtrail.words;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;

/**
 * Stems of common English words, which are never taken for a misspelling of a bread word: "tough"
 * is not a slip for "dough", nor "least" for "yeast".
 */
final class CommonWords {
  private static final String FILE = "common-stems.txt";

  private CommonWords() {}

  static boolean known(String stem) {
    return Holder.STEMS.contains(stem);
  }

  /** Read at the first unknown word only. */
  private static final class Holder {
    static final Set<String> STEMS = read();

    private static Set<String> read() {
      Set<String> stems = new HashSet<>();
      try (InputStream in = CommonWords.class.getResourceAsStream(FILE);
          BufferedReader lines =
              new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
        String line;
        while ((line = lines.readLine()) != null) {
          if (!line.startsWith("#")) {
            stems.add(line);
          }
        }
      } catch (IOException e) {
        throw new UncheckedIOException("cannot read " + FILE, e);
      }
      return stems;
    }
  }
}
