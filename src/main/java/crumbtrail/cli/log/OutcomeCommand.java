package crumbtrail.cli.log;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Outcome;
import crumbtrail.bakelog.Scope;
import crumbtrail.cli.Lower;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Notes how a bake came out. */
@Command(
    name = "outcome",
    mixinStandardHelpOptions = true,
    description = "Note how a bake came out.",
    footer = {"", "Examples:", "  crumbtrail log outcome 12 good"})
final class OutcomeCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Parameters(index = "0", paramLabel = "ID", description = "number of the bake")
  long id;

  @Parameters(index = "1", paramLabel = "OUTCOME", description = "good, fair or failed")
  Outcome outcome;

  @Override
  public Integer call() {
    try (LogStore store = kept.open()) {
      Bake bake =
          store
              .of(Scope.ONLY_BAKER)
              .change(id, before -> before.withOutcome(outcome))
              .orElseThrow(() -> Kept.missing(id));
      spec.commandLine()
          .getOut()
          .println(bake.id() + "  " + bake.label() + "  " + Lower.of(outcome));
    }
    return 0;
  }
}
