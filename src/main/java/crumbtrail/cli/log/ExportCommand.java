package crumbtrail.cli.log;

import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.exchange.BakeJson;
import crumbtrail.bakelog.exchange.LogExport;
import crumbtrail.cli.BadInput;
import crumbtrail.cli.CrumbtrailCommand.ProgressOption;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the log out. */
@Command(
    name = "export",
    mixinStandardHelpOptions = true,
    description =
        "Write all bakes out in a form that any program can read: one JSON object a line, and with"
            + " --to the photos beside them.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail log export --to my-bakes",
      "  crumbtrail log export > bakes.jsonl"
    })
final class ExportCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Mixin ProgressOption progress;

  @Option(
      names = "--to",
      paramLabel = "DIR|FILE.zip",
      description = "write it there, with photos (bakes to standard output unless told)")
  Path target;

  @Option(names = "--force", description = "write over what is there")
  boolean force;

  @Override
  public Integer call() throws IOException {
    if (target != null) {
      WriteOut.check(target, force);
    }
    try (LogStore store = kept.open()) {
      if (target != null) {
        LogExport.Count count =
            WriteOut.run(spec, progress.shown(spec), store, Scope.ONLY_BAKER, target);
        spec.commandLine().getErr().println(WriteOut.summary(count, target));
        return 0;
      }
      PrintWriter out = spec.commandLine().getOut();
      store.atOneMoment(
          Scope.ONLY_BAKER,
          log -> {
            log.bakes(0).forEach(bake -> out.print(BakeJson.line(bake) + "\n"));
            return true;
          });
      out.flush();
      if (out.checkError()) {
        throw new BadInput(List.of("The bakes cannot be written. Is the disk full?"));
      }
    }
    return 0;
  }
}
