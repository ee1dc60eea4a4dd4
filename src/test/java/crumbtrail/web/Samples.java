package crumbtrail.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import crumbtrail.advice.Wish;
import crumbtrail.compare.Comparison;
import crumbtrail.report.Courses;
import crumbtrail.report.RecipeLayout;
import crumbtrail.report.Replied;
import crumbtrail.report.Reply;
import crumbtrail.report.Report;
import crumbtrail.report.Report.EvidenceLine;
import crumbtrail.report.Report.FormulaRow;
import crumbtrail.report.Report.FormulaTable;
import crumbtrail.report.Report.Hydration;
import crumbtrail.report.Report.RankedCause;
import crumbtrail.report.Report.Understood;
import crumbtrail.report.Report.WorkedReading;
import crumbtrail.sheet.Problem;
import crumbtrail.sheet.SheetReader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** Stand-ins for the pipeline, and a report that fills every part of the page. */
final class Samples {

  private Samples() {}

  /** A report whose every text is {@code text}, so that a page shows how each place treats it. */
  static Report everywhere(String text) {
    return everywhere(
        text,
        new Report.ForesightTable(
            List.of(new Report.PredictedSign(text, text, 0.4, text)),
            List.of(new Report.Gap(text, text, text)),
            List.of(new Report.LevelLine(text, text, true)),
            List.of(new Report.DayStep(text, text, null, 0, 30, text, text))));
  }

  /** The same of a bake that is over. */
  static Report failed(String text) {
    return everywhere(text, null);
  }

