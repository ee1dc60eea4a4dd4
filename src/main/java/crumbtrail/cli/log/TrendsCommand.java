package crumbtrail.cli.log;

import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.cli.BadInput;
import crumbtrail.cli.CrumbtrailCommand;
import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.cli.Rules;
import crumbtrail.cli.screen.Screen;
import crumbtrail.study.Trends;
import crumbtrail.study.TrendsText;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Shows what the latest bakes come to. */
@Command(
    name = "trends",
    mixinStandardHelpOptions = true,
    description =
        "Show what the latest bakes come to: charts of the dough's warmth and readiness, of loss and"
            + " height, and which bakes were out of the usual; the causes that come up; and what is"
            + " most worth learning next.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail log trends --recipe baguettes",
      "  crumbtrail log trends --most 50 --format json"
    })
final class TrendsCommand implements Callable<Integer> {
  private static final int MOST = 10_000;

  enum Format {
    TEXT,
    JSON
  }

  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Mixin RulesOption rules;

  @Option(
      names = "--recipe",
      paramLabel = "NAME",
      description = "only bakes of this recipe; charts of several recipes together say little")
  String recipe;

  @Option(
      names = "--class",
      paramLabel = "N",
      description = "the bakes of this class of a school (your own unless told)")
  Long schoolClass;

  @Option(
      names = "--most",
      paramLabel = "N",
      defaultValue = "200",
      description = "how many of the latest bakes (${DEFAULT-VALUE} unless told)")
  int most;

  @Option(
      names = "--format",
      paramLabel = "text|json",
      defaultValue = "TEXT",
      description = "form of the answer (text unless told)")
  Format format;

  @Override
  public Integer call() throws Exception {
    if (most < 1 || most > MOST) {
      throw new BadInput(List.of("--most: say a number from 1 to " + MOST + "."));
    }
    Scope scope = schoolClass == null ? Scope.ONLY_BAKER : Scope.schoolClass(schoolClass);
    Screen screen = CrumbtrailCommand.screen(spec);
    Trends trends;
    try (LogStore store = kept.open()) {
      trends = Trends.of(store.of(scope), recipe, most, Rules.book(rules.folder).catalogue());
    }
    if (format == Format.JSON) {
      screen.out().println(new ObjectMapper().valueToTree(trends).toPrettyString());
    } else if (trends.bakes() == 0) {
      screen.err().println("No bake is like that. Put one in with: crumbtrail log add SHEET.json");
    } else {
      screen.print(TrendsText.of(trends, screen.width()));
    }
    screen.out().flush();
    return 0;
  }
}
