package crumbtrail.web;

import crumbtrail.report.Report;
import crumbtrail.sheet.Problem;
import java.util.List;

/** What became of a bake sheet: a report, or the reasons why there is none. */
public sealed interface Traced {

  /** There is a report. */
  record Made(Report report) implements Traced {}

  /** The sheet cannot be used; the problems are all that were found, not only the first. */
  record Refused(List<Problem> problems) implements Traced {
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