  private static Report everywhere(String text, Report.ForesightTable foresight) {
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
            text,
            List.of(
                new EvidenceLine(
                    text, new Report.RuleText(texts, texts), text, 10, text, texts, text),
                new EvidenceLine(text, null, text, -3, text, texts, text)),
            texts,
            texts);
    return new Report(
        text,
        text,
        Collections.nCopies(5, cause),
        texts,
        0.4,
        List.of(new Report.Joint(texts, text, text)),
        texts,
        new Report.Firmness(
            300, Map.of(text, 0.9), List.of(new Report.Matter(text, text, text, text, text, text))),
        List.of(new Report.NextQuestion(text, text, text, 0.4, text, text)),
        List.of(correction(text)),
        new Report.NextBakeSheet(
            text,
            List.of(correction(text)),
            texts,
            texts,
            List.of(new FormulaRow(text, text, text, 500.0, 62.0)),
            822,
            List.of(new Report.DayStep(text, text, text, -30, 30, text, text)),
            texts,
            List.of(new Report.Risk(text, text, 0.2)),
            JsonNodeFactory.instance.objectNode().put("title", text)),
        foresight,
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
        Map.of(text, new WorkedReading(1.2, text, 1.1, 1.3, text, 1.8, 2.2, text, text, text)),
        courses(text),
        texts,
        text);
  }

  /** A day at the tide mill: an evening's bulk, a night in the fridge, a short proof, a bake. */
  static Courses courses(String text) {
    return new Courses(rise(text), bake());
  }

  static Courses.Rise rise(String text) {
    List<Courses.RisePoint> points = new ArrayList<>();
    for (int minute = 0; minute <= 150; minute += 5) {
      points.add(
          new Courses.RisePoint(
              minute, 1 + 0.9 * Math.pow(minute / 150.0, 1.8), 26 - 2 * minute / 150.0));
    }
    points.add(new Courses.RisePoint(150, 1.35, 24));
    points.add(new Courses.RisePoint(170, 1.4, 23.8));
    for (int minute = 180; minute <= 900; minute += 15) {
      double share = (minute - 170) / 730.0;
      points.add(
          new Courses.RisePoint(
              minute, 1.4 + 0.3 * Math.min(1, 3 * share), 4 + 19.8 * Math.exp(-9 * share)));
    }
    for (int minute = 910; minute <= 960; minute += 10) {
      double share = (minute - 900) / 60.0;
      points.add(new Courses.RisePoint(minute, 1.7 + 0.4 * share, 4 + 8 * share));
    }
    return new Courses.Rise(
        points,
        List.of(
            new Courses.Span(text + "bulk", 0, 150, 24),
            new Courses.Span("bench", 150, 170, 22),
            new Courses.Span("fridge", 170, 900, 4),
            new Courses.Span("proof", 900, 960, 24)),
        List.of(
            new Courses.Mark(text + "ready to shape", 130, false),
            new Courses.Mark("ready to bake", 1010, true)),
        true);
  }

  /** A loaf that comes out a little early. */
  static Courses.Bake bake() {
    List<Courses.BakePoint> points = new ArrayList<>();
    for (int minute = 0; minute <= 32; minute++) {
      double oven = minute < 15 ? 240 : 210;
      points.add(
          new Courses.BakePoint(
              minute,
              24 + 69 / (1 + Math.exp((13 - minute) / 3.2)),
              24 + (oven - 60) * (1 - Math.exp(-minute / 7.0)),
              oven));
    }
    return new Courses.Bake(points, 95, 98.4, 22.0, 91.0, false);
  }

  private static Report.CorrectionLine correction(String text) {
    return new Report.CorrectionLine(
        text,
        text,
        text,
        text,
        text,
        text,
        0.8,
        0.1,
        true,
        text,
        List.of(new Report.Move(text, text, 0.1, 0.2)),
        text,
        text);
  }

  /** A report that says nothing. */
  static Report empty() {
    return new Report(
        null, null, List.of(), List.of(), 0, List.of(), List.of(), null, List.of(), List.of(), null,
        null, List.of(), List.of(), List.of(), null, Map.of(), null, List.of(), null);
  }

  /** A report that has courses and nothing else. */
  static Report with(Courses courses) {
    return new Report(
        null, null, List.of(), List.of(), 0, List.of(), List.of(), null, List.of(), List.of(), null,
        null, List.of(), List.of(), List.of(), null, Map.of(), courses, List.of(), null);
  }

  /** Answers every question with this report, and with its next bake. */
  static Tracer making(Report report) {
    return tracing(sheet -> new Traced.Made<>(report));
  }

  static Tracer refusing(Problem... problems) {
    return tracing(sheet -> new Traced.Refused<>(List.of(problems)));
  }

  /** A tracer that treats every kind of question alike. */
  static Tracer tracing(Function<String, Traced<Report>> answer) {
    return new Tracer() {
      @Override
      public Traced<Report> trace(String sheet) {
        return answer.apply(sheet);
      }

      @Override
      public Traced<Report> causes(String sheet) {
        return answer.apply(sheet);
      }

      @Override
      public Traced<Comparison> compare(String before, String after) {
        return answer.apply(after) instanceof Traced.Refused<Report> refused
            ? new Traced.Refused<>(refused.problems())
            : new Traced.Made<>(new Comparison(List.of(), List.of(), List.of(), List.of(), 0));
      }

      @Override
      public Traced<Replied> reply(String sheet, Set<String> passed, Reply reply) {
        Traced<Report> traced = answer.apply(sheet);
        return traced instanceof Traced.Made<Report> made
            ? new Traced.Made<>(
                new Replied(
                    made.report(),
                    new Reply.Taken(
                        SheetReader.read("{\"seen\": [\"pale crust\"]}").sheet().orElseThrow(),
                        passed,
                        List.of(new Reply.Moved(reply.about(), 0.2, 0.4)),
                        List.of())))
            : new Traced.Refused<>(((Traced.Refused<Report>) traced).problems());
      }

      @Override
      public Traced<Report> precheck(String sheet) {
        return answer.apply(sheet);
      }

      @Override
      public Traced<Report.NextBakeSheet> next(String sheet, Wish wish) {
        return answer.apply(sheet) instanceof Traced.Refused<Report> refused
            ? new Traced.Refused<>(refused.problems())
            : new Traced.Made<>(((Traced.Made<Report>) answer.apply(sheet)).report().nextBake());
      }

      @Override
      public RecipeLayout layout(JsonNode sheet) {
        return RecipeLayout.EMPTY;
      }
    };
  }
}
