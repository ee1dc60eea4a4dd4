package crumbtrail.cli;

import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.cli.screen.Screen;
import crumbtrail.compare.Comparison;
import crumbtrail.report.ComparisonText;
import crumbtrail.report.JsonReport;
import crumbtrail.report.PostMortem;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Holds a bake against one that came out better. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description =
        "Hold a bake against one that came out better: what was done otherwise, and what of it can"
            + " explain what went wrong.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail compare cases/healthy-tin-loaf.json cases/over-proofed-tin-loaf.json",
      "  crumbtrail compare good.json failed.json --format json"
    })
final class CompareCommand implements Callable<Integer> {
  enum Format {
    TEXT,
    JSON
  }

  @Spec CommandSpec spec;

  @Mixin RulesOption rules;

  @Parameters(index = "0", paramLabel = "BETTER.json", description = "sheet of the better bake")
  String better;

  @Parameters(index = "1", paramLabel = "SHEET.json", description = CrumbtrailCommand.SHEET)
  String sheet;

  @Option(
      names = "--format",
      paramLabel = "text|json",
      defaultValue = "TEXT",
      description = "form of the answer (text unless told)")
  Format format;

  @Override
  public Integer call() throws Exception {
    BakeSheet before = Input.sheet(better);
    BakeSheet after = Input.sheet(sheet);
    Screen screen = CrumbtrailCommand.screen(spec);
    RuleBase base = Rules.ruleBase(rules, screen.err());
    Comparison found = new PostMortem(base).compare(before, after);
    screen.print(
        switch (format) {
          case JSON -> JsonReport.pretty(found);
          case TEXT ->
              ComparisonText.of(
                  found, before.title(), after.title(), base.catalogue(), screen.width());
        });
    screen.out().flush();
    return 0;
  }
}
