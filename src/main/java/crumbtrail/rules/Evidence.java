package crumbtrail.rules;

import java.util.List;

/**
 * One rule's word for or against one cause.
 *
 * @param cause key of the cause
 * @param rule name of the rule
 * @param strand the independent observation that the rule rests on
 * @param decibans weight: ten times the base-10 logarithm of the likelihood ratio
 * @param lesson why, in the words of the rule
 * @param source citation of the rule: ids joined by semicolons, or "common practice"
 * @param facts what matched: readings, signs, circumstances
 */
public record Evidence(
    String cause,
    String rule,
    String strand,
    double decibans,
    String lesson,
    String source,
    List<Object> facts) {
  public Evidence {
    facts = List.copyOf(facts);
  }

  /** The same evidence under another strand and with another weight. */
  public Evidence weighing(String otherStrand, double otherDecibans) {
    return new Evidence(cause, rule, otherStrand, otherDecibans, lesson, source, facts);
  }
}
