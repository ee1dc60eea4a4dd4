package crumbtrail.cli;

import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.handbook.CardWriter;
import crumbtrail.handbook.CauseCards;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.rules.RuleBook;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The card of a cause, or the list of causes. */
@Command(
    name = "card",
    mixinStandardHelpOptions = true,
    description =
        "A cause on one card: what it is, how it shows, what to do, and a small bake that proves"
            + " it. Without a cause, the list of causes.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail card",
      "  crumbtrail card over-proofed",
      "  crumbtrail card final proof too long --format markdown"
    })
final class CardCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin RulesOption rules;

  @Parameters(paramLabel = "CAUSE", arity = "0..*", description = "key or name of a cause")
  List<String> words = List.of();

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, html or markdown (default: text)")
  String format;

  @Override
  public Integer call() throws Exception {
    CardWriter writer = writer();
    RuleBook book = Rules.book(rules.folder);
    PrintWriter out = spec.commandLine().getOut();
    if (words.isEmpty()) {
      list(book.catalogue(), out);
    } else {
      out.print(
          writer.write(
              new CauseCards(book)
                  .card(CauseNames.named(book.catalogue(), String.join(" ", words))),
              CrumbtrailCommand.screen(spec).width()));
    }
    out.flush();
    return 0;
  }

  private CardWriter writer() {
    for (CardWriter one : CardWriter.values()) {
      if (one.word().equals(format.toLowerCase(Locale.ROOT))) {
        return one;
      }
    }
    throw new BadInput(
        List.of(
            "--format: there is no \"%s\". Take one of %s."
                .formatted(format, String.join(", ", CardWriter.words()))));
  }

  private static void list(Catalogue catalogue, PrintWriter out) {
    for (String stage : CauseCards.stages()) {
      out.println(stage);
      catalogue.knowledge().causes().stream()
          .filter(cause -> cause.stage().equals(stage))
          .forEach(cause -> out.println("  %-34s %s".formatted(cause.key(), cause.name())));
    }
    out.println();
    out.println("Take one with: crumbtrail card over-proofed");
  }
}
