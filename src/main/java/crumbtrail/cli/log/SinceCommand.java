package crumbtrail.cli.log;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.cli.BadInput;
import crumbtrail.cli.CrumbtrailCommand;
import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.study.SideBySide;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What changed since a recipe last worked. */
@Command(
    name = "since",
    mixinStandardHelpOptions = true,
    description =
        "Tell what changed since it last worked: hold a bake against the last one of its recipe"
            + " before it that came out good.",
    footer = {"", "Examples:", "  crumbtrail log outcome 9 good", "  crumbtrail log since 12"})
final class SinceCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Mixin RulesOption rules;

  @Parameters(paramLabel = "ID", description = "number of the bake in question")
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
      after = log.find(id).orElseThrow(() -> Kept.missing(id));
      Bake found = after;
      before = SideBySide.lastGood(log, after).orElseThrow(() -> none(found));
    }
    Held.against(before, after, rules, format, CrumbtrailCommand.screen(spec));
    return 0;
  }

  private static BadInput none(Bake bake) {
    String other = "Hold it against any other bake: crumbtrail log compare BETTER " + bake.id();
    return new BadInput(
        bake.recipe().isEmpty()
            ? List.of("Bake " + bake.id() + " names no recipe, so it has none before it.", other)
            : List.of(
                "No bake of \"%s\" before bake %d is noted as good."
                    .formatted(bake.recipe(), bake.id()),
                "If one was, say so: crumbtrail log outcome ID good",
                other));
  }
}
