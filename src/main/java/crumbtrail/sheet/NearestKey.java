package crumbtrail.sheet;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/** Finds the key that was probably meant. */
final class NearestKey {

  private static final int LONGEST = 40;
  private static final double LIKE_ENOUGH = 0.8;

  private NearestKey() {}

  /** The known key most like the one written, if any is like it. */
  static Optional<String> to(String written, Collection<String> known) {
    if (written.length() > LONGEST) {
      return Optional.empty();
    }
    JaroWinklerSimilarity similarity = new JaroWinklerSimilarity();
    String plain = plain(written);
    return known.stream()
        .filter(key -> similarity.apply(plain, plain(key)) >= LIKE_ENOUGH)
        .max(Comparator.comparingDouble(key -> similarity.apply(plain, plain(key))));
  }

  private static String plain(String key) {
    return key.toLowerCase(Locale.ROOT).replaceAll("[-_ ]", "");
  }
}
