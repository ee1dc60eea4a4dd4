package crumbtrail.advice;

import crumbtrail.findings.Ranking;
import crumbtrail.findings.Reasoning;
import crumbtrail.findings.Weights;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import crumbtrail.workup.SheetWorkup;

/** All rules and one reasoning for tests of advice. */
abstract class AdviceKitchen {
  static final RuleBase RULES = RuleBase.bundled();

  // Of all tests that need it, and as long as they run.
  static final Reasoning REASONING =
      new Reasoning(
          new SheetWorkup(RULES.catalogue(), RULES.pantry()),
          RULES,
          new Ranking(RULES.catalogue(), Weights.of(RULES.catalogue())));

  static BakeSheet sheet(String json) {
    return SheetReader.read(json).sheet().orElseThrow();
  }

  static Knob knob(String key) {
    return new Knobs(RULES.catalogue(), RULES.pantry()).named(key).orElseThrow();
  }

  static double reading(BakeSheet sheet, String name) {
    return Knob.reading(REASONING.work(sheet), name).orElseThrow();
  }
}
