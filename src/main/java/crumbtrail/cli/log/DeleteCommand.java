package crumbtrail.cli.log;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.cli.BadInput;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Deletes bakes for good. */
@Command(
    name = "delete",
    mixinStandardHelpOptions = true,
    description =
        "Delete bakes for good, their photos too. Backups that you made earlier still hold them.",
    footer = {"", "Examples:", "  crumbtrail log delete 12", "  crumbtrail log delete 12 13 --yes"})
final class DeleteCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Parameters(paramLabel = "ID", arity = "1..*", description = "numbers of the bakes")
  List<Long> ids;

  @Option(names = "--yes", description = "really do it; without this, only say what would go")
  boolean yes;

  @Override
  public Integer call() {
    try (LogStore store = kept.open()) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      List<String> lines = new ArrayList<>();
      for (long id : ids) {
        Bake bake = log.find(id).orElseThrow(() -> Kept.missing(id));
        lines.add(
            "%d  %s  %s, %d photo(s)"
                .formatted(id, bake.baked().toLocalDate(), bake.label(), bake.photos().size()));
      }
      if (!yes) {
        lines.add("Nothing was deleted. To delete this for good, say --yes as well.");
        throw new BadInput(lines);
      }
      ids.forEach(log::delete);
      lines.forEach(line -> spec.commandLine().getOut().println(line + "  deleted"));
    }
    return 0;
  }
}
