package crumbtrail.cli.log;

import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.cli.BadInput;
import crumbtrail.cli.CrumbtrailCommand;
import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.cli.Rules;
import crumbtrail.cli.screen.Screen;
import crumbtrail.study.Kitchen;
import crumbtrail.study.KitchenText;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Shows what was learnt of this kitchen. */
@Command(
    name = "learn",
    mixinStandardHelpOptions = true,
    description =
        "Show what was learnt of this kitchen from what you confirmed: which causes come up oftener"
            + " or more rarely than foretold. Nothing of it leaves this machine.",
    footer = {"", "Examples:", "  crumbtrail log learn", "  crumbtrail trace demo --kitchen"})
final class LearnCommand implements Callable<Integer> {
  enum Format {
    TEXT,
    JSON
  }

  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Mixin RulesOption rules;

  @Option(
      names = "--reset",
      description =
          "forget what was learnt so far: only bakes from now on count, or from the day that --since"
              + " names. No bake is deleted")
  boolean reset;

  @Option(
      names = "--since",
      paramLabel = "2026-03-01",
      description = "with --reset: the day of the new oven or the new flour")
  String since;

  @Option(names = "--again", description = "let all bakes count again")
  boolean again;

  @Option(
      names = "--format",
      paramLabel = "text|json",
      defaultValue = "TEXT",
      description = "form of the answer (text unless told)")
  Format format;

  @Override
  public Integer call() throws Exception {
    if ((reset && again) || (since != null && !reset)) {
      throw new BadInput(
          List.of("--since goes with --reset, and --reset does not go with --again."));
    }
    LocalDateTime from =
        since == null ? LocalDateTime.now(ZoneId.systemDefault()) : Kept.when("--since", since, 0);
    Screen screen = CrumbtrailCommand.screen(spec);
    Kitchen kitchen;
    try (LogStore store = kept.open()) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      if (reset) {
        log.learnFrom(Bake.ONLY_BAKER, from);
      } else if (again) {
        log.learnFrom(Bake.ONLY_BAKER, null);
      }
      kitchen = Kitchen.of(log, Bake.ONLY_BAKER, Rules.book(rules.folder).catalogue());
    }
    screen.print(
        format == Format.JSON
            ? new ObjectMapper().valueToTree(kitchen).toPrettyString() + "\n"
            : KitchenText.of(kitchen, screen.width()));
    return 0;
  }
}
