package crumbtrail.dough;

/**
 * What raises a dough.
 *
 * @param yeast instant dry yeast or its equivalent, percent of flour
 * @param starter ripe sourdough starter, percent of flour
 * @param sugarTolerant whether the yeast is of the kind for sweet doughs
 * @param vigour share of its strength that the yeast still has: 1 fresh from the factory, 0 dead
 */
public record Leaven(double yeast, double starter, boolean sugarTolerant, double vigour) {

  /** Ordinary yeast at full strength. */
  public static Leaven ofYeast(double percent) {
    return new Leaven(percent, 0, false, 1);
  }

  /** Ripe sourdough starter alone. */
  public static Leaven ofStarter(double percent) {
    return new Leaven(0, percent, false, 1);
  }

  /** Whether anything here can raise a dough. */
  public boolean raises() {
    return vigour > 0 && (yeast > 0 || starter > 0);
  }
}
