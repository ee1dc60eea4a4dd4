package crumbtrail.knowledge;

import java.util.List;
import java.util.Locale;

/**
 * What a word field of the bake sheet says.
 *
 * @param field path of the field below "process": {@code baking.steam}
 * @param words any of these, at the start of a word, means the circumstance; "yes" and "no" for
 *     yes-or-no fields
 * @param circumstance key of the circumstance
 */
public record FieldHint(String field, List<String> words, String circumstance) {
  public FieldHint {
    words = List.copyOf(words);
  }

  /** Whether the text of the field says it. */
  public boolean saidBy(String text) {
    String spaced = " " + text.strip().toLowerCase(Locale.ROOT);
    return words.stream()
        .anyMatch(
            word -> word.equals("no") ? spaced.matches(" no\\b.*") : spaced.contains(" " + word));
  }
}
