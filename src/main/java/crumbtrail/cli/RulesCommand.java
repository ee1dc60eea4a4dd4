package crumbtrail.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** For those who write rules; the work is done by its subcommands. */
@Command(
    name = "rules",
    mixinStandardHelpOptions = true,
    description = "For those who write rules.",
    subcommands = {
      RulesCheckCommand.class,
      RulesScoreCommand.class,
      RulesCalibrateCommand.class,
      RulesCoverageCommand.class,
      RulesHandbookCommand.class
    },
    footer = {
      "",
      "Examples:",
      "  crumbtrail rules check rules",
      "  crumbtrail rules coverage",
      "  crumbtrail rules score --out docs/accuracy.md"
    })
final class RulesCommand implements Runnable {
  @Spec CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do: " + String.join(", ", spec.subcommands().keySet()) + ".");
  }
}
