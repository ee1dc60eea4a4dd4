package crumbtrail.cli.log;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.cli.BadInput;
import java.time.LocalDateTime;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Changes how a bake is called, and when it was. */
@Command(
    name = "edit",
    mixinStandardHelpOptions = true,
    description = "Change the name, the recipe or the day of a bake. Its sheet stays as it was.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail log edit 12 --label \"Tuesday tin, new flour\"",
      "  crumbtrail log edit 12 --recipe \"Tin loaf\" --when 2026-03-03T14:30"
    })
final class EditCommand implements Callable<Integer> {
  private static final int NOON = 12;

  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Parameters(index = "0", paramLabel = "ID", description = "number of the bake")
  long id;

  @Option(names = "--label", paramLabel = "TEXT", description = "your name for this bake")
  String label;

  @Option(
      names = "--recipe",
      paramLabel = "NAME",
      description = "what was baked: bakes of one recipe are compared")
  String recipe;

  @Option(
      names = "--when",
      paramLabel = "2026-03-01",
      description = "when it was baked, with its time as 2026-03-01T14:30")
  String when;

  @Override
  public Integer call() {
    if (label == null && recipe == null && when == null) {
      throw new BadInput(List.of("Say what to change: --label, --recipe or --when."));
    }
    LocalDateTime baked = when == null ? null : Kept.when("--when", when, NOON);
    try (LogStore store = kept.open()) {
      Bake bake =
          store
              .of(Scope.ONLY_BAKER)
              .change(
                  id,
                  before ->
                      before.called(
                          label == null ? before.label() : label,
                          recipe == null ? before.recipe() : recipe,
                          baked == null ? before.baked() : baked))
              .orElseThrow(() -> Kept.missing(id));
      spec.commandLine().getOut().println(bake.id() + "  " + bake.label() + "  changed");
    }
    return 0;
  }
}
