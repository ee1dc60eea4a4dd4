package crumbtrail.people;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;

/** Names of people and classes. */
public final class Names {
  /** Characters of a name. */
  public static final int LONGEST = 40;

  private Names() {}

  /**
   * A name as it is kept; empty for one that cannot be used: too long, or with other characters
   * than letters, digits, blanks and a few signs.
   */
  public static Optional<String> kept(String typed) {
    String plain =
        Normalizer.normalize(typed, Normalizer.Form.NFKC).replaceAll("\\s+", " ").strip();
    return !plain.isEmpty()
            && plain.length() <= LONGEST
            && plain.matches("[\\p{L}\\p{M}\\p{N} .,'’_()&+/-]+")
        ? Optional.of(plain)
        : Optional.empty();
  }

  /** What two names have in common that are the same to people. */
  public static String key(String name) {
    return Normalizer.normalize(name, Normalizer.Form.NFKC)
        .replaceAll("\\s+", " ")
        .strip()
        .toLowerCase(Locale.ROOT);
  }
}
