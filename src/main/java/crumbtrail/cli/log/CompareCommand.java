package crumbtrail.cli.log;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.cli.CrumbtrailCommand;
import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Holds a bake of the log against another one. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description =
        "Hold a bake of the log against one that came out better: what was done otherwise, and what"
            + " of it can explain what went wrong.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail log compare 9 12",
      "  crumbtrail log compare 9 12 --format json"
    })
final class CompareCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Mixin RulesOption rules;

  @Parameters(index = "0", paramLabel = "BETTER", description = "number of the better bake")
  long better;

  @Parameters(index = "1", paramLabel = "ID", description = "number of the bake in question")
  long id;

  @Option(
      names = "--format",
      paramLabel = "text|json",
      defaultValue = "TEXT",
      description = "form of the answer (text unless told)")
  Held.Format format;

  @Override
  public Integer call() throws Exception {
    Bake before;
    Bake after;
    try (LogStore store = kept.open()) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      before = log.find(better).orElseThrow(() -> Kept.missing(better));
      after = log.find(id).orElseThrow(() -> Kept.missing(id));
    }
    Held.against(before, after, rules, format, CrumbtrailCommand.screen(spec));
    return 0;
  }
}
