package crumbtrail.cli;

import crumbtrail.api.Shelf;
import crumbtrail.bakelog.LogPlace;
import crumbtrail.bakelog.store.SqlLogStore;
import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.cli.settings.Setting;
import crumbtrail.cli.settings.Settings;
import crumbtrail.handbook.CauseCards;
import crumbtrail.handbook.Leaves;
import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.lessons.School;
import crumbtrail.memory.Later;
import crumbtrail.memory.Once;
import crumbtrail.picture.LoafPictures;
import crumbtrail.report.PostMortem;
import crumbtrail.rules.RuleBase;
import crumbtrail.rules.RuleBook;
import crumbtrail.web.Doorway;
import crumbtrail.web.LogDoor;
import crumbtrail.web.LogServing;
import crumbtrail.web.PostMortemTracer;
import crumbtrail.web.Stock;
import crumbtrail.web.Visits;
import crumbtrail.web.Watchers;
import crumbtrail.web.WebFace;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.function.Supplier;
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
    footer = {
      "",
      "Examples:",
      "  crumbtrail serve",
      "  crumbtrail serve --port 0 --log tide-mill",
      "  crumbtrail serve --config school.conf",
      "  crumbtrail serve --people --behind-proxy --log jdbc:postgresql://db.example/bakes"
    })
final class ServeCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin RulesOption rules;

  // Read through the settings, which look further where an option is missing.
  @Option(
      names = "--port",
      paramLabel = "N",
      description = "port to listen on; 0 takes a free one (7280 unless told)")
  String port;

  @Option(
      names = "--host",
      paramLabel = "ADDRESS",
      description = "address to listen on (127.0.0.1 unless told)")
  String host;

  @Option(
      names = "--log",
      paramLabel = "FILE|URL",
      description =
          "the bake log: a file, or a PostgreSQL server (what CRUMBTRAIL_LOG names, or a file among"
              + " your own data, unless told)")
  String log;

  @Option(names = "--no-log", description = "keep no bakes")
  boolean noLog;

  @Option(
      names = "--people",
      description =
          "several people share the log and log in; make the first with: crumbtrail log people add"
              + " NAME --role keeper")
  boolean people;

  @Option(
      names = "--behind-proxy",
      description =
          "a proxy stands before the server and nobody else reaches it: believe what it says in"
              + " X-Forwarded-For and X-Forwarded-Proto")
  boolean behindProxy;

  @Option(
      names = "--metrics",
      paramLabel = "WHO",
      description = "who may read /metrics: here, anywhere or nobody (here unless told)")
  String metrics;

  @Option(
      names = "--workers",
      paramLabel = "N",
      description = "requests worked on at once (32 unless told)")
  String workers;

  @Option(
      names = "--connections",
      paramLabel = "N",
      description = "connections open at once; more wait (12000 unless told)")
  String connections;

  @Option(
      names = "--patience",
      paramLabel = "SECONDS",
      description = "how long a client may lie idle or be slow (30 unless told)")
  String patience;

  @Option(
      names = "--posts-a-minute",
      paramLabel = "N",
      description =
          "how often one address may send something to be worked on, where others reach the server;"
              + " 0 for no limit (600 unless told)")
  String postsAMinute;

  @Option(
      names = "--config",
      paramLabel = "FILE",
      description =
          "settings for what no option says (crumbtrail/crumbtrail.conf in your configuration folder"
              + " unless told)")
  Path config;

  @Override
  public Integer call() throws Exception {
    Settings settings = Settings.of(spec.commandLine().getParseResult(), config, System.getenv());
    Doorway doorway = doorway(settings);
    Optional<LogServing> serving = serving(settings, doorway);
    rules.folder = Optional.ofNullable(settings.text(Setting.RULES)).map(Path::of).orElse(null);
    Later<PostMortem> postMortem = postMortem();
    Supplier<RuleBase> base = () -> postMortem.get().rules();
    Once<RuleBook> book = new Once<>(() -> base.get().book());
    WebFace face =
        WebFace.start(
            new PostMortemTracer(postMortem),
            new Stock(
                Optional.of(() -> base.get().catalogue()),
                Optional.of(new Once<>(() -> School.of(base.get()))),
                Optional.of(new Once<>(() -> shelf(book.get(), base.get().version()))),
                Optional.of(new Once<>(() -> new Leaves(book.get()))),
                LoafPictures.of(() -> base.get().catalogue())),
            serving,
            doorway);
    spec.commandLine().getOut().println("Crumbtrail listens on " + face.address());
    // The server's own threads answer; this one only keeps the command alive until it is told to
    // stop.
    new CountDownLatch(1).await();
    return 0;
  }

  private static Shelf shelf(RuleBook book, String version) {
    return new Shelf(book.catalogue(), new CauseCards(book), version);
  }

  // The program's own rules are laid out while the server starts; a baker's own may have faults,
  // which are told before it does.
  private Later<PostMortem> postMortem() throws FaultyKnowledge, IOException {
    if (rules.folder == null) {
      return Later.begun("read-rules", () -> new PostMortem(RuleBase.bundled()));
    }
    PostMortem own = Rules.postMortem(rules, spec.commandLine().getErr());
    return Later.begun("read-rules", () -> own);
  }

  private static Doorway doorway(Settings settings) {
    return new Doorway(
        String.valueOf(settings.text(Setting.HOST)),
        settings.number(Setting.PORT),
        new Visits(settings.yes(Setting.BEHIND_PROXY), settings.number(Setting.POSTS_A_MINUTE)),
        Watchers.valueOf(String.valueOf(settings.text(Setting.METRICS)).toUpperCase(Locale.ROOT)),
        settings.number(Setting.WORKERS),
        settings.number(Setting.CONNECTIONS),
        Duration.ofSeconds(settings.number(Setting.PATIENCE)));
  }

  // The log is opened when somebody first asks for it.
  private Optional<LogServing> serving(Settings settings, Doorway doorway) {
    boolean proxied = doorway.visits().behindProxy();
    boolean open = !WebFace.isLoopback(doorway.host()) || proxied;
    boolean shared = settings.yes(Setting.PEOPLE);
    boolean told = settings.text(Setting.LOG) != null;
    if (shared && settings.noLog()) {
      throw new BadInput(List.of("--people: there is nothing to share with --no-log."));
    }
    if (settings.noLog() || (!told && open && !shared)) {
      return Optional.empty();
    }
    if (open && !shared) {
      throw new BadInput(
          List.of(
              (proxied ? "--behind-proxy" : "--host " + doorway.host())
                  + ": others could reach the server, and would read and change your log.",
              "Let them log in with --people, or serve without a log with --no-log."));
    }
    if (!WebFace.isLoopback(doorway.host()) && !proxied) {
      spec.commandLine()
          .getErr()
          .println(
              "Passwords would cross the network in clear. Put a proxy before the server that takes"
                  + " https, and say --behind-proxy.");
    }
    LogPlace place = LogPlace.of(settings.text(Setting.LOG), System.getenv());
    return Optional.of(new LogServing(new LogDoor(() -> SqlLogStore.open(place)), shared, proxied));
  }
}
