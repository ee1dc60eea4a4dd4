package crumbtrail.lessons;

import crumbtrail.advice.Knob;
import crumbtrail.findings.Reasoning;
import crumbtrail.picture.Shape;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.Workup;
import java.util.Optional;

/** One bake on the bench, its signs put aside, to be tried at other settings. */
final class Bench {
  private final Pipeline pipeline;
  private final Reasoning reasoning;
  private final BakeSheet sheet;
  private final Workup workup;

  Bench(Pipeline pipeline, Reasoning reasoning, BakeSheet sheet) {
    this.pipeline = pipeline;
    this.reasoning = reasoning;
    this.sheet = sheet.unseen();
    this.workup = reasoning.work(this.sheet);
  }

  String title() {
    return sheet.title();
  }

  /** The kind of loaf that it makes. */
  Shape shape() {
    return pipeline.shape(workup, sheet);
  }

  /** Where the bake stands on a knob. */
  Optional<Double> own(Knob knob) {
    return knob.value(sheet, workup).filter(Double::isFinite);
  }

  /** Whether turning the knob changes anything. */
  boolean turns(Knob knob) {
    return knob.turns(sheet, workup);
  }

  /** The bake at a setting. */
  Stand at(Knob knob, double setting) {
    Workup turned = reasoning.work(knob.turned(sheet, workup, setting));
    return new Stand(setting, turned, reasoning.foresee(turned));
  }

  /** The same bench with one knob left at a setting. */
  Bench turned(Knob knob, double setting) {
    return new Bench(pipeline, reasoning, knob.turned(sheet, workup, setting));
  }

  Pipeline pipeline() {
    return pipeline;
  }
}
