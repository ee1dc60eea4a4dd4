package crumbtrail.cli.log;

import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.cli.BadInput;
import crumbtrail.cli.CrumbtrailCommand;
import crumbtrail.cli.screen.Screen;
import crumbtrail.study.OwnRecord;
import crumbtrail.study.OwnRecordText;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Shows how well causes were foretold. */
@Command(
    name = "calibration",
    mixinStandardHelpOptions = true,
    description =
        "Show how well the rankings agreed with what you confirmed: how often the first cause was"
            + " right, and whether what was called likely was",
    footer = {
      "",
      "Examples:",
      "  crumbtrail log calibration",
      "  crumbtrail log calibration --format json"
    })
final class CalibrationCommand implements Callable<Integer> {
  private static final int MOST = 10_000;

  enum Format {
    TEXT,
    JSON
  }

  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Option(
      names = "--most",
      paramLabel = "N",
      defaultValue = "1000",
      description = "how many of the latest judged bakes (${DEFAULT-VALUE} unless told)")
  int most;

  @Option(
      names = "--format",
      paramLabel = "text|json",
      defaultValue = "TEXT",
      description = "form of the answer (text unless told)")
  Format format;

  @Override
  public Integer call() {
    if (most < 1 || most > MOST) {
      throw new BadInput(List.of("--most: say a number from 1 to " + MOST + "."));
    }
    Screen screen = CrumbtrailCommand.screen(spec);
    OwnRecord record;
    try (LogStore store = kept.open()) {
      record = OwnRecord.of(store.of(Scope.ONLY_BAKER), most);
    }
    screen.print(
        format == Format.JSON
            ? new ObjectMapper().valueToTree(record).toPrettyString() + "\n"
            : OwnRecordText.of(record, screen.width()));
    return 0;
  }
}
