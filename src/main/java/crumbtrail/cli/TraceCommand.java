package crumbtrail.cli;

import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.cli.log.OwnKitchen;
import crumbtrail.cli.screen.Screen;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.picture.LoafPictures;
import crumbtrail.report.Enquiry;
import crumbtrail.report.JsonReport;
import crumbtrail.report.PostMortem;
import crumbtrail.report.Report;
import crumbtrail.report.TextReport;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.web.HtmlReport;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Post-mortem of one bake. */
@Command(
    name = "trace",
    mixinStandardHelpOptions = true,
    description = "Trace a failed bake back to its likely causes.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail trace demo",
      "  crumbtrail trace demo --kitchen",
      "  crumbtrail trace bake.json --ask --save bake.json",
      "  crumbtrail trace - --format json < bake.json",
      "  crumbtrail trace bake.json --format html > report.html"
    })
final class TraceCommand implements Callable<Integer> {
  enum Format {
    TEXT,
    JSON,
    HTML;

    @Override
    public String toString() {
      return Lower.of(this);
    }
  }

  @Spec CommandSpec spec;

  @Mixin RulesOption rules;

  @Parameters(paramLabel = "SHEET.json", description = CrumbtrailCommand.SHEET)
  String sheet;

  @Option(
      names = "--format",
      paramLabel = "text|json|html",
      defaultValue = "TEXT",
      description = "form of the report (text unless told)")
  Format format;

  @Option(
      names = "--ask",
      description =
          "ask, question by question, what is most worth knowing, and show how the ranking moves")
  boolean ask;

  @Option(
      names = "--save",
      paramLabel = "FILE",
      description = "with --ask: keep the sheet with your answers there, from answer to answer")
  Path save;

  @Option(
      names = "--kitchen",
      description =
          "rank by the odds of your own kitchen, as your bake log has taught them, and tell what that"
              + " moved (crumbtrail log learn shows them)")
  boolean kitchen;

  @Option(
      names = "--log",
      paramLabel = "FILE|URL",
      description = "with --kitchen: the log, if it is not the usual one")
  String log;

  @Override
  public Integer call() throws Exception {
    if (log != null && !kitchen) {
      throw new BadInput(List.of("--log names the log of your kitchen and goes with --kitchen."));
    }
    if (ask || save != null) {
      checkAsking();
    }
    BakeSheet bake = Input.sheet(sheet);
    Screen screen = CrumbtrailCommand.screen(spec);
    PostMortem postMortem = Rules.postMortem(rules, spec.commandLine().getErr());
    if (kitchen) {
      RuleBase base = postMortem.rules();
      postMortem = new PostMortem(base, OwnKitchen.odds(log, base.catalogue()));
    }
    if (ask) {
      try (Enquiry enquiry = postMortem.enquire(bake)) {
        new AskDialogue(enquiry, Input.answers(), screen, save).run();
      }
      return 0;
    }
    Report report = postMortem.trace(bake);
    print(report, format, postMortem.rules().catalogue(), screen);
    return 0;
  }

  /** Prints a report in one of its forms; only text is coloured. */
  static void print(Report report, Format format, Catalogue catalogue, Screen screen) {
    switch (format) {
      case TEXT -> screen.print(TextReport.of(report, screen.width()));
      case JSON -> screen.out().print(JsonReport.pretty(report));
      case HTML -> screen.out().print(HtmlReport.page(report, LoafPictures.of(catalogue)));
    }
    screen.out().flush();
  }

  private void checkAsking() {
    if (!ask) {
      throw new BadInput(List.of("--save keeps answers and goes with --ask."));
    }
    if (sheet.equals("-")) {
      throw new BadInput(
          List.of("--ask reads your answers from standard input. Name the sheet as a file."));
    }
    if (format != Format.TEXT) {
      throw new BadInput(List.of("--ask is a talk in text. Leave --format out."));
    }
    if (save != null && Files.isDirectory(save)) {
      throw new BadInput(List.of("--save: " + save + " is a folder. Name a file."));
    }
  }
}
