package crumbtrail.lessons;

import java.util.List;

/**
 * What became of a learner's guess.
 *
 * @param outcome how near it came
 * @param named key of the cause that the learner named
 * @param cause key of the cause that it was
 * @param others keys of further causes that were at work
 * @param shareNamed how likely the named cause was by what the learner knew, 0 to 1
 * @param shareTrue how likely the true cause was by what the learner knew, 0 to 1
 * @param start bits unknown before anything was asked
 * @param asked what the learner asked, in order
 * @param better what a good diagnostician would have asked: recipe and tin, and then what promises
 *     most
 */
public record Verdict(
    Outcome outcome,
    String named,
    String cause,
    List<String> others,
    double shareNamed,
    double shareTrue,
    double start,
    List<Observation> asked,
    List<Observation> better) {
  public Verdict {
    others = List.copyOf(others);
    asked = List.copyOf(asked);
    better = List.copyOf(better);
  }

  /** How near a guess came. */
  public enum Outcome {
    /** The chief cause. */
    RIGHT,
    /** A further cause that was at work too. */
    ALSO_AT_WORK,
    /** A coarser or finer form of the chief cause. */
    NEAR,
    WRONG
  }

  /**
   * An answer and what it taught.
   *
   * @param clue what was asked
   * @param lines the answer
   * @param before bits unknown before it
   * @param after bits unknown after it; may be more, where an answer shakes a false certainty
   * @param likeliest the likeliest causes after it
   */
  public record Observation(
      Clue clue, List<String> lines, double before, double after, List<Suspect> likeliest) {
    public Observation {
      lines = List.copyOf(lines);
      likeliest = List.copyOf(likeliest);
    }
  }

  /** A cause and its share of the suspicion, 0 to 1. */
  public record Suspect(String cause, String name, double share) {}
}
