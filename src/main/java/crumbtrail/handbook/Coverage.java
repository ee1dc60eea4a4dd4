package crumbtrail.handbook;

import crumbtrail.rules.Evidence;
import crumbtrail.rules.Facts;
import crumbtrail.rules.RuleBase;
import crumbtrail.rules.RuleBook;
import crumbtrail.rules.WrittenRule;
import crumbtrail.workup.SheetWorkup;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Which rules spoke on which sheets.
 *
 * @param rules every rule, in the order of the rule book
 * @param sheets how many sheets were judged, by group
 */
public record Coverage(List<Fired> rules, Map<String, Integer> sheets) {
  public Coverage {
    rules = List.copyOf(rules);
    sheets = Map.copyOf(sheets);
  }

  /**
   * One rule and where it spoke.
   *
   * @param rule the rule
   * @param on names of the sheets, by group
   */
  public record Fired(WrittenRule rule, Map<String, List<String>> on) {
    public Fired {
      on = Map.copyOf(on);
    }

    /** On how many sheets of a group it spoke. */
    public int times(String group) {
      return on.getOrDefault(group, List.of()).size();
    }
  }

  /**
   * Judges the sheets.
   *
   * @param base the compiled rules
   * @param book the same rules as written
   * @param sheets the sheets
   */
  public static Coverage of(RuleBase base, RuleBook book, List<SheetFiles.Named> sheets) {
    SheetWorkup workups = new SheetWorkup(base.catalogue(), base.pantry());
    Map<String, Map<String, List<String>>> fired = new HashMap<>();
    Map<String, Integer> groups = new HashMap<>();
    for (SheetFiles.Named sheet : sheets) {
      groups.merge(sheet.group(), 1, Integer::sum);
      TreeSet<String> rules = new TreeSet<>();
      for (Evidence said : base.run(Facts.of(workups.work(sheet.sheet())))) {
        rules.add(said.rule());
      }
      for (String rule : rules) {
        fired
            .computeIfAbsent(rule, one -> new HashMap<>())
            .computeIfAbsent(sheet.group(), one -> new ArrayList<>())
            .add(sheet.name());
      }
    }
    return new Coverage(
        book.rules().stream()
            .map(rule -> new Fired(rule, fired.getOrDefault(rule.name(), Map.of())))
            .toList(),
        groups);
  }

  /** The rules that spoke on no sheet. */
  public List<WrittenRule> silent() {
    return rules.stream().filter(fired -> fired.on().isEmpty()).map(Fired::rule).toList();
  }
}
