package crumbtrail.cli;

import crumbtrail.accuracy.Accuracy;
import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
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
            + " on our own cases. Run it in the project's folder.",
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

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "write the page there (standard output unless told), as docs/accuracy.md")
  Path target;

  @Override
  public Integer call() throws Exception {
    PrintWriter err = spec.commandLine().getErr();
    String page = labelled.measure(Rules.ruleBase(rules, err), err).page();
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

    Accuracy measure(crumbtrail.rules.RuleBase base, PrintWriter err) throws java.io.IOException {
      for (Path needed : java.util.List.of(cases, real, tables)) {
        if (!Files.exists(needed)) {
          throw new BadInput(
              java.util.List.of(
                  "There is no "
                      + needed
                      + ". Run this in the project's folder, or name another."));
        }
      }
      err.println("Running the rules over bakes and tables …");
      return Accuracy.of(base, cases, real, tables);
    }
  }
}
