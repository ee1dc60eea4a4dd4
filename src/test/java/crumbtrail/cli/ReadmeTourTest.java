package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** The tour of a baker's log in the README, command by command. */
class ReadmeTourTest {
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final String PROMPT = "$ crumbtrail ";

  @RegisterExtension final Listening shell = new Listening();

  @TempDir Path folder;

  @Test
  void every_command_answers_as_is_shown() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    int from = readme.indexOf("```\n" + PROMPT + "log import") + 4;
    List<String> block = readme.substring(from, readme.indexOf("\n```", from)).lines().toList();

    int commands = 0;
    for (int at = 0; at < block.size(); ) {
      int next = at + 1;
      while (next < block.size() && !block.get(next).startsWith(PROMPT)) {
        next++;
      }
      answers(block.get(at).substring(PROMPT.length()), block.subList(at + 1, next));
      commands++;
      at = next;
    }
    assertThat(commands).isGreaterThanOrEqualTo(8);
  }

  private void answers(String command, List<String> shown) {
    List<String> words = new ArrayList<>();
    for (Matcher word = WORD.matcher(command); word.find(); ) {
      words.add(word.group(1) == null ? word.group(2) : word.group(1));
    }
    words.addAll(List.of("--log", folder.resolve("bakes").toString()));

    assertThat(shell.run(words.toArray(String[]::new))).as(command).isZero();

    List<String> printed = new ArrayList<>();
    (shell.out() + shell.err()).lines().map(ReadmeTourTest::plain).forEach(printed::add);
    List<String> told =
        shown.stream()
            .filter(line -> !line.equals("…") && !line.isBlank())
            .map(ReadmeTourTest::plain)
            .toList();
    assertThat(told).as(command).isNotEmpty();
    assertThat(printed).as(command).containsSubsequence(told);
    if (!shown.contains("…")) {
      assertThat(printed.stream().filter(line -> !line.isBlank())).as(command).isEqualTo(told);
    }
  }

  // Each calibration moves percentages and odds a little; the rest is held word for word.
  private static String plain(String line) {
    return line.stripTrailing().replaceAll("\\d+(\\.\\d+)? %", "% %").replaceAll("x[\\d.]+$", "x");
  }
}
