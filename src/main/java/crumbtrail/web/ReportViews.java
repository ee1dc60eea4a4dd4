package crumbtrail.web;

import crumbtrail.picture.LoafPictures;
import crumbtrail.quantity.Amounts;
import crumbtrail.report.OutlookWords;
import crumbtrail.report.ReadingTable;
import crumbtrail.report.Report;
import crumbtrail.report.Report.EvidenceLine;
import crumbtrail.report.Report.FormulaTable;
import crumbtrail.report.Report.RankedCause;
import crumbtrail.report.Report.WorkedReading;
import crumbtrail.web.ReportView.Drawn;
import crumbtrail.web.ReportView.Evidence;
import crumbtrail.web.ReportView.Line;
import crumbtrail.web.ReportView.Pair;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Lays a report out for the page. */
final class ReportViews {

  private ReportViews() {}

  /** So many pictures of signs at most. */
  private static final int DRAWN = 6;

  static ReportView of(Report report) {
    return of(report, LoafPictures.none());
  }

  static ReportView of(Report report, LoafPictures pictures) {
    return of(report, pictures, Held.nothing());
  }

  /**
   * The report on a page that can be answered.
   *
   * @param held what the page holds on to
   */
  static ReportView of(Report report, LoafPictures pictures, Held held) {
    Map<String, String> names = new HashMap<>();
    report.understood().forEach(u -> names.put(u.key(), u.name()));
    report.causes().forEach(c -> names.put(c.key(), c.name()));
    FormulaTable formula = report.formula();
    References ranges = new References();
    return new ReportView(
        orEmpty(report.title()),
        orEmpty(report.style()),
        report.causes().stream().map(c -> cause(c, names)).toList(),
        AdviceViews.of(report, pictures, held.wish(), held.units()),
        named(report.together(), names),
        together(report, names),
        named(report.unexplained(), names),
        firmness(report),
        AskView.of(report, held),
        report.notUnderstood(),
        drawn(report, pictures),
        report.understood().stream().map(u -> new Pair(u.said(), reading(u))).toList(),
        report.assumptions(),
        formula == null ? List.of() : lines(formula, held.units()),
        formula == null ? List.of() : groups(formula),
        formula == null ? List.of() : notes(formula, held.units()),
        Figures.of(report.courses(), report.workup()),
        readings(report.workup(), ranges, held.units()),
        ranges.list(),
        report.cautions(),
        ShareView.of(held));
  }

  private static List<Drawn> drawn(Report report, LoafPictures pictures) {
    return report.understood().stream()
        .filter(understood -> understood.kind().equals("sign"))
        .map(understood -> new Pair(understood.key(), understood.name()))
        .distinct()
        .flatMap(
            sign ->
                pictures.of(sign.name(), report.style()).stream()
                    .map(picture -> new Drawn(sign.value(), picture.svg())))
        .limit(DRAWN)
        .toList();
  }

  private static List<String> together(Report report, Map<String, String> names) {
    List<String> notes = new ArrayList<>();
    if (report.together().size() > 1) {
      notes.add(
          "That all of them were at work: "
              + ReportWords.percent(report.togetherProbability())
              + ".");
    }
    report
        .actingTogether()
        .forEach(
            joint ->
                notes.add(
                    "These act together: "
                        + String.join(" and ", named(joint.causes(), names))
                        + ". "
                        + joint.why()));
    return notes;
  }

  private static List<String> firmness(Report report) {
    List<String> words = new ArrayList<>();
    if (report.firmness() != null && !report.causes().isEmpty()) {
      words.add(OutlookWords.firmness(report));
      report.firmness().matters().forEach(matter -> words.add(matter.advice()));
    }
    return words;
  }

  private static List<String> rule(EvidenceLine line) {
    List<String> rule = new ArrayList<>();
    if (line.says() != null) {
      line.says()
          .when()
          .forEach(sentence -> rule.add(rule.isEmpty() ? "when " + sentence : "and " + sentence));
      rule.add("then " + String.join("; ", line.says().then()));
    }
    return rule;
  }

