package crumbtrail.cli;

import crumbtrail.api.Shelf;
import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.handbook.CauseCards;
import crumbtrail.handbook.Leaves;
import crumbtrail.lessons.School;
import crumbtrail.picture.LoafPictures;
import crumbtrail.report.PostMortem;
import crumbtrail.rules.RuleBook;
import crumbtrail.web.PostMortemTracer;
import crumbtrail.web.WebFace;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The web face. */
@Command(
    name = "serve",
    mixinStandardHelpOptions = true,
    description =
        "Serve the pages and the JSON interface, on this machine only unless told otherwise.",
    footer = {"", "Examples:", "  crumbtrail serve", "  crumbtrail serve --port 0"})
final class ServeCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin RulesOption rules;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "7280",
      description = "port to listen on; 0 takes a free one (${DEFAULT-VALUE} unless told)")
  int port;

  @Option(
      names = "--host",
      paramLabel = "ADDRESS",
      defaultValue = "127.0.0.1",
      description = "address to listen on (${DEFAULT-VALUE} unless told)")
  String host;

  @Override
  public Integer call() throws Exception {
    PostMortem postMortem = Rules.postMortem(rules, spec.commandLine().getErr());
    RuleBook book = rules.folder == null ? RuleBook.bundled() : RuleBook.read(rules.folder);
    WebFace face =
        WebFace.start(
            new PostMortemTracer(postMortem),
            School.of(postMortem.rules()),
            new Shelf(book.catalogue(), new CauseCards(book), postMortem.rules().version()),
            new Leaves(book),
            LoafPictures.of(postMortem.rules().catalogue()),
            host,
            port);
    spec.commandLine().getOut().println("Crumbtrail listens on " + face.address());
    // The server's own threads answer; this one only keeps the command alive until it is told to
    // stop.
    new CountDownLatch(1).await();
    return 0;
  }
}
