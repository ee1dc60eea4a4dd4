package crumbtrail.report;

import crumbtrail.findings.Firmness;
import crumbtrail.findings.Question;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.ReadingKind;
import crumbtrail.quantity.Amounts;
import crumbtrail.report.Report.Matter;
import crumbtrail.report.Report.NextQuestion;
import crumbtrail.workup.Uncertain;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Puts into words how firm a ranking is, and what to look at next. */
final class Outlook {
  private Outlook() {}

  static Report.Firmness firmness(Firmness firmness, Catalogue catalogue) {
    Map<String, Double> shares = new LinkedHashMap<>();
    firmness.firstIn().forEach((key, share) -> shares.put(key, ReportWriter.rounded(share, 3)));
    return new Report.Firmness(
        firmness.runs(),
        shares,
        firmness.matters().stream().map(matter -> matter(matter, catalogue)).toList());
  }

  static NextQuestion question(Question question) {
    return new NextQuestion(
        question.about(),
        question.question(),
        question.how(),
        ReportWriter.rounded(question.bits(), 3),
        question.cost().words(),
        question.amount() ? "amount" : "yes or no");
  }

  private static Matter matter(Firmness.Matter matter, Catalogue catalogue) {
    Uncertain open = matter.uncertain();
    String moves = moves(matter, catalogue);
    return new Matter(
        open.what(),
        Amounts.quantity(open.low(), open.unit()),
        Amounts.quantity(open.high(), open.unit()),
        matter.reading(),
        moves,
        open.remedy()
            + ": "
            + open.culprit()
            + " alone moves "
            + (moves.isEmpty() ? "the ranking" : moves)
            + ".");
  }

  // "hydration from 58 to 71 %": as many decimals as tell the two apart.
  private static String moves(Firmness.Matter matter, Catalogue catalogue) {
    Optional<ReadingKind> kind = catalogue.reading(matter.reading());
    if (kind.isEmpty()) {
      return "";
    }
    String unit = kind.get().unit();
    double half = Math.abs(matter.to() - matter.from()) / 2;
    String from = Amounts.quantity(matter.from(), half, unit);
    String to = Amounts.quantity(matter.to(), half, unit);
    String tail = Amounts.quantity(1, unit).substring(1);
    String shown = from.endsWith(tail) ? from.substring(0, from.length() - tail.length()) : from;
    return matter.reading() + " from " + shown + " to " + to;
  }
}
