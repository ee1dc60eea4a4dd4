package crumbtrail.report;

import crumbtrail.findings.Answers;
import crumbtrail.findings.Findings;
import crumbtrail.findings.NextQuestions;
import crumbtrail.findings.Reasoning;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.report.Report.NextQuestion;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.BakeSheet.Degree;
import crumbtrail.sheet.Problem;
import crumbtrail.sheet.Reading;
import crumbtrail.workup.Workup;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Asks about one bake, question by question. Every answer is put into the sheet as if the baker had
 * written it there, and the whole pipeline is run again.
 *
 * <p>Used by one thread. Close it when done.
 */
public final class Enquiry implements AutoCloseable {
  private final Catalogue catalogue;
  private final Reasoning reasoning;
  private final Set<String> passed = new HashSet<>();
  private final Deque<Step> steps = new ArrayDeque<>();
  private BakeSheet sheet;
  private Workup workup;
  private Findings findings;
  private List<NextQuestion> questions;

  Enquiry(Catalogue catalogue, Reasoning reasoning, BakeSheet sheet) {
    this.catalogue = catalogue;
    this.reasoning = reasoning;
    take(sheet);
  }

  private record Step(BakeSheet before, String about) {}

  /** A cause and how likely it now is, 0 to 1. */
  public record Standing(String name, double probability) {}

  /** The sheet with all answers so far. */
  public BakeSheet sheet() {
    return sheet;
  }

  /** The likeliest causes as they now stand. */
  public List<Standing> standings(int most) {
    return findings.ranked().stream()
        .limit(most)
        .map(one -> new Standing(one.cause().name(), one.probability()))
        .toList();
  }

  /** The question most worth asking; empty where none would teach anything. */
  public Optional<NextQuestion> next() {
    if (questions == null) {
      questions =
          NextQuestions.of(reasoning, sheet, workup, findings, passed, Integer.MAX_VALUE).stream()
              .map(Outlook::question)
              .toList();
    }
    return questions.stream().filter(one -> !passed.contains(one.about())).findFirst();
  }

  /** Passes a question over, not to come back to it. */
  public void pass(String about) {
    steps.push(new Step(sheet, about));
    passed.add(about);
  }

  /**
   * Takes the last answer back, or the last passing over; its question is then open again.
   *
   * @return false where there was none
   */
  public boolean back() {
    if (steps.isEmpty()) {
      return false;
    }
    Step last = steps.pop();
    passed.remove(last.about());
    take(last.before());
    return true;
  }

  /**
   * Takes a yes or no.
   *
   * @param degree how marked, of a sign that was seen
   */
  public void answer(String about, boolean yes, Optional<Degree> degree) {
    pass(about);
    take(Answers.with(sheet, catalogue, about, yes, degree));
  }

  /**
   * Takes an amount.
   *
   * @return what is wrong with the text; the sheet is then as it was, and the question still open
   */
  public List<Problem> answer(String about, String amount) {
    Reading reading = Answers.with(sheet, catalogue, about, amount);
    reading
        .sheet()
        .ifPresent(
            altered -> {
              pass(about);
              take(altered);
            });
    return reading.problems();
  }

  private void take(BakeSheet altered) {
    sheet = altered;
    workup = reasoning.work(altered);
    findings = reasoning.judge(workup);
    questions = null;
  }

  @Override
  public void close() {
    reasoning.close();
  }
}
