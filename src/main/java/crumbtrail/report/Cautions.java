package crumbtrail.report;

import crumbtrail.findings.Findings;
import crumbtrail.knowledge.Allergen;
import crumbtrail.knowledge.Caution;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.pantry.Pantry;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.FormulaLine;
import crumbtrail.workup.Heard;
import crumbtrail.workup.Workup;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The cautions of the catalogue that something on a sheet calls for. */
final class Cautions {
  /** How many of the likely causes may call for a caution, and how likely they must be: ours. */
  private static final int LIKELIEST = 3;

  private static final double LIKELY = 0.1;

  private final Set<String> facts = new HashSet<>(Set.of("always"));
  private final Map<String, List<String>> texts;
  private final List<Allergen> allergens;
  private final Optional<String> perishable;

  private Cautions(
      Knowledge knowledge, Pantry pantry, BakeSheet sheet, Workup workup, Findings findings) {
    BakeProcess process = sheet.process();
    this.texts =
        Map.of(
            "ingredient", Allergens.lines(sheet).map(FormulaLine::written).toList(),
            "vessel", process.vessel().kind().stream().toList(),
            "keeping", process.storage().place().stream().toList(),
            "remark", process.sentences());
    this.allergens = Allergens.in(knowledge, pantry, sheet);
    this.perishable = WarmPerishable.of(pantry, sheet);
    gather(workup, findings);
  }

  static List<String> of(
      Knowledge knowledge, Pantry pantry, BakeSheet sheet, Workup workup, Findings findings) {
    Cautions cautions = new Cautions(knowledge, pantry, sheet, workup, findings);
    return knowledge.cautions().stream()
        .filter(caution -> caution.when().stream().anyMatch(cautions::holds))
        .map(Caution::words)
        .map(cautions::filled)
        .toList();
  }

  private void gather(Workup workup, Findings findings) {
    if (!allergens.isEmpty()) {
      facts.add("allergens");
    }
    if (perishable.isPresent()) {
      facts.add("warm perishable");
    }
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
        .filter(finding -> finding.probability() >= LIKELY)
        .forEach(finding -> facts.add("cause " + finding.cause().key()));
  }

  private boolean holds(String when) {
    int space = when.indexOf(' ');
    List<String> searched = space < 0 ? null : texts.get(when.substring(0, space));
    return searched == null
        ? facts.contains(when)
        : searched.stream().anyMatch(text -> WholeWords.holds(text, when.substring(space + 1)));
  }

  private String filled(String words) {
    return words
        .replace("{allergens}", Allergens.told(allergens))
        .replace("{perishable}", perishable.orElse("This dough is perishable"));
  }
}
