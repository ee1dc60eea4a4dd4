package crumbtrail.report;

import crumbtrail.findings.Finding;
import crumbtrail.findings.Findings;
import crumbtrail.findings.Firmness;
import crumbtrail.findings.Question;
import crumbtrail.findings.Together;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.CircumstanceKind;
import crumbtrail.knowledge.ReadingKind;
import crumbtrail.knowledge.SignKind;
import crumbtrail.knowledge.Style;
import crumbtrail.quantity.Amounts;
import crumbtrail.report.Report.EvidenceLine;
import crumbtrail.report.Report.Joint;
import crumbtrail.report.Report.RankedCause;
import crumbtrail.report.Report.Understood;
import crumbtrail.report.Report.WorkedReading;
import crumbtrail.rules.Evidence;
import crumbtrail.rules.RuleBase;
import crumbtrail.rules.WrittenRule;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.Heard;
import crumbtrail.workup.Reading;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Puts findings into the words and shape of the report. */
final class ReportWriter {
  /** Causes that are told at length. */
  private static final int TOLD = 3;

  private final RuleBase rules;
  private final Catalogue catalogue;
  private final FactWords words;
  private final Story story;
  private final Map<String, Integer> places = new HashMap<>();

  ReportWriter(RuleBase rules) {
    this.rules = rules;
    this.catalogue = rules.catalogue();
    this.words = new FactWords(catalogue);
    this.story = new Story(catalogue);
    for (ReadingKind kind : catalogue.knowledge().readings()) {
      places.put(kind.name(), places.size());
    }
  }

  /** What is advised; null where nothing is. */
  record Advised(
      List<Report.CorrectionLine> corrections,
      Report.NextBakeSheet next,
      Report.ForesightTable ahead) {}

  Report write(
      BakeSheet sheet,
      Workup workup,
      Findings findings,
      Firmness firmness,
      List<Question> questions,
      Advised advised) {
    Together together = Together.of(catalogue, findings);
    return new Report(
        sheet.title(),
        workup.style().name(),
        causes(findings.ranked()),
        together.keys(),
        rounded(together.probability(), 4),
        together.joint().stream()
            .map(one -> new Joint(one.causes(), one.why(), catalogue.cited(one.source())))
            .toList(),
        findings.unexplained(),
        firmness == null ? null : Outlook.firmness(firmness, catalogue),
        questions.stream().map(Outlook::question).toList(),
        advised.corrections(),
        advised.next(),
        advised.ahead(),
        workup.heard().notUnderstood(),
        understood(workup.heard()),
        assumptions(workup),
        FormulaTables.of(sheet, workup.formula()),
        readings(workup.readings()),
        CourseTables.of(workup),
        Cautions.of(catalogue.knowledge(), rules.pantry(), sheet, workup, findings),
        rules.version());
  }

  private List<String> assumptions(Workup workup) {
    List<String> all = new ArrayList<>(workup.assumptions());
    rules
        .broken()
        .forEach(
            (rule, why) ->
                all.add("The rule \"" + rule + "\" broke off (" + why + ") and was left out."));
    return all;
  }

  private List<RankedCause> causes(List<Finding> ranked) {
    List<RankedCause> causes = new ArrayList<>();
    // Most facts stand behind several words of evidence.
    IdentityHashMap<Object, String> said = new IdentityHashMap<>();
    for (Finding finding : ranked) {
      causes.add(cause(finding, causes.size() < TOLD, said));
    }
    return causes;
  }

  private RankedCause cause(Finding finding, boolean told, IdentityHashMap<Object, String> said) {
    Cause cause = finding.cause();
    return new RankedCause(
        cause.key(),
        cause.name(),
        cause.stage(),
        rounded(finding.probability(), 4),
        told ? story.of(finding) : null,
        cause.what(),
        cause.change(),
        cause.tell(),
        finding.evidence().stream().map(one -> evidence(one, told, said)).toList(),
        finding.explains(),
        cause.sources().stream().map(catalogue::cited).toList());
  }

  private EvidenceLine evidence(
      Evidence evidence, boolean told, IdentityHashMap<Object, String> said) {
    return new EvidenceLine(
        evidence.rule(),
        told ? rules.written(evidence.rule()).map(ReportWriter::text).orElse(null) : null,
        evidence.strand(),
        rounded(evidence.decibans(), 1),
        evidence.lesson(),
        facts(evidence.facts(), said),
        catalogue.cited(evidence.source()));
  }

  private List<String> facts(List<Object> facts, IdentityHashMap<Object, String> said) {
    Set<String> told = new LinkedHashSet<>();
    for (Object fact : facts) {
      told.add(said.computeIfAbsent(fact, words::of));
    }
    return List.copyOf(told);
  }

  private static Report.RuleText text(WrittenRule rule) {
    return new Report.RuleText(
        rule.conditions().stream().map(WrittenRule.Condition::sentence).toList(),
        rule.verdicts().stream().map(ReportWriter::says).toList());
  }

  // As the rule's writer puts it: Suspect "salt too low" firmly.
  private static String says(WrittenRule.Verdict verdict) {
    String cause = "\"" + Catalogue.spoken(verdict.cause()) + "\"";
    if (verdict.strength() == WrittenRule.Strength.CLEAR) {
      return "Clear " + cause;
    }
    String word = verdict.strength().words();
    return (verdict.speaksFor() ? "Suspect " : "Doubt ") + cause + " " + word;
  }

  private List<Understood> understood(Heard heard) {
    List<Understood> understood = new ArrayList<>();
    for (Heard.Sign sign : heard.signs()) {
      String name = catalogue.sign(sign.key()).map(SignKind::name).orElse(sign.key());
      understood.add(
          new Understood(sign.words(), sign.seen() ? "sign" : "sign not seen", sign.key(), name));
    }
    for (Heard.Circumstance one : heard.circumstances()) {
      String name = catalogue.circumstance(one.key()).map(CircumstanceKind::name).orElse(one.key());
      understood.add(new Understood(one.words(), "circumstance", one.key(), name));
    }
    return understood;
  }

  private Map<String, WorkedReading> readings(List<Reading> readings) {
    Map<String, WorkedReading> table = new LinkedHashMap<>();
    for (Reading reading : inOrder(readings)) {
      Optional<ReadingKind> kind = catalogue.reading(reading.name());
      int decimals = kind.map(ReadingKind::decimals).orElse(1);
      String unit = kind.map(ReadingKind::unit).orElse("");
      Optional<Style.Range> usual = reading.usual();
      table.put(
          reading.name(),
          new WorkedReading(
              rounded(reading.value(), decimals + 1),
              unit,
              rounded(reading.low(), decimals + 1),
              rounded(reading.high(), decimals + 1),
              reading.known().words(),
              usual.map(Style.Range::low).orElse(null),
              usual.map(Style.Range::high).orElse(null),
              usual.map(range -> catalogue.cited(range.source())).orElse(null),
              kind.map(ReadingKind::group).orElse(""),
              kind.map(ReadingKind::what).orElse("")));
    }
    return table;
  }

  // The catalogue keeps together what belongs together.
  private List<Reading> inOrder(List<Reading> readings) {
    return readings.stream()
        .sorted(Comparator.comparingInt(reading -> places.getOrDefault(reading.name(), -1)))
        .toList();
  }

  static double rounded(double value, int decimals) {
    return Amounts.rounded(value, decimals);
  }
}