  private static ReportView.Cause cause(RankedCause cause, Map<String, String> names) {
    References sources = new References();
    List<Evidence> speaksFor = new ArrayList<>();
    List<Evidence> speaksAgainst = new ArrayList<>();
    for (EvidenceLine line : cause.evidence()) {
      Evidence evidence =
          new Evidence(
              line.because(),
              ReportWords.weight(line.decibans()),
              line.readings(),
              sources.cite(line.source()),
              orEmpty(line.source()),
              rule(line),
              orEmpty(line.rule()));
      if (line.decibans() < 0) {
        // The report puts the strongest against last; the page reads it first.
        speaksAgainst.add(0, evidence);
      } else {
        speaksFor.add(evidence);
      }
    }
    cause.sources().forEach(sources::cite);
    return new ReportView.Cause(
        cause.key(),
        cause.name(),
        orEmpty(cause.stage()),
        ReportWords.likelihood(cause.probability()),
        ReportWords.percent(cause.probability()),
        (int) Math.round(100 * Math.max(0, Math.min(1, cause.probability()))),
        orEmpty(cause.story()),
        orEmpty(cause.what()),
        orEmpty(cause.tell()),
        orEmpty(cause.change()),
        named(cause.explains(), names),
        speaksFor,
        speaksAgainst,
        sources.list());
  }

  private static String reading(Report.Understood understood) {
    return understood.name() + " (" + understood.kind() + ")";
  }

  private static List<Line> lines(FormulaTable formula, Units units) {
    return formula.lines().stream()
        .map(
            row ->
                new Line(
                    orEmpty(row.part()),
                    row.written(),
                    takenFor(row.written(), orEmpty(row.ingredient())),
                    row.percent() == null ? "" : Amounts.number(row.percent()) + " %",
                    row.grams() == null ? "" : units.quantity(row.grams(), "g")))
        .toList();
  }

  private static String takenFor(String written, String ingredient) {
    boolean told = written.toLowerCase(Locale.ROOT).contains(ingredient.toLowerCase(Locale.ROOT));
    return told ? "" : ingredient;
  }

  private static List<Pair> groups(FormulaTable formula) {
    return formula.percent().entrySet().stream()
        .map(e -> new Pair(plain(e.getKey()), Amounts.number(e.getValue()) + " %"))
        .toList();
  }

  private static List<String> notes(FormulaTable formula, Units units) {
    List<String> notes = new ArrayList<>();
    if (formula.flourGrams() > 0) {
      notes.add(
          "Flour in all "
              + units.quantity(formula.flourGrams(), "g")
              + ", dough "
              + units.quantity(formula.doughGrams(), "g")
              + ".");
    }
    if (formula.hydration() != null) {
      notes.add(
          "Hydration "
              + Amounts.number(formula.hydration().liquid())
              + " % by the liquids poured in, "
              + Amounts.number(formula.hydration().allWater())
              + " % with the water in everything else.");
    }
    notes.addAll(formula.contradictions());
    return notes;
  }

  private static List<ReportView.Group> readings(
      Map<String, WorkedReading> workup, References ranges, Units units) {
    return ReadingTable.of(workup, units).stream()
        .map(
            group ->
                new ReportView.Group(
                    group.name(), group.rows().stream().map(row -> reading(row, ranges)).toList()))
        .toList();
  }

  private static ReportView.Reading reading(ReadingTable.Row row, References ranges) {
    return new ReportView.Reading(
        row.name(),
        row.spread().isEmpty() ? row.value() : row.value() + " (" + row.spread() + ")",
        row.known(),
        row.usual(),
        row.lies(),
        row.usual().isEmpty() ? "" : ranges.cite(row.usualSource()),
        row.what());
  }

  private static List<String> named(List<String> keys, Map<String, String> names) {
    return keys.stream().map(key -> names.getOrDefault(key, plain(key))).toList();
  }

  /** A key as words: hyphens become spaces. */
  private static String plain(String key) {
    return key.replace('-', ' ');
  }

  private static String orEmpty(String text) {
    return text == null ? "" : text;
  }
}
