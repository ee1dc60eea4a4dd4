package crumbtrail.lessons;

import crumbtrail.rules.RuleBase;

/** All that teaches, over one rule base. */
public record School(Vary vary, Mysteries mysteries, Course course) {

  /** Over these rules. */
  public static School of(RuleBase rules) {
    return new School(new Vary(rules), new Mysteries(rules), new Course(rules));
  }
}
