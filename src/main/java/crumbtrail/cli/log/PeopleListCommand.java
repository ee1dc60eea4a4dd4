package crumbtrail.cli.log;

import crumbtrail.bakelog.LogStore;
import crumbtrail.people.Person;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Lists accounts. */
@Command(
    name = "list",
    mixinStandardHelpOptions = true,
    description = "List the accounts in the order of their names.",
    footer = {"", "Examples:", "  crumbtrail log people list"})
final class PeopleListCommand implements Callable<Integer> {
  private static final int AT_ONCE = 500;

  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Override
  public Integer call() {
    try (LogStore store = kept.open()) {
      int after = 0;
      List<Person> some = store.people().everybody(AT_ONCE, after);
      while (!some.isEmpty()) {
        some.forEach(
            one ->
                spec.commandLine()
                    .getOut()
                    .printf(
                        "%6d  %-8s %s%n",
                        one.id(), one.role().name().toLowerCase(Locale.ROOT), one.name()));
        after += some.size();
        some = store.people().everybody(AT_ONCE, after);
      }
    }
    return 0;
  }
}
