package crumbtrail.report;

import crumbtrail.formula.Formula;
import crumbtrail.formula.Level;
import crumbtrail.report.Report.FormulaRow;
import crumbtrail.report.Report.FormulaTable;
import crumbtrail.report.Report.Hydration;
import crumbtrail.sheet.BakeSheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Lays a worked formula out as a table. */
final class FormulaTables {
  private FormulaTables() {}

  /** The table, or null where the sheet has no flour to reckon on. */
  static FormulaTable of(BakeSheet sheet, Formula formula) {
    double flour = formula.flourGrams().value();
    if (flour <= 0) {
      return null;
    }
    List<FormulaRow> rows = new ArrayList<>();
    formula
        .percentByIngredient()
        .forEach(
            (name, level) ->
                rows.add(
                    new FormulaRow(
                        "",
                        name,
                        name,
                        ReportWriter.rounded(level.value() * flour / 100, 1),
                        ReportWriter.rounded(level.value(), 2))));
    formula.parts().forEach(part -> rows.addAll(rows(part)));
    return new FormulaTable(
        ReportWriter.rounded(flour, 1),
        percent(formula),
        new Hydration(
            level(formula, "hydration"),
            ReportWriter.rounded(formula.allWater().map(Level::value).orElse(0.0), 1)),
        ReportWriter.rounded(formula.doughGrams().value(), 1),
        rows,
        formula.contradictions().stream().map(Formula.Contradiction::what).toList());
  }

  // A part made ahead is laid out on its own flour, as bakers write it.
  private static List<FormulaRow> rows(Formula.Part part) {
    double flour = part.flourGrams().value();
    return part.percentByIngredient().entrySet().stream()
        .map(
            entry ->
                new FormulaRow(
                    part.name(),
                    entry.getKey(),
                    entry.getKey(),
                    ReportWriter.rounded(entry.getValue().value() * flour / 100, 1),
                    ReportWriter.rounded(entry.getValue().value(), 2)))
        .toList();
  }

  private static Map<String, Double> percent(Formula formula) {
    Map<String, Double> percent = new LinkedHashMap<>();
    formula
        .percentByKind()
        .forEach((kind, level) -> percent.put(kind, ReportWriter.rounded(level.value(), 2)));
    // What bakers reckon across kinds goes by the reading, which counts every source.
    for (String name : List.of("salt", "yeast", "sugar", "fat", "prefermented flour")) {
      formula
          .reading(name)
          .ifPresent(level -> percent.put(name, ReportWriter.rounded(level.value(), 2)));
    }
    formula
        .reading("hydration")
        .ifPresent(level -> percent.put("water", ReportWriter.rounded(level.value(), 2)));
    return percent;
  }

  private static double level(Formula formula, String reading) {
    return ReportWriter.rounded(formula.reading(reading).map(Level::value).orElse(0.0), 1);
  }
}
