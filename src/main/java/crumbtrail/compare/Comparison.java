package crumbtrail.compare;

import java.util.List;

/**
 * A bake held against another one.
 *
 * @param differences what was done otherwise, that which explains most first
 * @param appeared names of signs seen on the bake in question and not on the other
 * @param gone names of signs seen on the other bake only
 * @param readings what was worked out and differs by more than it is uncertain
 * @param together how much of the suspicion everything that was done otherwise explains, 0 to 1;
 *     what is left was on neither sheet, or is on both
 */
public record Comparison(
    List<Explained> differences,
    List<String> appeared,
    List<String> gone,
    List<Difference> readings,
    double together) {
  public Comparison {
    differences = List.copyOf(differences);
    appeared = List.copyOf(appeared);
    gone = List.copyOf(gone);
    readings = List.copyOf(readings);
  }

  /**
   * A difference, and how far it explains what went wrong.
   *
   * @param difference what was done otherwise
   * @param power how much of the suspicion against the causes of the bake in question it accounts
   *     for, in probability summed over the causes; below nought where it should have helped
   * @param moved causes whose risk it moves, the most moved first
   */
  public record Explained(Difference difference, double power, List<Moved> moved) {
    public Explained {
      moved = List.copyOf(moved);
    }
  }

  /**
   * What a difference does to the risk of a cause.
   *
   * @param cause key
   * @param before risk of the bake in question, were it in this one respect like the other
   * @param after its risk as it was made
   */
  public record Moved(String cause, double before, double after) {}
}
