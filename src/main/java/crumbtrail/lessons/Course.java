package crumbtrail.lessons;

import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.KnobKind;
import crumbtrail.knowledge.LessonKind;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import java.util.List;

/** The course: lessons in order, each with a cause, a bake to vary and a mystery loaf. */
public final class Course {
  private final Pipeline pipeline;

  /**
   * @param rules the rule base
   */
  public Course(RuleBase rules) {
    this(new Pipeline(rules));
  }

  Course(Pipeline pipeline) {
    this.pipeline = pipeline;
  }

  /**
   * A lesson made ready.
   *
   * @param number from 1
   * @param kind as the file has it
   * @param cause what it teaches
   * @param sheet the bake to vary
   * @param turn the knob and its range
   */
  public record Lesson(int number, LessonKind kind, Cause cause, BakeSheet sheet, Turn turn) {}

  /** All lessons in order. */
  public List<LessonKind> all() {
    return pipeline.catalogue().knowledge().lessons();
  }

  /**
   * A lesson by its number.
   *
   * @throws IllegalArgumentException if there is no such lesson, or it does not hold together
   */
  public Lesson lesson(int number) {
    if (number < 1 || number > all().size()) {
      throw new IllegalArgumentException("there is no lesson " + number);
    }
    LessonKind kind = all().get(number - 1);
    KnobKind knob =
        pipeline
            .knobs()
            .named(kind.turn())
            .orElseThrow(() -> new IllegalArgumentException("no knob " + kind.turn()))
            .kind();
    return new Lesson(
        number,
        kind,
        pipeline
            .catalogue()
            .cause(kind.cause())
            .orElseThrow(() -> new IllegalArgumentException("no cause " + kind.cause())),
        CaseShelf.sheet(kind.sheet())
            .orElseThrow(() -> new IllegalArgumentException("no bake " + kind.sheet())),
        Turn.read(knob, kind.range())
            .turn()
            .orElseThrow(() -> new IllegalArgumentException("no range " + kind.range())));
  }

  /** What moves as the lesson's knob is turned. */
  public Variation variation(Lesson lesson) {
    return new Vary(pipeline).along(lesson.sheet(), lesson.turn(), Vary.AS_USUAL);
  }

  /** The mystery loaf that goes with a lesson. */
  public MysteryLoaf mystery(Lesson lesson) {
    return new Mysteries(pipeline).loaf(lesson.kind().seed(), lesson.kind().level());
  }
}
