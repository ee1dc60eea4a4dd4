package crumbtrail.advice;

import crumbtrail.findings.Ranking;
import crumbtrail.findings.Reasoning;
import crumbtrail.findings.Weights;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import crumbtrail.workup.SheetWorkup;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** All rules and one reasoning for tests of advice. */
abstract class AdviceKitchen {
  static final RuleBase RULES = RuleBase.bundled();

  /** One change at a time, all else as it falls. */
  static final Wish ONE_CHANGE =
      new Wish(
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalInt.empty(),
          Optional.empty(),
          List.of(),
          true);

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
