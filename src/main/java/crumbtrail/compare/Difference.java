package crumbtrail.compare;

/**
 * One respect in which two bakes were not made alike.
 *
 * @param what the ingredient, field or circumstance, in words
 * @param before how it was in the bake that the other is compared with; empty for not at all
 * @param after how it was in the bake in question; empty for not at all
 */
public record Difference(String what, String before, String after) {

  /** How a side is shown on which there is nothing. */
  public static final String NOT_TOLD = "not told";

  public Difference {
    before = before.isBlank() ? NOT_TOLD : before;
    after = after.isBlank() ? NOT_TOLD : after;
  }
}
