package crumbtrail.web;

import crumbtrail.report.Report;
import crumbtrail.report.Report.EvidenceLine;
import crumbtrail.report.Report.FormulaRow;
import crumbtrail.report.Report.FormulaTable;
import crumbtrail.report.Report.Hydration;
import crumbtrail.report.Report.RankedCause;
import crumbtrail.report.Report.Understood;
import crumbtrail.report.Report.WorkedReading;
import crumbtrail.sheet.Problem;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/** Stand-ins for the pipeline, and a report that fills every part of the page. */
final class Samples {

  private Samples() {}

  /** A report whose every text is {@code text}, so that a page shows how each place treats it. */
  static Report everywhere(String text) {
    List<String> texts = List.of(text, text);
    RankedCause cause =
        new RankedCause(
            text,
            text,
            text,
            0.83,
            text,
            text,
            text,
            List.of(
                new EvidenceLine(text, text, 10, text, texts, text),
                new EvidenceLine(text, text, -3, text, texts, text)),
            texts,
            texts);
    return new Report(
        text,
        text,
        Collections.nCopies(5, cause),
        texts,
        texts,
        texts,
        List.of(new Understood(text, text, text, text)),
        texts,
        new FormulaTable(
            500,
            Map.of(text, 62.0),
            new Hydration(62, 63.1),
            822,
            List.of(new FormulaRow(text, text, text + text, 310.0, 62.0)),
            texts),
        Map.of(text, new WorkedReading(1.2, text, 1.1, 1.3, text, 1.8, 2.2, text, text)),
        null,
        texts,
        text);
  }

  /** A report that says nothing. */
  static Report empty() {
    return new Report(
        null, null, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), null,
        Map.of(), null, List.of(), null);
  }

  static Tracer making(Report report) {
    return sheet -> new Traced.Made(report);
  }

  static Tracer refusing(Problem... problems) {
    return sheet -> new Traced.Refused(List.of(problems));
  }
}
