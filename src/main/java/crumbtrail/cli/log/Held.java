package crumbtrail.cli.log;

import crumbtrail.bakelog.Bake;
import crumbtrail.cli.BadInput;
import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.cli.Rules;
import crumbtrail.cli.screen.Screen;
import crumbtrail.compare.Comparison;
import crumbtrail.report.PostMortem;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.SheetReader;
import crumbtrail.study.SideBySide;

/** Two bakes of the log, one held against the other. */
final class Held {
  enum Format {
    TEXT,
    JSON
  }

  private Held() {}

  /** Prints what was done otherwise, and what of it can explain the outcome. */
  static void against(Bake better, Bake bake, RulesOption rules, Format format, Screen screen)
      throws Exception {
    BakeSheet before = sheet(better);
    BakeSheet after = sheet(bake);
    PostMortem postMortem = Rules.postMortem(rules, screen.err());
    Comparison found = postMortem.compare(before, after);
    SideBySide both = new SideBySide(better, bake, found);
    screen.print(
        switch (format) {
          case JSON -> both.json();
          case TEXT -> both.text(postMortem.rules().catalogue(), screen.width());
        });
    screen.out().flush();
  }

  // A sheet that an earlier version took may be one that this one cannot read.
  private static BakeSheet sheet(Bake bake) {
    Reading reading = SheetReader.read(bake.sheet());
    return reading
        .sheet()
        .orElseThrow(() -> BadInput.of("The sheet of bake " + bake.id(), reading.problems()));
  }
}
