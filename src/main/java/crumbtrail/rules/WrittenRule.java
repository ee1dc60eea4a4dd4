package crumbtrail.rules;

import java.util.List;
import java.util.Locale;

/**
 * A rule as its writer meant it: what must hold, and what it then says of which cause.
 *
 * @param name its name
 * @param file file below the rules folder
 * @param line line of its name, from 1
 * @param strand the observation it rests on
 * @param source ids of the bibliography joined by semicolons, or "common practice"
 * @param lesson why
 * @param conditions what must hold, all of it
 * @param verdicts what it says, at least one
 */
public record WrittenRule(
    String name,
    String file,
    int line,
    String strand,
    String source,
    String lesson,
    List<Condition> conditions,
    List<Verdict> verdicts) {

  public WrittenRule {
    conditions = List.copyOf(conditions);
    verdicts = List.copyOf(verdicts);
  }

  /** What a condition looks at. */
  public enum Kind {
    /** A reading is known and lies where the sentence says. */
    READING,
    /** A reading is not known. */
    NO_READING,
    /** One of the signs was seen. */
    SIGN,
    /** A sign was looked for and was not there. */
    SIGN_ABSENT,
    /** Nothing was said of a sign. */
    SIGN_UNSPOKEN,
    /** One of the circumstances holds. */
    CIRCUMSTANCE,
    /** The bread is one of these kinds. */
    BREAD
  }

  /**
   * One condition.
   *
   * @param kind what it looks at
   * @param keys stable keys, or names of readings, or tags; any one of them suffices
   * @param sentence as it stands in the rule
   * @param edges values of a reading at which the answer turns; empty where no number is named
   */
  public record Condition(Kind kind, List<String> keys, String sentence, List<Double> edges) {
    public Condition {
      keys = List.copyOf(keys);
      edges = List.copyOf(edges);
    }
  }

  /**
   * What the rule says of one cause.
   *
   * @param cause its stable key
   * @param speaksFor whether it speaks for the cause or against it
   * @param strength how strongly
   */
  public record Verdict(String cause, boolean speaksFor, Strength strength) {}

  /** The words for weight, weakest first. */
  public enum Strength {
    FAINTLY(3),
    PLAINLY(6),
    FIRMLY(10),
    /** Only for: so far beyond custom that it would be odd if it did not show. */
    SURELY(20),
    /** Only for: what stands on the sheet is the fault itself. */
    BEYOND_DOUBT(30),
    /** Only against: the cause is out of the question. */
    CLEAR(20);

    private final double decibans;

    Strength(double decibans) {
      this.decibans = decibans;
    }

    /** As rules write it. */
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The word that a rule writes so. */
    static Strength of(String words) {
      return valueOf(words.toUpperCase(Locale.ROOT).replace(' ', '_'));
    }

    /** What the word weighs in rules/sentences, decibans; {@code Doubt} and Clear take it away. */
    public double decibans() {
      return decibans;
    }
  }

  /** Whether any condition looks at this. */
  public boolean looksAt(Kind kind) {
    return conditions.stream().anyMatch(condition -> condition.kind() == kind);
  }

  /** Whether any condition looks at this key in this way. */
  public boolean looksAt(Kind kind, String key) {
    return conditions.stream()
        .anyMatch(condition -> condition.kind() == kind && condition.keys().contains(key));
  }
}
