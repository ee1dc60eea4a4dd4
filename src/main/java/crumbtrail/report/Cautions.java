package crumbtrail.report;

import crumbtrail.findings.Findings;
import crumbtrail.knowledge.Caution;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.FormulaLine;
import crumbtrail.workup.Heard;
import crumbtrail.workup.Workup;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** Chooses the cautions that a bake calls for. */
final class Cautions {
  /** How many of the likeliest causes can call for a caution. */
  private static final int LIKELIEST = 3;

  private Cautions() {}

  static List<String> of(Knowledge knowledge, BakeSheet sheet, Workup workup, Findings findings) {
    Set<String> facts = facts(workup, findings);
    String ingredients =
        Stream.concat(
                sheet.formula().stream(),
                sheet.preferments().stream().flatMap(part -> part.formula().stream()))
            .map(FormulaLine::written)
            .reduce("", (all, line) -> all + " " + line)
            .toLowerCase(Locale.ROOT);
    return knowledge.cautions().stream()
        .filter(
            caution -> caution.when().stream().anyMatch(when -> holds(when, facts, ingredients)))
        .map(Caution::words)
        .toList();
  }

  private static boolean holds(String when, Set<String> facts, String ingredients) {
    if (when.startsWith("ingredient ")) {
      return ingredients.contains(when.substring("ingredient ".length()));
    }
    return facts.contains(when);
  }

  private static Set<String> facts(Workup workup, Findings findings) {
    Set<String> facts = new HashSet<>(Set.of("always"));
    workup.heard().signs().stream()
        .filter(Heard.Sign::seen)
        .forEach(sign -> facts.add("sign " + sign.key()));
    workup
        .heard()
        .circumstances()
        .forEach(circumstance -> facts.add("circumstance " + circumstance.key()));
    workup.readings().stream()
        .filter(reading -> reading.value() > 0)
        .forEach(reading -> facts.add("reading " + reading.name()));
    findings.ranked().stream()
        .limit(LIKELIEST)
        .forEach(finding -> facts.add("cause " + finding.cause().key()));
    return facts;
  }
}
