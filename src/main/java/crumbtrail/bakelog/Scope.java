package crumbtrail.bakelog;

import org.jspecify.annotations.Nullable;

/**
 * Whose bakes may be seen and changed. A log is always looked at through one, so that no query can
 * forget it.
 *
 * @param owner only those of this baker, null for all
 * @param schoolClass only those of this class, null for all
 */
public record Scope(@Nullable Long owner, @Nullable Long schoolClass) {

  /** Every bake: for the keeper of a log. */
  public static final Scope EVERYTHING = new Scope(null, null);

  /** The bakes of a log that one person keeps. */
  public static final Scope ONLY_BAKER = baker(Bake.ONLY_BAKER);

  /** The bakes of one baker. */
  public static Scope baker(long owner) {
    return new Scope(owner, null);
  }

  /** The bakes of one class. */
  public static Scope schoolClass(long schoolClass) {
    return new Scope(null, schoolClass);
  }

  /** Whether a bake of this baker and class lies within. */
  public boolean holds(long baker, @Nullable Long inClass) {
    return (owner == null || owner == baker)
        && (schoolClass == null || schoolClass.equals(inClass));
  }
}
