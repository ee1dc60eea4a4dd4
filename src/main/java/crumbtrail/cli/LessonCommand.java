package crumbtrail.cli;

import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.LessonKind;
import crumbtrail.lessons.Course;
import crumbtrail.lessons.VariationText;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.apache.commons.text.WordUtils;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The course, or one lesson of it. */
@Command(
    name = "lesson",
    mixinStandardHelpOptions = true,
    description = "The lessons in order; with a number, that lesson.",
    footer = {"", "Examples:", "  crumbtrail lesson", "  crumbtrail lesson 1"})
final class LessonCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin RulesOption rules;

  @Parameters(paramLabel = "N", arity = "0..1", description = "number of a lesson")
  Integer number;

  private PrintWriter out;
  private int width;

  @Override
  public Integer call() throws Exception {
    out = spec.commandLine().getOut();
    width = CrumbtrailCommand.screen(spec).width();
    Course course = new Course(Rules.ruleBase(rules, spec.commandLine().getErr()));
    List<LessonKind> all = course.all();
    if (number == null) {
      for (int place = 0; place < all.size(); place++) {
        out.println(String.format("%3d  %s", place + 1, all.get(place).title()));
      }
      out.println();
      out.println("Take one with: crumbtrail lesson 1");
    } else if (number < 1 || number > all.size()) {
      throw new BadInput(
          List.of("There is no lesson " + number + ". The lessons are 1 to " + all.size() + "."));
    } else {
      show(course, course.lesson(number));
    }
    out.flush();
    return 0;
  }

  private void show(Course course, Course.Lesson lesson) {
    LessonKind kind = lesson.kind();
    Cause cause = lesson.cause();
    paragraph("Lesson " + lesson.number() + ": " + kind.title());
    out.println();
    paragraph(cause.what() + " " + cause.mechanism());
    paragraph("How to tell it: " + cause.tell());
    paragraph("What helps: " + cause.change());
    out.println();
    paragraph(kind.look());
    out.println();
    out.print(VariationText.of(course.variation(lesson), width));
    paragraph(
        "Turn it yourself, on a bake of yours: crumbtrail vary sheet.json --"
            + kind.turn()
            + " "
            + kind.range().replace(" ", ""));
    paragraph(
        "A mystery loaf to end with: crumbtrail mystery --level "
            + kind.level().word()
            + " --seed "
            + kind.seed());
  }

  private void paragraph(String words) {
    out.println(WordUtils.wrap(words.strip(), width, "\n", false));
  }
}
