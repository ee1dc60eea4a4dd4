package crumbtrail.cli.interview;

import crumbtrail.cli.interview.Question.Kind;
import crumbtrail.cli.screen.Screen;
import crumbtrail.report.SheetEcho;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Problem;
import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The talk by which a bake sheet is written: question by question, any of which may be left out,
 * each answer said back as it was understood. What was typed is handed on after every answer.
 */
public final class Interview {
  private static final Pattern AT_LINE = Pattern.compile(".* line (\\d+)(?:, .*)?");

  /** Told of the sheet as it stands after each answer. */
  @FunctionalInterface
  public interface Keeper {
    void keep(String sheet) throws IOException;
  }

  /** How a talk ended. */
  public enum End {
    /** There is a whole bake sheet. */
    SHEET,
    /** Something was typed, but neither a recipe nor anything seen. */
    TOO_LITTLE,
    /** Nothing was typed. */
    NOTHING
  }

  private enum Move {
    ON,
    BACK,
    SKIP,
    DONE
  }

  private final Talk talk;
  private final Supplier<SheetEcho> echo;
  private final Keeper keeper;
  private Draft draft = Draft.empty();
  private String refused = "";
  private boolean ended;

  /**
   * @param echo waited for when the first answer is to be said back
   * @param typed whether a person types the answers
   */
  public Interview(
      Supplier<SheetEcho> echo,
      BufferedReader answers,
      boolean typed,
      Screen screen,
      Keeper keeper) {
    this.echo = echo;
    this.talk = new Talk(answers, typed, screen);
    this.keeper = keeper;
  }

  /** Asks until all is asked, the baker is done, or the input ends. */
  public End run() throws IOException {
    talk.say(
        "Tell of one bake, as far as you know it. Enter leaves a question out. Also: back, skip"
            + " (the rest of this part), done, ? for help.");
    int at = 0;
    String stage = "";
    while (at < Questions.ALL.size()) {
      Question question = Questions.ALL.get(at);
      if (!question.stage().equals(stage)) {
        stage = question.stage();
        talk.heading(stage);
      }
      at =
          switch (ask(question)) {
            case ON -> at + 1;
            case BACK -> Math.max(0, at - 1);
            case SKIP -> next(at);
            case DONE -> Questions.ALL.size();
          };
    }
    if (draft.isEmpty()) {
      return End.NOTHING;
    }
    if (draft.of(Questions.SIGNS).isEmpty() && !ended) {
      talk.heading(Questions.SIGNS.stage());
      talk.say("You have not said what you saw; the causes are found by that.");
      ask(Questions.SIGNS);
    }
    return draft.sheet().isPresent() ? End.SHEET : End.TOO_LITTLE;
  }

  // The first question of the next stage.
  private static int next(int at) {
    String stage = Questions.ALL.get(at).stage();
    int next = at;
    while (next < Questions.ALL.size() && Questions.ALL.get(next).stage().equals(stage)) {
      next++;
    }
    return next;
  }

  private Move ask(Question question) throws IOException {
    talk.say(question.ask() + " For example: " + question.example());
    if (question.many()) {
      talk.say("An empty line ends it.");
    }
    List<String> old = draft.of(question);
    if (!old.isEmpty()) {
      talk.say("Now: " + String.join(" / ", old) + ". Enter keeps it; none takes it away.");
    }
    refused = "";
    while (true) {
      Optional<String> line = talk.line();
      if (line.isEmpty()) {
        ended = true;
        keepRefused();
        return Move.DONE;
      }
      String said = line.get();
      switch (said.toLowerCase(Locale.ROOT)) {
        case "" -> {
          return Move.ON;
        }
        case "back" -> {
          return Move.BACK;
        }
        case "skip" -> {
          return Move.SKIP;
        }
        case "done", "quit" -> {
          return Move.DONE;
        }
        case "?", "help" -> help(question);
        case "keep" -> {
          keepRefused();
          return Move.ON;
        }
        default -> {
          if (said.equalsIgnoreCase("none") && !old.isEmpty()) {
            take(question, List.of());
            return Move.ON;
          }
          if (answered(question, said)) {
            return Move.ON;
          }
        }
      }
    }
  }

