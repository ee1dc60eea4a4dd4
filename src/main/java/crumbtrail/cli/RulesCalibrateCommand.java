package crumbtrail.cli;

import crumbtrail.accuracy.Accuracy;
import crumbtrail.accuracy.FittedCalibration;
import crumbtrail.cli.CrumbtrailCommand.ProgressOption;
import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.cli.screen.Progress;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Fits the few numbers by which words become weights and sums become probabilities. */
@Command(
    name = "calibrate",
    mixinStandardHelpOptions = true,
    description =
        "Fit rules/calibration.yaml anew to the labelled bakes and the published tables. Run it in"
            + " the project's folder; it takes ./rules unless told; then build, and write docs/accuracy.md with: rules score.",
    footer = {"", "Examples:", "  crumbtrail rules calibrate --out rules/calibration.yaml"})
final class RulesCalibrateCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin RulesOption rules;

  @Mixin RulesScoreCommand.Labelled labelled;

  @Mixin ProgressOption progress;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "write the calibration there (standard output unless told)")
  Path target;

  @Override
  public Integer call() throws Exception {
    PrintWriter err = spec.commandLine().getErr();
    boolean shown = progress.shown(spec);
    Accuracy measured = labelled.measure(Rules.underWork(rules, err), err, shown);
    FittedCalibration fitted;
    try (Progress told = Progress.waiting(err, shown, "Fitting")) {
      told.begin();
      fitted = measured.calibrate();
    }
    fitted.log().forEach(err::println);
    if (target == null) {
      spec.commandLine().getOut().print(fitted.file());
      spec.commandLine().getOut().flush();
    } else {
      Files.writeString(target, fitted.file());
      err.println("Written: " + target);
    }
    return 0;
  }
}
