package crumbtrail.web;

import crumbtrail.report.Reply;
import crumbtrail.report.Report;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The questions most worth answering, to be answered in place.
 *
 * @param questions best first
 * @param sheet the bake sheet that goes with an answer; null where no server would take it
 * @param passed keys of what was asked before, parted by commas
 * @param answered what the last answer did, in a sentence, or empty
 * @param moved the causes that it moved
 */
public record AskView(
    List<Ask> questions, String sheet, String passed, String answered, List<Moved> moved) {
  private static final int MOVED = 5;

  /**
   * A question.
   *
   * @param about what it is about, to be sent with the answer
   * @param how how to find out, and what that costs
   * @param amount whether the answer is an amount
   * @param typed an amount that could not be used
   * @param fault what is wrong with it, or empty
   */
  public record Ask(
      String about, String question, String how, boolean amount, String typed, String fault) {}

  /** A cause that moved. */
  public record Moved(String name, String from, String to) {}

  static AskView of(Report report, Held held) {
    Texts t = held.texts();
    List<Moved> moved =
        held.taken().map(Reply.Taken::moved).orElse(List.of()).stream()
            .limit(MOVED)
            .map(
                one ->
                    new Moved(
                        t.name(one.name()),
                        t.number(ReportWords.percent(one.before())),
                        t.number(ReportWords.percent(one.after()))))
            .toList();
    return new AskView(
        report.askNext().stream().map(one -> ask(one, held)).toList(),
        held.ahead() ? null : held.sheet(),
        String.join(",", new TreeSet<>(held.passed())),
        held.taken().map(taken -> answered(taken, held, moved)).orElse(""),
        moved);
  }

  private static String answered(Reply.Taken taken, Held held, List<Moved> moved) {
    Texts t = held.texts();
    if (!taken.problems().isEmpty()) {
      return t.of("ask.unusable") + " " + FormPage.sentence(taken.problems().get(0));
    }
    if (held.reply().filter(reply -> reply.said().isBlank()).isPresent()) {
      return t.of("ask.open");
    }
    return t.of(moved.isEmpty() ? "ask.moves.nothing" : "ask.moves");
  }

  private static Ask ask(Report.NextQuestion one, Held held) {
    Optional<Reply> refused =
        held.reply()
            .filter(reply -> reply.about().equals(one.about()))
            .filter(reply -> held.taken().filter(t -> !t.problems().isEmpty()).isPresent());
    return new Ask(
        one.about(),
        one.question(),
        one.how() + " (" + one.cost() + ")",
        one.answer().equals("amount"),
        refused.map(Reply::said).orElse(""),
        refused
            .map(reply -> FormPage.sentence(held.taken().orElseThrow().problems().get(0)))
            .orElse(""));
  }
}
