package crumbtrail.report;

import crumbtrail.findings.Finding;
import crumbtrail.findings.Findings;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.CircumstanceKind;
import crumbtrail.knowledge.ReadingKind;
import crumbtrail.knowledge.SignKind;
import crumbtrail.knowledge.Style;
import crumbtrail.report.Report.EvidenceLine;
import crumbtrail.report.Report.RankedCause;
import crumbtrail.report.Report.Understood;
import crumbtrail.report.Report.WorkedReading;
import crumbtrail.rules.Evidence;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.Heard;
import crumbtrail.workup.Reading;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts findings into the words and shape of the report. */
final class ReportWriter {
  private final Catalogue catalogue;
  private final String version;
  private final FactWords words;

  ReportWriter(Catalogue catalogue, String version) {
    this.catalogue = catalogue;
    this.version = version;
    this.words = new FactWords(catalogue);
  }

  Report write(BakeSheet sheet, Workup workup, Findings findings) {
    return new Report(
        sheet.title(),
        workup.style().name(),
        findings.ranked().stream().map(this::cause).toList(),
        findings.together(),
        findings.unexplained(),
        workup.heard().notUnderstood(),
        understood(workup.heard()),
        workup.assumptions(),
        FormulaTables.of(sheet, workup.formula()),
        readings(workup.readings()),
        CourseTables.of(workup),
        Cautions.of(catalogue.knowledge(), sheet, workup, findings),
        version);
  }

  private RankedCause cause(Finding finding) {
    Cause cause = finding.cause();
    return new RankedCause(
        cause.key(),
        cause.name(),
        cause.stage(),
        rounded(finding.probability(), 4),
        cause.what(),
        cause.change(),
        cause.tell(),
        finding.evidence().stream().map(this::evidence).toList(),
        finding.explains(),
        cause.sources().stream().map(catalogue::cited).toList());
  }

  private EvidenceLine evidence(Evidence evidence) {
    return new EvidenceLine(
        evidence.rule(),
        evidence.strand(),
        rounded(evidence.decibans(), 1),
        evidence.lesson(),
        evidence.facts().stream().map(words::of).distinct().toList(),
        catalogue.cited(evidence.source()));
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
    List<String> names = catalogue.knowledge().readings().stream().map(ReadingKind::name).toList();
    return readings.stream()
        .sorted(Comparator.comparingInt(reading -> names.indexOf(reading.name())))
        .toList();
  }

  static double rounded(double value, int decimals) {
    double scale = Math.pow(10, decimals);
    return Math.round(value * scale) / scale;
  }
}
