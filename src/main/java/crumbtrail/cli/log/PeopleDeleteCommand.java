package crumbtrail.cli.log;

import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.cli.BadInput;
import crumbtrail.people.Person;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Deletes somebody for good. */
@Command(
    name = "delete",
    mixinStandardHelpOptions = true,
    description =
        "Delete an account for good with all its bakes, photos and classes. Backups that you made"
            + " earlier still hold the bakes.",
    footer = {"", "Examples:", "  crumbtrail log people delete Jon --yes"})
final class PeopleDeleteCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Parameters(paramLabel = "NAME", description = "who")
  String name;

  @Option(names = "--yes", description = "really do it; without this, only say what would go")
  boolean yes;

  @Override
  public Integer call() {
    try (LogStore store = kept.open()) {
      Person person = Kept.person(store, name);
      String line = person.name() + "  " + store.of(Scope.baker(person.id())).count() + " bake(s)";
      if (!yes) {
        throw new BadInput(
            List.of(line, "Nothing was deleted. To delete this for good, say --yes as well."));
      }
      if (!store.people().delete(person.id())) {
        throw new BadInput(
            List.of("The log would be without a keeper. Make somebody else one first."));
      }
      spec.commandLine().getOut().println(line + "  deleted");
    }
    return 0;
  }
}
