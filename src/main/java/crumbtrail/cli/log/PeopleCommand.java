package crumbtrail.cli.log;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Accounts of a log that several people share; the work is done by its subcommands. */
@Command(
    name = "people",
    mixinStandardHelpOptions = true,
    description =
        "Look after the accounts of a log that several people share. crumbtrail serve --people lets"
            + " them log in.",
    subcommands = {
      PeopleAddCommand.class,
      PeopleListCommand.class,
      PeoplePasswordCommand.class,
      PeopleRoleCommand.class,
      PeopleDeleteCommand.class
    },
    footer = {
      "",
      "Examples:",
      "  crumbtrail log people add Ida --role keeper",
      "  crumbtrail log people list"
    })
final class PeopleCommand implements Runnable {
  @Spec CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do: " + String.join(", ", spec.subcommands().keySet()) + ".");
  }
}
