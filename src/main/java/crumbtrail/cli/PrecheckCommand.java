package crumbtrail.cli;

import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.report.PostMortem;
import crumbtrail.report.Report;
import crumbtrail.sheet.BakeSheet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Looks ahead at a bake. */
@Command(
    name = "precheck",
    mixinStandardHelpOptions = true,
    description =
        "Look at a recipe and a plan before the bake: what may go wrong, what is missing, what to"
            + " change before you start. Signs on the sheet are left out of account.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail precheck demo",
      "  crumbtrail precheck bake.json",
      "  crumbtrail precheck - --format json < bake.json"
    })
final class PrecheckCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin RulesOption rules;

  @Parameters(paramLabel = "SHEET.json", description = CrumbtrailCommand.SHEET)
  String sheet;

  @Option(
      names = "--format",
      paramLabel = "text|json|html",
      defaultValue = "TEXT",
      description = "form of the report (text unless told)")
  TraceCommand.Format format;

  @Override
  public Integer call() throws Exception {
    BakeSheet bake = Input.sheet(sheet);
    PostMortem postMortem = Rules.postMortem(rules, spec.commandLine().getErr());
    Report report = postMortem.precheck(bake);
    TraceCommand.print(
        report, format, postMortem.rules().catalogue(), CrumbtrailCommand.screen(spec));
    return 0;
  }
}
