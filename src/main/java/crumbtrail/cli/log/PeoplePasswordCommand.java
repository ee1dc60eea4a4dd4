package crumbtrail.cli.log;

import crumbtrail.bakelog.LogStore;
import crumbtrail.people.Person;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Gives somebody another password. */
@Command(
    name = "password",
    mixinStandardHelpOptions = true,
    description =
        "Give somebody another password, which is asked for or read from standard input, and log"
            + " them out everywhere.",
    footer = {"", "Examples:", "  crumbtrail log people password Ida"})
final class PeoplePasswordCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Parameters(paramLabel = "NAME", description = "whose")
  String name;

  @Override
  public Integer call() throws IOException {
    try (LogStore store = kept.open()) {
      Person person = Kept.person(store, name);
      store.people().secret(person.id(), TypedPassword.hash(spec, person.name()));
      store.people().endAll(person.id(), null);
      spec.commandLine().getOut().println(person.name() + "  has another password");
    }
    return 0;
  }
}
