package crumbtrail.lessons;

import crumbtrail.advice.Knobs;
import crumbtrail.advice.PredictedSigns;
import crumbtrail.findings.Ranking;
import crumbtrail.findings.Reasoning;
import crumbtrail.findings.Weights;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.SignKind;
import crumbtrail.rules.RuleBase;
import crumbtrail.workup.SheetWorkup;

/** What every lesson needs: the pipeline, the knobs and the predicted signs. Immutable. */
final class Pipeline {
  private final RuleBase rules;
  private final SheetWorkup workups;
  private final Ranking ranking;
  private final Knobs knobs;
  private final PredictedSigns predicted;

  Pipeline(RuleBase rules) {
    this.rules = rules;
    this.workups = new SheetWorkup(rules.catalogue(), rules.pantry());
    this.ranking = new Ranking(rules.catalogue(), Weights.of(rules.catalogue()));
    this.knobs = new Knobs(rules.catalogue(), rules.pantry());
    this.predicted = new PredictedSigns(rules.catalogue());
  }

  /** For one thread; to be closed. */
  Reasoning open() {
    return new Reasoning(workups, rules, ranking);
  }

  Catalogue catalogue() {
    return rules.catalogue();
  }

  Knobs knobs() {
    return knobs;
  }

  PredictedSigns predicted() {
    return predicted;
  }

  String causeName(String key) {
    return catalogue().cause(key).map(Cause::name).orElse(key);
  }

  String signName(String key) {
    return catalogue().sign(key).map(SignKind::name).orElse(key);
  }
}
