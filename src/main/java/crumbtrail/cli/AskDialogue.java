package crumbtrail.cli;

import crumbtrail.cli.screen.Screen;
import crumbtrail.report.Enquiry;
import crumbtrail.report.Enquiry.Standing;
import crumbtrail.report.Report.NextQuestion;
import crumbtrail.sheet.BakeSheet.Degree;
import crumbtrail.sheet.Problem;
import crumbtrail.sheet.SheetWriter;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.text.WordUtils;

/**
 * A talk in the terminal: the likeliest causes, the question most worth asking, the answer, how the
 * causes moved, and so on until the baker stops, the input ends, or no question would teach much.
 */
final class AskDialogue {
  private static final int SHOWN = 3;

  private static final Set<String> STOP = Set.of("q", "quit", "stop", "exit");
  private static final Set<String> PASS =
      Set.of("", "d", "don't know", "dont know", "do not know", "skip", "not sure");
  private static final Set<String> BACK = Set.of("b", "back");
  private static final Set<String> HELP = Set.of("?", "h", "help");
  private static final Set<String> YES = Set.of("y", "yes");
  private static final Set<String> NO = Set.of("n", "no");

  private static final String HOW =
      "Answer y or n, or slight or marked where it was so; Enter if you do not know; b to go back,"
          + " ? for help, q to stop.";

  private final Enquiry enquiry;
  private final BufferedReader answers;
  private final PrintWriter out;
  private final int width;
  private Path save;
  private int answered;

  /**
   * @param answers what the baker types
   * @param save where the sheet with the answers is kept, or null
   */
  AskDialogue(Enquiry enquiry, BufferedReader answers, Screen screen, Path save) {
    this.enquiry = enquiry;
    this.answers = answers;
    this.out = screen.out();
    this.width = screen.width();
    this.save = save;
  }

  void run() throws IOException {
    out.println("Likely causes so far:");
    shown(List.of());
    out.println();
    paragraph("", HOW);
    boolean open = true;
    while (open) {
      Optional<NextQuestion> question = enquiry.next();
      if (question.isEmpty()) {
        out.println();
        out.println("No further question would teach much.");
        break;
      }
      open = ask(question.get());
    }
    close();
    out.flush();
  }

  // False once the baker stops or the input ends.
  private boolean ask(NextQuestion question) throws IOException {
    out.println();
    paragraph("", question.question());
    paragraph("  ", question.how());
    boolean amount = question.answer().equals("amount");
    while (true) {
      out.print(amount ? "An amount with its unit > " : "y, n, slight, marked > ");
      out.flush();
      String line = answers.readLine();
      if (line == null) {
        out.println();
        out.println("The input has ended; what you answered is kept.");
        return false;
      }
      String said = line.strip().toLowerCase(Locale.ROOT);
      if (STOP.contains(said)) {
        return false;
      }
      if (BACK.contains(said)) {
        return back();
      }
      if (HELP.contains(said)) {
        help(amount);
        continue;
      }
      if (PASS.contains(said)) {
        enquiry.pass(question.about());
        return true;
      }
      List<Standing> before = enquiry.standings(Integer.MAX_VALUE);
      if (amount ? takenAmount(question, line.strip()) : taken(question, said)) {
        answered++;
        keep();
        shown(before);
        return true;
      }
    }
  }

  private boolean back() throws IOException {
    List<Standing> before = enquiry.standings(Integer.MAX_VALUE);
    if (enquiry.back()) {
      keep();
      shown(before);
    } else {
      out.println("This is the first question.");
    }
    return true;
  }

  private void help(boolean amount) {
    paragraph(
        "",
        amount
            ? "Type an amount with its unit, such as 24 C, 75 F, 90 min or 500 g; Enter if you do"
                + " not know; b to go back, q to stop."
            : HOW);
    paragraph(
        "",
        "The question is the one of which most can be learnt now. The percentages tell how likely"
            + " each cause is; several may have been at work.");
  }

  private boolean taken(NextQuestion question, String said) {
    Optional<Degree> degree =
        switch (said) {
          case "s", "slight", "slightly", "a little" -> Optional.of(Degree.SLIGHT);
          case "m", "marked", "markedly", "very" -> Optional.of(Degree.MARKED);
          default -> Optional.empty();
        };
    boolean yes = degree.isPresent() || YES.contains(said);
    if (!yes && !NO.contains(said)) {
      out.println("That is no answer I know: y, n, slight, marked, Enter, b, ? or q.");
      return false;
    }
    enquiry.answer(question.about(), yes, degree);
    return true;
  }

  private boolean takenAmount(NextQuestion question, String text) {
    List<Problem> problems = enquiry.answer(question.about(), text);
    problems.forEach(problem -> paragraph("", problem.what() + ": " + problem.remedy() + "."));
    return problems.isEmpty();
  }

  private void shown(List<Standing> before) {
    List<Standing> now = enquiry.standings(SHOWN);
    if (now.isEmpty()) {
      out.println("  nothing points to a cause yet");
    }
    for (Standing cause : now) {
      String was =
          before.stream()
              .filter(old -> old.name().equals(cause.name()))
              .map(old -> percent(old.probability()))
              .findFirst()
              .orElse(before.isEmpty() ? "" : "not listed");
      String is = percent(cause.probability());
      String moved = was.isEmpty() || was.equals(is) ? "" : "  (was " + was + ")";
      out.println(String.format(Locale.ROOT, "  %5s  %s%s", is, cause.name(), moved));
    }
  }

  private static String percent(double probability) {
    if (probability > 0.99) {
      return ">99 %";
    }
    return probability < 0.01 ? "<1 %" : Math.round(probability * 100) + " %";
  }

  private void paragraph(String indent, String words) {
    out.println(
        indent + WordUtils.wrap(words.strip(), width - indent.length(), "\n" + indent, true));
  }

  // Nothing that was answered is lost: where no file was named and nobody is there to ask, the
  // sheet is printed.
  private void close() throws IOException {
    if (answered == 0) {
      return;
    }
    out.println();
    if (save != null) {
      out.println("The sheet with your answers is in " + save + ".");
      return;
    }
    out.print("Save the sheet with your answers? A file name, or Enter to print it > ");
    out.flush();
    String line = answers.readLine();
    String name = line == null ? "" : line.strip();
    if (line == null) {
      out.println();
    }
    if (!name.isEmpty()) {
      try {
        save = Path.of(name);
        keep();
        out.println("The sheet with your answers is in " + save + ".");
        return;
      } catch (IOException | RuntimeException fault) {
        out.println("It cannot be written there (" + fault.getMessage() + "); here it is:");
      }
    }
    out.println(SheetWriter.write(enquiry.sheet()));
  }

  private void keep() throws IOException {
    if (save != null) {
      WholeFile.write(
          save, file -> Files.writeString(file, SheetWriter.write(enquiry.sheet()) + "\n"));
    }
  }
}
