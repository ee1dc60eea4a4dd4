package crumbtrail.cli.log;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Bakes that are kept; the work is done by its subcommands. */
@Command(
    name = LogCommand.NAME,
    mixinStandardHelpOptions = true,
    description = "Keep your bakes, find them again, and note what was found out about them.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail log add demo",
      "  crumbtrail log list --cause over-proofed",
      "  crumbtrail log confirm 12 over-proofed",
      "  crumbtrail log since 12",
      "  crumbtrail log backup bakes.zip"
    })
public final class LogCommand implements Runnable {
  /** The word on the command line. */
  public static final String NAME = "log";

  private static final List<Class<?>> COMMANDS =
      List.of(
          AddCommand.class,
          ListCommand.class,
          ShowCommand.class,
          ConfirmCommand.class,
          NoteCommand.class,
          OutcomeCommand.class,
          EditCommand.class,
          PhotoCommand.class,
          DeleteCommand.class,
          CompareCommand.class,
          SinceCommand.class,
          TrendsCommand.class,
          LearnCommand.class,
          CalibrationCommand.class,
          ImportCommand.class,
          ExportCommand.class,
          RestoreCommand.class,
          BackupCommand.class,
          PeopleCommand.class,
          RetraceCommand.class);

  /** Commands that know of all others. */
  private static final Set<String> KNOWING = Set.of(NAME, "man", "completion");

  @Spec CommandSpec spec;

  /**
   * Gives the command those below it. Looking at them takes a third of a second, so it is done only
   * where the command line asks for them or for what is written of all commands.
   */
  public static void offer(CommandLine root, String... arguments) {
    // A word of another command may be spelt like this one.
    CommandLine log = root.getSubcommands().get(NAME);
    if (log != null && Arrays.stream(arguments).anyMatch(KNOWING::contains)) {
      COMMANDS.forEach(log::addSubcommand);
    }
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do: " + String.join(", ", spec.subcommands().keySet()) + ".");
  }
}
