package crumbtrail.lessons;

import crumbtrail.advice.Knobs;
import crumbtrail.advice.PredictedSigns;
import crumbtrail.findings.Findings;
import crumbtrail.findings.Ranking;
import crumbtrail.findings.Reasoning;
import crumbtrail.findings.Weights;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.SignKind;
import crumbtrail.picture.Shape;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.SheetWorkup;
import crumbtrail.workup.Workup;

/** What every lesson needs: the pipeline, the knobs and the predicted signs. Immutable. */
final class Pipeline {
  private final RuleBase rules;
  private final SheetWorkup workups;
  private final Weights weights;
  private final Ranking ranking;
  private final Knobs knobs;
  private final PredictedSigns predicted;

  Pipeline(RuleBase rules) {
    this.rules = rules;
    this.workups = new SheetWorkup(rules.catalogue(), rules.pantry());
    this.weights = Weights.of(rules.catalogue());
    this.ranking = new Ranking(rules.catalogue(), weights);
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

  /** Which cause it was, as far as a sheet tells. */
  Suspects suspects(Reasoning reasoning, BakeSheet sheet) {
    Workup workup = reasoning.work(sheet);
    return suspects(workup, reasoning.judge(workup));
  }

  Suspects suspects(Workup workup, Findings findings) {
    return new Suspects(catalogue().knowledge().causes(), weights, findings, workup.style().tags());
  }

  /** The kind of loaf to be drawn. */
  Shape shape(Workup workup, BakeSheet sheet) {
    String words =
        workup.style().name()
            + " "
            + sheet.style()
            + " "
            + sheet.process().vessel().kind().orElse("")
            + (sheet.process().vessel().lid().orElse(false) ? " lid" : "");
    return Shape.fitting(workup.style().tags(), words);
  }
}
