package crumbtrail.cli;

import crumbtrail.accuracy.Accuracy;
import crumbtrail.cli.CrumbtrailCommand.ProgressOption;
import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.cli.screen.Progress;
import crumbtrail.rules.RuleBase;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How often the rules are right. */
@Command(
    name = "score",
    mixinStandardHelpOptions = true,
    description =
        "Measure how often the rules are right: on published tables of faults, on real failures and"
            + " on our own cases. Run it in the project's folder; it measures ./rules unless told.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail rules score",
      "  crumbtrail rules score --out docs/accuracy.md"
    })
final class RulesScoreCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin RulesOption rules;

  @Mixin Labelled labelled;

  @Mixin ProgressOption progress;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "write the page there (standard output unless told), as docs/accuracy.md")
  Path target;

  @Override
  public Integer call() throws Exception {
    PrintWriter err = spec.commandLine().getErr();
    String page = labelled.measure(Rules.underWork(rules, err), err, progress.shown(spec)).page();
    if (target == null) {
      spec.commandLine().getOut().print(page);
      spec.commandLine().getOut().flush();
    } else {
      Files.writeString(target, page);
      err.println("Written: " + target);
    }
    return 0;
  }

  /** What there is to measure against. */
  static final class Labelled {
    @Option(
        names = "--cases",
        paramLabel = "DIR",
        defaultValue = "cases",
        description = "bake sheets with their known causes (${DEFAULT-VALUE} unless told)")
    Path cases;

    @Option(
        names = "--real",
        paramLabel = "DIR",
        defaultValue = "src/test/resources/real-cases",
        description = "real failures with their accepted causes (${DEFAULT-VALUE} unless told)")
    Path real;

    @Option(
        names = "--tables",
        paramLabel = "FILE",
        defaultValue = "src/test/resources/published-tables.json",
        description = "published tables of faults (${DEFAULT-VALUE} unless told)")
    Path tables;

    Accuracy measure(RuleBase base, PrintWriter err, boolean shown) throws IOException {
      for (Path needed : List.of(cases, real, tables)) {
        if (!Files.exists(needed)) {
          throw new BadInput(
              List.of(
                  "There is no "
                      + needed
                      + ". Run this in the project's folder, or name another."));
        }
      }
      err.println("Running the rules over bakes and tables …");
      try (Progress told =
          Progress.counting(
              err, shown, "bakes", sheets(cases) + sheets(real), InstantSource.system())) {
        return Accuracy.of(base, cases, real, tables, told::done);
      }
    }

    private static long sheets(Path folder) throws IOException {
      try (Stream<Path> files = Files.list(folder)) {
        return files.filter(file -> file.toString().endsWith(".json")).count();
      }
    }
  }
}
