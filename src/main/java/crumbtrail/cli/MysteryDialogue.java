package crumbtrail.cli;

import crumbtrail.cli.screen.Screen;
import crumbtrail.knowledge.Cause;
import crumbtrail.lessons.Clue;
import crumbtrail.lessons.Mysteries;
import crumbtrail.lessons.MysteryLoaf;
import crumbtrail.lessons.MysteryRound;
import crumbtrail.lessons.MysteryText;
import crumbtrail.lessons.Verdict;
import crumbtrail.lessons.Verdict.Observation;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.WordUtils;

/** A mystery loaf in the terminal: questions by number, the cause by letter or by name. */
final class MysteryDialogue {
  private static final int MOST_NAMES = 12;

  private final Mysteries mysteries;
  private final MysteryLoaf loaf;
  private final BufferedReader answers;
  private final Screen screen;
  private final PrintWriter out;
  private MysteryRound round;

  /**
   * @param answers what the learner types
   */
  MysteryDialogue(Mysteries mysteries, MysteryLoaf loaf, BufferedReader answers, Screen screen) {
    this.mysteries = mysteries;
    this.loaf = loaf;
    this.answers = answers;
    this.screen = screen;
    this.out = screen.out();
    this.round = MysteryRound.of(loaf);
  }

  void run() throws IOException {
    line("Mystery loaf " + loaf.seed() + ", " + loaf.level().word() + ": " + mysteries.bread(loaf));
    line("The baker says:");
    mysteries.complaint(loaf).forEach(words -> line("  " + words));
    clues();
    boolean open = true;
    while (open) {
      out.print("Number, n to name it, l for the list, q to give up > ");
      out.flush();
      String typed = answers.readLine();
      open = typed != null && taken(typed.strip().toLowerCase(Locale.ROOT));
      if (typed == null) {
        out.println();
        line("The input has ended.");
      }
    }
    out.flush();
  }

  // False once the round is over.
  private boolean taken(String typed) throws IOException {
    switch (typed) {
      case "q", "quit", "stop", "exit" -> {
        end("");
        return false;
      }
      case "?", "h", "help", "l", "list" -> {
        line(
            "Each number below asks one thing; what you learn narrows the suspects. n names the"
                + " cause when you think you know it, q gives up and shows it.");
        clues();
        return true;
      }
      case "n", "name" -> {
        return !named();
      }
      default -> {
        ask(typed);
        return true;
      }
    }
  }

  private void clues() {
    String stage = "";
    for (int place = 0; place < loaf.clues().size(); place++) {
      Clue clue = loaf.clues().get(place);
      if (!clue.stage().equals(stage)) {
        stage = clue.stage();
        line("");
        line(stage);
      }
      String done = round.asked().contains(clue.key()) ? "  (asked)" : "";
      line(String.format("%4d  %s%s", place + 1, clue.ask(), done));
    }
    line("");
  }

  private void ask(String typed) {
    int number = typed.matches("\\d{1,3}") ? Integer.parseInt(typed) : 0;
    if (number < 1 || number > loaf.clues().size()) {
      line(
          "Type a number of this list, 1 to "
              + loaf.clues().size()
              + ", or n or q. The list again: l.");
      return;
    }
    String key = loaf.clues().get(number - 1).key();
    round = round.ask(key);
    List<Observation> told = mysteries.told(round);
    told.stream()
        .filter(one -> one.clue().key().equals(key))
        .forEach(
            one -> {
              line(one.clue().ask() + ":");
              one.lines().forEach(words -> line("    " + words));
              line(MysteryText.taught(one.before(), one.after()));
              line("");
            });
  }

  // True once a cause was named.
  private boolean named() throws IOException {
    List<Cause> causes = mysteries.nameable(loaf);
    boolean few = !loaf.choices().isEmpty();
    if (few) {
      for (int place = 0; place < causes.size(); place++) {
        line(String.format("%4s  %s", (char) ('a' + place), causes.get(place).name()));
      }
    }
    while (true) {
      out.print(few ? "A letter, or Enter to go on asking > " : "A cause in words, or Enter > ");
      out.flush();
      String typed = answers.readLine();
      String said = typed == null ? "" : typed.strip().toLowerCase(Locale.ROOT);
      if (said.isEmpty() || said.equals("back")) {
        return typed == null;
      }
      if (said.equals("quit") || said.equals("q")) {
        end("");
        return true;
      }
      Optional<Cause> cause = meant(said, causes, few);
      if (cause.isPresent()) {
        end(cause.get().key());
        return true;
      }
    }
  }

  private Optional<Cause> meant(String typed, List<Cause> causes, boolean few) {
    if (few && typed.length() == 1) {
      int place = typed.charAt(0) - 'a';
      if (place >= 0 && place < causes.size()) {
        return Optional.of(causes.get(place));
      }
    }
    List<Cause> fitting =
        causes.stream()
            .filter(
                one ->
                    one.key().replace('-', ' ').contains(typed.replace('-', ' '))
                        || one.name().toLowerCase(Locale.ROOT).contains(typed))
            .toList();
    Optional<Cause> exact =
        fitting.stream()
            .filter(one -> one.key().equals(typed) || one.name().equalsIgnoreCase(typed))
            .findFirst();
    if (exact.isPresent() || fitting.size() == 1) {
      return exact.or(() -> Optional.of(fitting.get(0)));
    }
    line(fitting.isEmpty() ? "No cause is called so. Try one word: salt, proof, oven …" : "Which?");
    fitting.stream().limit(MOST_NAMES).forEach(one -> line("    " + one.name()));
    return Optional.empty();
  }

  private void end(String key) {
    line("");
    Verdict verdict = mysteries.verdict(round, key);
    screen.print(
        MysteryText.of(
            verdict,
            key.isEmpty() ? "" : mysteries.cause(key).name(),
            mysteries.cause(loaf.cause()),
            loaf.others().stream().map(other -> mysteries.cause(other).name()).toList(),
            screen.width()));
  }

  private void line(String words) {
    out.println(
        words.length() <= screen.width()
            ? words
            : WordUtils.wrap(words, screen.width(), "\n      ", false));
  }
}
