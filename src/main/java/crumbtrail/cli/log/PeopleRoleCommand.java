package crumbtrail.cli.log;

import crumbtrail.bakelog.LogStore;
import crumbtrail.cli.BadInput;
import crumbtrail.people.Person;
import crumbtrail.people.Role;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Gives somebody another role. */
@Command(
    name = "role",
    mixinStandardHelpOptions = true,
    description = "Give somebody another role.",
    footer = {"", "Examples:", "  crumbtrail log people role Una teacher"})
final class PeopleRoleCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Parameters(index = "0", paramLabel = "NAME", description = "who")
  String name;

  @Parameters(index = "1", paramLabel = "baker|teacher|keeper", description = "the role")
  Role role;

  @Override
  public Integer call() {
    try (LogStore store = kept.open()) {
      Person person = Kept.person(store, name);
      if (!store.people().role(person.id(), role)) {
        throw new BadInput(
            List.of("The log would be without a keeper. Make somebody else one first."));
      }
      spec.commandLine()
          .getOut()
          .println(person.name() + "  " + role.name().toLowerCase(Locale.ROOT));
    }
    return 0;
  }
}