  // An answer that cannot be read where it was asked for may still tell something.
  private void keepRefused() throws IOException {
    if (!refused.isEmpty()) {
      draft = draft.remarking(refused);
      keeper.keep(draft.text());
      refused = "";
    }
  }

  private void help(Question question) {
    talk.say("Type for example: " + question.example());
    if (question.kind() == Kind.STYLE) {
      talk.say("Breads I know: " + String.join(", ", new TreeSet<>(echo.get().styles())) + ".");
    }
    if (question.kind() == Kind.LINE || question.kind() == Kind.STAGES) {
      talk.say("Amounts carry their unit: 25 C or 77 F, 90 min or 1 1/2 h, about 26 C, overnight.");
    }
    talk.say(
        "Enter leaves it out, back goes to the question before, skip passes over the rest of this"
            + " part, done ends the questions. What you have answered is kept.");
  }

  // False where the question is to be asked again.
  private boolean answered(Question question, String first) throws IOException {
    List<String> lines = question.many() ? talk.linesAfter(first) : List.of(first);
    return switch (question.kind()) {
      case RECIPE -> recipe(question, lines);
      case STYLE -> style(question, first);
      case WORDS -> {
        new Echoes(echo.get(), talk).words(question, lines);
        yield take(question, lines);
      }
      case YES_NO -> {
        if (!first.matches("(?i)y|yes|n|no")) {
          talk.say("y or n, or Enter if you do not know.");
          yield false;
        }
        yield take(question, List.of(first.toLowerCase(Locale.ROOT)));
      }
      case LINE, STAGES -> usable(question, lines);
    };
  }

  private boolean usable(Question question, List<String> lines) throws IOException {
    List<Problem> problems = Draft.problems(question, lines);
    if (problems.isEmpty()) {
      if (question.kind() == Kind.STAGES) {
        Optional<BakeSheet> read = Draft.alone(question, lines);
        read.ifPresent(sheet -> new Echoes(echo.get(), talk).stages(question, sheet));
      }
      return take(question, lines);
    }
    problems.forEach(this::say);
    talk.say("Type it another way; Enter leaves it out; keep puts the words with the remarks.");
    refused = String.join(", ", lines);
    return false;
  }

  private void say(Problem problem) {
    talk.say("  ", problem.what() + ": " + problem.remedy() + ".");
  }

  private boolean style(Question question, String said) throws IOException {
    Optional<String> known = echo.get().style(said);
    if (known.isPresent()) {
      talk.say("  taken as: ", known.get());
      return take(question, List.of(said));
    }
    if (said.chars().anyMatch(Character::isDigit)) {
      talk.say(
          "That has amounts in it, so it is no name of a bread. The recipe is asked for next: type"
              + " it there. Here the kind of bread, or Enter.");
      return false;
    }
    String near = echo.get().nearestStyle(said);
    talk.say(
        "I know no bread of that name. The nearest is: "
            + near
            + ". Take it? y, or Enter to"
            + " keep your words.");
    boolean yes = talk.line().orElse("").matches("(?i)y|yes");
    return take(question, List.of(yes ? near : said));
  }

  // A line that cannot be used must not spoil the sheet: it is kept as a remark.
  private boolean recipe(Question question, List<String> lines) throws IOException {
    List<String> usable = new ArrayList<>(lines);
    for (Problem problem : Draft.problems(question, lines)) {
      Matcher at = AT_LINE.matcher(problem.where());
      if (at.matches()) {
        int line = Integer.parseInt(at.group(1)) - 1;
        talk.say(
            "  cannot be used: ",
            "\""
                + lines.get(line)
                + "\". "
                + problem.what()
                + ": "
                + problem.remedy()
                + ". Kept as a remark.");
        draft = draft.remarking(lines.get(line));
        usable.set(line, "");
      } else {
        say(problem);
        return false;
      }
    }
    new Echoes(echo.get(), talk).recipe(usable);
    talk.say("To type the recipe anew: back.");
    return take(question, usable);
  }

  private boolean take(Question question, List<String> lines) throws IOException {
    draft = draft.with(question, lines);
    keeper.keep(draft.text());
    return true;
  }
}
