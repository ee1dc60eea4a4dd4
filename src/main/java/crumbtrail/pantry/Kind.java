package crumbtrail.pantry;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** What an ingredient is in the bowl: what it counts as when a formula is added up. */
public enum Kind {
  /** Ground grain that belongs to the hundred percent. */
  FLOUR,
  WATER,
  /** A poured liquid that is neither plain water nor milk: juice, beer, coffee, plant milk. */
  LIQUID,
  FAT,
  EGG,
  DAIRY,
  SWEETENER,
  SALT,
  YEAST,
  /** A ripe culture or an old dough, split into flour and water. */
  STARTER,
  MALT,
  IMPROVER,
  /** Goes in whole and stays whole: fruit, nuts, seeds, cheese. */
  INCLUSION,
  SPICE,
  GLUTEN,
  STARCH,
  /** Baking powder, soda and the acids for them. */
  LEAVENING,
  OTHER;

  /** The word used for this kind in the pantry file and in a formula's percentages. */
  @JsonValue
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The kind for a word of the pantry file.
   *
   * @throws IllegalArgumentException naming the word and all that would do
   */
  @JsonCreator
  public static Kind of(String word) {
    for (Kind kind : values()) {
      if (kind.word().equals(word)) {
        return kind;
      }
    }
    throw new IllegalArgumentException(
        "no ingredient kind \""
            + word
            + "\"; use one of "
            + Arrays.stream(values()).map(Kind::word).collect(Collectors.joining(", ")));
  }
}
