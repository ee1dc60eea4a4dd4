package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.cli.screen.Terminal;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;

/** Every command's help, held to one form. */
class HelpTest {
  /** As a shell parts words: by blanks, but for those within quotation marks. */
  private static final Pattern WORD = Pattern.compile("(?:\"[^\"]*\"|[^ \"])+");

  static Stream<CommandSpec> commands() {
    List<CommandSpec> all = new ArrayList<>();
    gather(Main.commands(new CrumbtrailCommand(Terminal.piped())).getCommandSpec(), all);
    assertThat(all).hasSizeGreaterThan(15);
    return all.stream();
  }

  private static void gather(CommandSpec from, List<CommandSpec> all) {
    all.add(from);
    from.subcommands().values().forEach(line -> gather(line.getCommandSpec(), all));
  }

  @ParameterizedTest
  @MethodSource("commands")
  void help_shows_examples_that_can_be_read_back_and_the_exit_status(CommandSpec command) {
    String help = command.commandLine().getUsageMessage(Ansi.OFF);

    assertThat(help).contains("Exit status:\n  0 ").contains("\n  2 ").contains("\n  1 ");
    assertThat(help).contains("\nExamples:\n  ").contains("\nGeneral:\n");
    List<String> examples =
        Stream.of(command.usageMessage().footer()).filter(line -> line.startsWith("  ")).toList();
    for (String example : examples) {
      assertThat(example).contains("crumbtrail ");
      read(command, example.strip().replace("%%", "%"));
    }
  }

  // An example that the command line cannot read would be worse than none.
  private static void read(CommandSpec command, String example) {
    String words = example.replaceAll(".*(?=crumbtrail )", "").replaceAll(" *[<>|)].*", "");
    String[] arguments =
        WORD.matcher(words.substring("crumbtrail ".length()))
            .results()
            .map(word -> word.group().replace("\"", ""))
            .toArray(String[]::new);
    CommandLine line = Main.commands(new CrumbtrailCommand(Terminal.piped()));
    VaryCommand.offerKnobs(line, arguments);
    assertThat(line.parseArgs(arguments).hasSubcommand() || arguments[0].startsWith("-"))
        .as("%s: %s", command.qualifiedName(), words)
        .isTrue();
  }

  @ParameterizedTest
  @MethodSource("commands")
  void help_keeps_to_the_width_of_the_terminal(CommandSpec command) {
    for (int width : List.of(60, 80, 120)) {
      command.usageMessage().width(width);
      StringWriter help = new StringWriter();
      help.write(command.commandLine().getUsageMessage(Ansi.OFF));
      // Examples are typed as they stand and are not broken.
      String broken = help.toString().replaceAll("(?s)\nExamples:.*", "");
      assertThat(broken.lines())
          .as("%s at %d", command.qualifiedName(), width)
          .allMatch(line -> line.length() <= width);
    }
  }
}
