package crumbtrail.cli.log;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbtrail.bakelog.BakeLine;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Page;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.Sought;
import crumbtrail.cli.BadInput;
import crumbtrail.cli.CauseNames;
import crumbtrail.cli.CrumbtrailCommand;
import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.cli.Lower;
import crumbtrail.cli.Rules;
import crumbtrail.cli.screen.Screen;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Lists bakes of the log. */
@Command(
    name = "list",
    mixinStandardHelpOptions = true,
    description = "List the bakes of the log, the latest first.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail log list",
      "  crumbtrail log list --search flour --since 2026-01-01",
      "  crumbtrail log list --recipe baguette --cause over-proofed --format json"
    })
final class ListCommand implements Callable<Integer> {
  private static final int MOST = 10_000;

  enum Format {
    TEXT,
    JSON
  }

  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Mixin RulesOption rules;

  @Option(
      names = "--search",
      paramLabel = "WORDS",
      description = "only bakes in whose label, recipe or notes all these words stand")
  String search;

  @Option(names = "--recipe", paramLabel = "NAME", description = "only bakes of this recipe")
  String recipe;

  @Option(
      names = "--cause",
      paramLabel = "CAUSE",
      description =
          "only bakes for which this cause was confirmed, or came first and was not ruled out")
  String cause;

  @Option(names = "--since", paramLabel = "2026-03-01", description = "only of that day or later")
  String since;

  @Option(names = "--until", paramLabel = "2026-03-31", description = "only of that day or earlier")
  String until;

  @Option(
      names = "--most",
      paramLabel = "N",
      defaultValue = "50",
      description = "how many (${DEFAULT-VALUE} unless told)")
  int most;

  @Option(
      names = "--format",
      paramLabel = "text|json",
      defaultValue = "TEXT",
      description = "form of the list (text unless told)")
  Format format;

  @Override
  public Integer call() throws Exception {
    if (most < 1 || most > MOST) {
      throw new BadInput(List.of("--most: say a number from 1 to " + MOST + "."));
    }
    Sought sought =
        new Sought(
            search,
            recipe,
            cause == null
                ? null
                : CauseNames.named(Rules.book(rules.folder).catalogue(), cause).key(),
            since == null ? null : Kept.when("--since", since, 0),
            until == null
                ? null
                : Kept.when("--until", until, 0).plusDays(until.length() > 10 ? 0 : 1));
    Screen screen = CrumbtrailCommand.screen(spec);
    try (LogStore store = kept.open()) {
      Page page = store.of(Scope.ONLY_BAKER).list(sought, most, null);
      if (format == Format.JSON) {
        screen.out().println(json(page).toPrettyString());
      } else {
        screen.out().print(text(page, screen.width()));
        if (page.lines().isEmpty()) {
          screen
              .err()
              .println("No bake is like that. Put one in with: crumbtrail log add SHEET.json");
        } else if (page.more()) {
          screen.err().println("There are more; --most N lists them.");
        }
      }
      screen.out().flush();
    }
    return 0;
  }

  static String text(Page page, int width) {
    StringBuilder text = new StringBuilder();
    int label = page.lines().stream().mapToInt(line -> line.label().length()).max().orElse(0);
    int room = Math.min(label, width - 8 - 12 - 8 - 26);
    for (BakeLine line : page.lines()) {
      text.append(
          "%6d  %s  %-6s  %s  %s"
              .formatted(
                  line.id(),
                  line.baked().toLocalDate(),
                  line.outcome() == null ? "" : Lower.of(line.outcome()),
                  padded(line.label(), room),
                  causes(line))
              .stripTrailing());
      text.append('\n');
    }
    return text.toString();
  }

  private static String padded(String label, int room) {
    String cut = label.length() <= room ? label : label.substring(0, room - 1) + "…";
    return cut + " ".repeat(room - cut.length());
  }

  // What the baker found out counts for more than what a trace thinks.
  private static String causes(BakeLine line) {
    if (!line.confirmed().isEmpty()) {
      return String.join(", ", line.confirmed());
    }
    return line.firstCause() == null ? "" : line.firstCause() + "?";
  }

  private static ObjectNode json(Page page) {
    ObjectNode answer = JsonNodeFactory.instance.objectNode();
    ArrayNode bakes = answer.putArray("bakes");
    for (BakeLine line : page.lines()) {
      ObjectNode bake = bakes.addObject();
      bake.put("id", line.id());
      bake.put("baked", line.baked().toString());
      bake.put("label", line.label());
      bake.put("recipe", line.recipe());
      if (line.outcome() != null) {
        bake.put("outcome", Lower.of(line.outcome()));
      }
      if (line.firstCause() != null) {
        bake.put("firstCause", line.firstCause());
      }
      ArrayNode confirmed = bake.putArray("confirmed");
      line.confirmed().forEach(confirmed::add);
      bake.put("photos", line.photos());
    }
    return answer.put("more", page.more());
  }
}
