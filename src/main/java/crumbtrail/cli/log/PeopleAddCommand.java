package crumbtrail.cli.log;

import crumbtrail.bakelog.LogStore;
import crumbtrail.cli.BadInput;
import crumbtrail.people.Names;
import crumbtrail.people.Role;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes an account. */
@Command(
    name = "add",
    mixinStandardHelpOptions = true,
    description =
        "Make an account. The password is asked for, or read from the first line of standard input."
            + " The first account takes over the bakes that the log holds already.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail log people add Ida --role keeper",
      "  crumbtrail log people add Una --role teacher < password.txt"
    })
final class PeopleAddCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Parameters(paramLabel = "NAME", description = "the name with which they log in")
  String name;

  @Option(
      names = "--role",
      paramLabel = "baker|teacher|keeper",
      description = "what they may do (${DEFAULT-VALUE} unless told)")
  Role role = Role.BAKER;

  @Override
  public Integer call() throws IOException {
    String plain =
        Names.kept(name)
            .orElseThrow(
                () ->
                    new BadInput(
                        List.of(
                            "A name has 1 to "
                                + Names.LONGEST
                                + " letters, digits, blanks and signs such as - or '.")));
    try (LogStore store = kept.open()) {
      // Asked before the password, so that nobody types one for nothing.
      if (store.people().account(plain).isPresent()) {
        throw taken(plain);
      }
      long id =
          store
              .people()
              .add(plain, role, TypedPassword.hash(spec, plain))
              .orElseThrow(() -> taken(plain))
              .id();
      spec.commandLine()
          .getOut()
          .println(id + "  " + plain + "  " + role.name().toLowerCase(Locale.ROOT));
    }
    return 0;
  }

  private static BadInput taken(String name) {
    return new BadInput(List.of("There is somebody called \"" + name + "\" already."));
  }
}
