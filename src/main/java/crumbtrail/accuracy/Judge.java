package crumbtrail.accuracy;

import crumbtrail.findings.Beforehand;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.rules.Facts;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.Heard;
import crumbtrail.workup.SheetWorkup;
import crumbtrail.workup.Workup;
import java.util.stream.Collectors;

/** Runs the rules over sheets and keeps what they say. */
final class Judge {
  private final RuleBase rules;
  private final SheetWorkup workups;

  Judge(RuleBase rules) {
    this.rules = rules;
    this.workups = new SheetWorkup(rules.catalogue(), rules.pantry());
  }

  Catalogue catalogue() {
    return rules.catalogue();
  }

  Judged judge(BakeSheet sheet) {
    return judged(workups.work(sheet));
  }

  /** What the rules say before anybody has seen the loaf. */
  Judged ahead(BakeSheet sheet) {
    return judged(Beforehand.of(rules.catalogue(), workups.work(sheet)));
  }

  private Judged judged(Workup workup) {
    return new Judged(
        rules.run(Facts.of(workup)),
        workup.heard().signs().stream()
            .filter(Heard.Sign::seen)
            .map(Heard.Sign::key)
            .collect(Collectors.toSet()),
        workup.style().tags(),
        workup.heard().notUnderstood());
  }

  /** The key by which our catalogue knows a cause. */
  String canonical(String cause) {
    return rules.catalogue().cause(cause).map(Cause::key).orElse(cause);
  }
}
