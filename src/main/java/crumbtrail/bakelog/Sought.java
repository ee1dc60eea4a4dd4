package crumbtrail.bakelog;

import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/**
 * Which bakes are looked for; what is null does not matter.
 *
 * @param words all of them stand in the label, the recipe or the notes
 * @param recipe the name of the recipe, in any case
 * @param cause key of a cause that was confirmed, or that the trace put first and nobody ruled out
 * @param outcome how it came out
 * @param judged whether a cause of it must have been confirmed
 * @param since baked then or later
 * @param until baked before then
 */
public record Sought(
    @Nullable String words,
    @Nullable String recipe,
    @Nullable String cause,
    @Nullable Outcome outcome,
    boolean judged,
    @Nullable LocalDateTime since,
    @Nullable LocalDateTime until) {

  /** Bakes that came out in any way. */
  public Sought(
      @Nullable String words,
      @Nullable String recipe,
      @Nullable String cause,
      @Nullable LocalDateTime since,
      @Nullable LocalDateTime until) {
    this(words, recipe, cause, null, false, since, until);
  }

  /** All bakes. */
  public static final Sought ALL = new Sought(null, null, null, null, null);

  /** Those in which these words stand. */
  public static Sought words(String words) {
    return new Sought(words, null, null, null, null);
  }

  /** Those of one recipe. */
  public static Sought recipe(String recipe) {
    return new Sought(null, recipe, null, null, null);
  }

  /** Those of one recipe that came out this way. */
  public static Sought recipe(String recipe, Outcome outcome) {
    return new Sought(null, recipe, null, outcome, false, null, null);
  }

  /** Those of which a cause was confirmed, baked then or later. */
  public static Sought judged(@Nullable LocalDateTime since) {
    return new Sought(null, null, null, null, true, since, null);
  }

  /** Those with this cause. */
  public static Sought cause(String cause) {
    return new Sought(null, null, cause, null, null);
  }
}
