package crumbtrail.sheet;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/** Finds the key that was probably meant. */
final class NearestKey {

  private static final int LONGEST = 40;
  private static final double LIKE_ENOUGH = 0.8;

  /** What people call it who do not call it as the sheet does. */
  private static final Map<String, String> OTHER_WORDS =
      Map.ofEntries(
          Map.entry("ingredients", "formula"),
          Map.entry("dough", "formula"),
          Map.entry("water", "liquid"),
          Map.entry("milk", "liquid"),
          Map.entry("starter", "preferment"),
          Map.entry("starters", "preferments"),
          Map.entry("signs", "seen"),
          Map.entry("symptoms", "seen"),
          Map.entry("result", "seen"),
          Map.entry("notes", "remarks"),
          Map.entry("comments", "remarks"),
          Map.entry("name", "title"),
          Map.entry("tin", "vessel"),
          Map.entry("pan", "vessel"),
          Map.entry("kitchen", "room"),
          Map.entry("kneading", "mixing"),
          Map.entry("oven", "baking"),
          Map.entry("elevation", "altitude"));

  private NearestKey() {}

  /** The known key most like the one written, if any is like it. */
  static Optional<String> to(String written, Collection<String> known) {
    if (written.length() > LONGEST) {
      return Optional.empty();
    }
    JaroWinklerSimilarity similarity = new JaroWinklerSimilarity();
    String plain = plain(written);
    String other = OTHER_WORDS.get(plain);
    if (other != null && known.contains(other)) {
      return Optional.of(other);
    }
    return known.stream()
        .filter(key -> similarity.apply(plain, plain(key)) >= LIKE_ENOUGH)
        .max(Comparator.comparingDouble(key -> similarity.apply(plain, plain(key))));
  }

  private static String plain(String key) {
    return key.toLowerCase(Locale.ROOT).replaceAll("[-_ ]", "");
  }
}
