package crumbtrail.handbook;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.rules.WrittenRule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** Coverage in words: for the terminal, and as a page. */
public final class CoverageWords {
  private CoverageWords() {}

  /** For the terminal: a line for each stage of the bake, and every rule that spoke nowhere. */
  public static String text(Coverage coverage) {
    StringBuilder text = new StringBuilder();
    text.append(sheets(coverage)).append("\n\n");
    for (List<String> row : rows(coverage)) {
      text.append("%-14s".formatted(row.get(0)));
      List<String> head = head(coverage);
      for (int cell = 1; cell < row.size(); cell++) {
        text.append("  ").append(row.get(cell)).append(" ").append(head.get(cell));
      }
      text.append("\n");
    }
    List<WrittenRule> silent = coverage.silent();
    text.append("\n");
    text.append(
        silent.isEmpty() ? "Every rule speaks somewhere.\n" : "Rules that spoke nowhere:\n");
    for (WrittenRule rule : silent) {
      text.append("  %s:%d: %s%n".formatted(rule.file(), rule.line(), rule.name()));
    }
    return text.toString();
  }

  /** As plain data: every rule with the sheets on which it spoke, by group. */
  public static Map<String, Object> json(Coverage coverage) {
    List<Map<String, Object>> rules = new ArrayList<>();
    for (Coverage.Fired fired : coverage.rules()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("rule", fired.rule().name());
      row.put("file", fired.rule().file());
      row.put("line", fired.rule().line());
      row.put("spokeOn", new TreeMap<>(fired.on()));
      rules.add(row);
    }
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("sheets", new TreeMap<>(coverage.sheets()));
    all.put("silent", coverage.silent().stream().map(WrittenRule::name).toList());
    all.put("rules", rules);
    return all;
  }

  static Leaf page(Catalogue catalogue, Coverage coverage) {
    Page page = new Page(catalogue, "Where each rule speaks");
    page.paragraph(
        """
        A rule that never speaks is either wrong or untested. So every rule has to speak on a sheet
        at least: on one of our own [cases](../../cases/README.md), on a real failure, or else on a
        probe, a small sheet made for nothing but this. Probes lie in
        `src/test/resources/rule-probes` and show only that the rule can be reached.""");
    page.paragraph(sheets(coverage));
    page.table(head(coverage), rows(coverage));
    page.paragraph(
        coverage.silent().isEmpty()
            ? "Every rule speaks somewhere."
            : "Rules that speak nowhere: " + coverage.silent().size() + ".");
    return page.paragraph("Rule by rule: `crumbtrail rules coverage --format json`.").end();
  }

  private static String sheets(Coverage coverage) {
    List<String> groups = new ArrayList<>();
    new TreeMap<>(coverage.sheets())
        .forEach((group, number) -> groups.add(number + " of " + group));
    return "%d rules held against the sheets: %s."
        .formatted(coverage.rules().size(), String.join(", ", groups));
  }

  private static List<String> head(Coverage coverage) {
    List<String> head = new ArrayList<>(List.of("stage", "rules"));
    new TreeSet<>(coverage.sheets().keySet()).forEach(group -> head.add("speak on " + group));
    head.add("speak nowhere");
    return head;
  }

  private static List<List<String>> rows(Coverage coverage) {
    Map<String, List<Coverage.Fired>> byStage = new TreeMap<>();
    for (Coverage.Fired fired : coverage.rules()) {
      byStage.computeIfAbsent(stage(fired.rule()), key -> new ArrayList<>()).add(fired);
    }
    List<List<String>> rows = new ArrayList<>();
    byStage.forEach((stage, rules) -> rows.add(row(stage, rules, coverage)));
    rows.add(row("all", coverage.rules(), coverage));
    return rows;
  }

  private static List<String> row(String name, List<Coverage.Fired> rules, Coverage coverage) {
    List<String> row = new ArrayList<>(List.of(name, String.valueOf(rules.size())));
    for (String group : new TreeSet<>(coverage.sheets().keySet())) {
      row.add(String.valueOf(rules.stream().filter(rule -> rule.times(group) > 0).count()));
    }
    row.add(String.valueOf(rules.stream().filter(rule -> rule.on().isEmpty()).count()));
    return row;
  }

  // Rule files are named stage first.
  private static String stage(WrittenRule rule) {
    String file = rule.file().substring(rule.file().lastIndexOf('/') + 1);
    return file.replaceFirst("[-.].*", "");
  }
}
