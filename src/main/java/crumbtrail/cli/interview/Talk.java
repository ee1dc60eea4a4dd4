package crumbtrail.cli.interview;

import crumbtrail.cli.screen.Paint;
import crumbtrail.cli.screen.Screen;
import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.text.WordUtils;

/** The two ends of a talk: what is said, and what is typed. */
final class Talk {
  private static final long PASTE_PAUSE = 60;

  private final BufferedReader answers;
  private final boolean typed;
  private final Screen screen;

  /**
   * @param typed whether a person types the answers; they may paste a text with empty lines in it
   */
  Talk(BufferedReader answers, boolean typed, Screen screen) {
    this.answers = answers;
    this.typed = typed;
    this.screen = screen;
  }

  void heading(String words) {
    screen.out().println();
    screen.out().println(screen.coloured() ? Paint.bold(words) : words);
  }

  void say(String words) {
    say("", words);
  }

  /** Says words behind a lead, which stands on the first line only. */
  void say(String lead, String words) {
    String indent = " ".repeat(lead.length());
    int room = screen.width() - lead.length();
    screen.out().println(lead + WordUtils.wrap(words.strip(), room, "\n" + indent, true));
  }

  /** A line as it stands, for what is laid out in columns. */
  void row(String line) {
    screen.out().println(line.stripTrailing());
  }

  int width() {
    return screen.width();
  }

  /** One line; empty where the input has ended. */
  Optional<String> line() throws IOException {
    screen.out().print("> ");
    screen.out().flush();
    Optional<String> line = Optional.ofNullable(answers.readLine());
    if (line.isEmpty() || !typed) {
      // What comes through a pipe brings no line break to the screen.
      screen.out().println();
    }
    return line.map(String::strip);
  }

  /**
   * Further lines up to an empty one, or the end of the input.
   *
   * @param first the line that has been typed already
   */
  List<String> linesAfter(String first) throws IOException {
    List<String> lines = new ArrayList<>(List.of(first));
    String line = answers.readLine();
    while (line != null && (!line.isBlank() || pasting())) {
      lines.add(line.strip());
      line = answers.readLine();
    }
    while (lines.get(lines.size() - 1).isEmpty()) {
      lines.remove(lines.size() - 1);
    }
    return lines;
  }

  // Nobody types the next line within a blink: an empty line with more behind it was pasted.
  private boolean pasting() throws IOException {
    if (!typed) {
      return false;
    }
    try {
      Thread.sleep(PASTE_PAUSE);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    return answers.ready();
  }
}
