package crumbtrail.cli;

import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command that the others hang from. */
@Command(
    name = "crumbtrail",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Why did my bake fail, and what do I change?",
    subcommands = {
      TraceCommand.class,
      PrecheckCommand.class,
      NextCommand.class,
      BatchCommand.class,
      VaryCommand.class,
      MysteryCommand.class,
      LessonCommand.class,
      CardCommand.class,
      ServeCommand.class,
      RulesCommand.class,
      GenerateCompletion.class
    },
    footer = {
      "",
      "Examples:",
      "  crumbtrail trace cases/over-proofed-tin-loaf.json",
      "  crumbtrail next cases/over-proofed-tin-loaf.json --start 9:00",
      "  crumbtrail precheck cases/healthy-tin-loaf.json",
      "  crumbtrail trace - --format json < sheet.json",
      "  crumbtrail vary cases/healthy-tin-loaf.json --salt 0..4%%",
      "  crumbtrail lesson",
      "  crumbtrail card over-proofed",
      "  crumbtrail mystery --level hard",
      "  crumbtrail batch sheets.jsonl --out reports.jsonl",
      "  crumbtrail serve",
      "  crumbtrail rules check rules",
      "",
      "Exit status: 0 answered, 2 the input cannot be used, 1 a fault of the program."
    })
final class CrumbtrailCommand implements Runnable {
  @Spec CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do: trace, batch, vary, lesson, card, mystery, serve or rules.");
  }

  /** A rules folder of the baker's own. */
  static final class RulesOption {
    @Option(
        names = "--rules",
        paramLabel = "DIR",
        description = "use the rules in this folder in place of the built-in ones")
    java.nio.file.Path folder;
  }
}
