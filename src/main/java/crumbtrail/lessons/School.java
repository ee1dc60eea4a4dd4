package crumbtrail.lessons;

import crumbtrail.rules.RuleBase;

/** All that teaches, over one rule base. */
public record School(Vary vary, Mysteries mysteries, Course course, Drawings drawings) {

  /** Over these rules. */
  public static School of(RuleBase rules) {
    Pipeline pipeline = new Pipeline(rules);
    return new School(
        new Vary(pipeline), new Mysteries(pipeline), new Course(pipeline), new Drawings(pipeline));
  }
}
