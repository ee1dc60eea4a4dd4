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
import crumbtrail.web.ReportView.Said;
import crumbtrail.web.ReportView.Understood;
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
    Texts t = held.texts();
    return new ReportView(
        orEmpty(report.title()),
        t.name(orEmpty(report.style())),
        report.causes().stream().map(c -> cause(c, names, t)).toList(),
        AdviceViews.of(report, pictures, held.wish(), held.units(), t),
        named(report.together(), names, t),
        together(report, names, t),
        KitchenView.of(report, t),
        named(report.unexplained(), names, t),
        firmness(report),
        AskView.of(report, held),
        report.notUnderstood(),
        drawn(report, pictures, t),
        report.understood().stream().map(u -> read(u, t)).toList(),
        report.assumptions(),
        formula == null ? List.of() : lines(formula, held.units(), t),
        formula == null ? List.of() : groups(formula, t),
        formula == null ? List.of() : notes(formula, held.units(), t),
        Figures.of(report.courses(), report.workup(), held.units(), t),
        readings(report.workup(), ranges, held.units(), t),
        ranges.list(),
        report.cautions(),
        ShareView.of(held));
  }

  private static List<Drawn> drawn(Report report, LoafPictures pictures, Texts t) {
    return report.understood().stream()
        .filter(understood -> understood.kind().equals("sign"))
        .map(understood -> new Pair(understood.key(), understood.name()))
        .distinct()
        .flatMap(
            sign ->
                pictures.of(sign.name(), report.style()).stream()
                    .map(picture -> new Drawn(t.name(sign.value()), picture.svg())))
        .limit(DRAWN)
        .toList();
  }

  private static List<Said> together(Report report, Map<String, String> names, Texts t) {
    List<Said> notes = new ArrayList<>();
    if (report.together().size() > 1) {
      String all = t.number(ReportWords.percent(report.togetherProbability()));
      notes.add(new Said(t.of("report.together.all", all), false));
    }
    report
        .actingTogether()
        .forEach(
            joint -> {
              String both = String.join(t.of("list.and"), named(joint.causes(), names, t));
              notes.add(new Said(t.of("report.together.joint", both), false));
              notes.add(new Said(joint.why(), true));
            });
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

  private static ReportView.Cause cause(RankedCause cause, Map<String, String> names, Texts t) {
    References sources = new References();
    List<Evidence> speaksFor = new ArrayList<>();
    List<Evidence> speaksAgainst = new ArrayList<>();
    for (EvidenceLine line : cause.evidence()) {
      Evidence evidence =
          new Evidence(
              line.because(),
              t.of("weight." + ReportWords.weight(line.decibans())),
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
        t.name(cause.name()),
        t.name(orEmpty(cause.stage())),
        t.likelihood(cause.probability()),
        t.number(ReportWords.percent(cause.probability())),
        (int) Math.round(100 * Math.max(0, Math.min(1, cause.probability()))),
        orEmpty(cause.story()),
        orEmpty(cause.what()),
        orEmpty(cause.tell()),
        orEmpty(cause.change()),
        named(cause.explains(), names, t),
        speaksFor,
        speaksAgainst,
        sources.list());
  }

  private static Understood read(Report.Understood understood, Texts t) {
    String kind = understood.kind();
    String name = t.name(understood.name());
    // Names that the language has no other word for stay as they are.
    String tongue = name.equals(understood.name()) ? t.inEnglish() : null;
    return new Understood(understood.said(), name, tongue, t.orElse("kind." + kind, kind));
  }

  private static List<Line> lines(FormulaTable formula, Units units, Texts t) {
    return formula.lines().stream()
        .map(
            row ->
                new Line(
                    orEmpty(row.part()),
                    row.written(),
                    takenFor(row.written(), orEmpty(row.ingredient())),
                    row.percent() == null ? "" : t.number(Amounts.number(row.percent()) + " %"),
                    row.grams() == null ? "" : t.number(units.quantity(row.grams(), "g"))))
        .toList();
  }

  private static String takenFor(String written, String ingredient) {
    boolean told = written.toLowerCase(Locale.ROOT).contains(ingredient.toLowerCase(Locale.ROOT));
    return told ? "" : ingredient;
  }

  private static List<Pair> groups(FormulaTable formula, Texts t) {
    return formula.percent().entrySet().stream()
        .map(
            e -> new Pair(t.name(plain(e.getKey())), t.number(Amounts.number(e.getValue()) + " %")))
        .toList();
  }

  private static List<Said> notes(FormulaTable formula, Units units, Texts t) {
    List<Said> notes = new ArrayList<>();
    if (formula.flourGrams() > 0) {
      String flour = t.number(units.quantity(formula.flourGrams(), "g"));
      String dough = t.number(units.quantity(formula.doughGrams(), "g"));
      notes.add(new Said(t.of("report.formula.weights", flour, dough), false));
    }
    if (formula.hydration() != null) {
      String liquid = t.number(Amounts.number(formula.hydration().liquid()) + " %");
      String all = t.number(Amounts.number(formula.hydration().allWater()) + " %");
      notes.add(new Said(t.of("report.formula.hydration", liquid, all), false));
    }
    formula.contradictions().forEach(one -> notes.add(new Said(one, true)));
    return notes;
  }

  private static List<ReportView.Group> readings(
      Map<String, WorkedReading> workup, References ranges, Units units, Texts t) {
    return ReadingTable.of(workup, units).stream()
        .map(
            group ->
                new ReportView.Group(
                    t.name(group.name()),
                    group.rows().stream().map(row -> reading(row, ranges, t)).toList()))
        .toList();
  }

  private static ReportView.Reading reading(ReadingTable.Row row, References ranges, Texts t) {
    return new ReportView.Reading(
        t.name(row.name()),
        t.number(row.spread().isEmpty() ? row.value() : row.value() + " (" + row.spread() + ")"),
        t.name(row.known()),
        t.number(row.usual()),
        row.lies(),
        row.usual().isEmpty() ? "" : ranges.cite(row.usualSource()),
        row.what());
  }

  private static List<String> named(List<String> keys, Map<String, String> names, Texts t) {
    return keys.stream().map(key -> t.name(names.getOrDefault(key, plain(key)))).toList();
  }

  /** A key as words: hyphens become spaces. */
  private static String plain(String key) {
    return key.replace('-', ' ');
  }

  private static String orEmpty(String text) {
    return text == null ? "" : text;
  }
}
