package crumbtrail.cli.log;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Retrace;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.Traced;
import crumbtrail.cli.CrumbtrailCommand.ProgressOption;
import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.cli.Rules;
import crumbtrail.cli.screen.Progress;
import crumbtrail.report.JsonReport;
import crumbtrail.report.PostMortem;
import crumbtrail.report.Report;
import crumbtrail.sheet.SheetReader;
import java.io.PrintWriter;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Traces the bakes of the log with the rules of today. */
@Command(
    name = "retrace",
    mixinStandardHelpOptions = true,
    description =
        "Trace every bake that was not traced with these rules yet, and tell where another cause comes"
            + " first now. Each bake is kept when it is done, so a run that is broken off goes on where"
            + " it was.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail log retrace",
      "  crumbtrail log retrace --rules my-rules --progress"
    })
final class RetraceCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Mixin RulesOption rules;

  @Mixin ProgressOption progress;

  @Override
  public Integer call() throws Exception {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    PostMortem postMortem = Rules.postMortem(rules, err);
    boolean shown = progress.shown(spec);
    try (LogStore store = kept.open()) {
      BakeLog log = store.of(Scope.EVERYTHING);
      try (Progress told =
          Progress.counting(
              err,
              shown,
              "bakes",
              shown ? log.count() : Progress.UNKNOWN,
              InstantSource.system())) {
        Retrace.Count count =
            Retrace.run(
                log,
                postMortem.rules().version(),
                bake -> trace(postMortem, bake),
                change -> out.println(said(change)),
                told::done);
        out.flush();
        err.println(
            "%d bake(s) traced, %d were up to date, %d have another cause first, %d cannot be read"
                .formatted(count.traced(), count.upToDate(), count.changed(), count.unreadable()));
      }
    }
    return 0;
  }

  private static Optional<Traced> trace(PostMortem postMortem, Bake bake) {
    return SheetReader.read(bake.sheet())
        .sheet()
        .map(
            sheet -> {
              Report report = postMortem.trace(sheet);
              return new Traced(JsonReport.line(report), report.ruleBase());
            });
  }

  private static String said(Retrace.Change change) {
    return "%d  %s  %s, was %s"
        .formatted(
            change.bake(),
            change.label(),
            change.now().orElse("no cause"),
            change.before().orElse("no cause"));
  }
}
