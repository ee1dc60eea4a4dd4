package crumbtrail.cli.log;

import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.exchange.LogExport;
import crumbtrail.cli.CrumbtrailCommand.ProgressOption;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a backup of the log. */
@Command(
    name = "backup",
    mixinStandardHelpOptions = true,
    description =
        "Write the whole log into one file, as it is at this moment, while others go on with it. The"
            + " file comes under its name only when it is whole. log restore puts it back.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail log backup",
      "  crumbtrail log backup /media/stick/bakes.zip --force"
    })
final class BackupCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Mixin ProgressOption progress;

  @Parameters(
      paramLabel = "FILE.zip",
      arity = "0..1",
      description = "where to (bakes-DAY.zip in this folder unless told)")
  Path file;

  @Option(names = "--force", description = "write over a file that is there")
  boolean force;

  @Override
  public Integer call() throws IOException {
    Path target =
        file == null ? Path.of("bakes-" + LocalDate.now(ZoneId.systemDefault()) + ".zip") : file;
    if (!target.toString().toLowerCase(Locale.ROOT).endsWith(".zip")) {
      target = target.resolveSibling(target.getFileName() + ".zip");
    }
    WriteOut.check(target, force);
    try (LogStore store = kept.open()) {
      LogExport.Count count =
          WriteOut.run(spec, progress.shown(spec), store, Scope.EVERYTHING, target);
      spec.commandLine().getOut().println(WriteOut.summary(count, target));
    }
    return 0;
  }
}
