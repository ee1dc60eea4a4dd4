package crumbtrail.cli;

import crumbtrail.cli.log.LogCommand;
import crumbtrail.cli.screen.Screen;
import crumbtrail.cli.screen.Terminal;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The command that the others hang from. */
@Command(
    name = "crumbtrail",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Why did my bake fail, and what do I change?",
    footer = {
      "",
      "Examples:",
      "  crumbtrail new",
      "  crumbtrail trace demo",
      "  crumbtrail next cases/over-proofed-tin-loaf.json --start 9:00",
      "  crumbtrail precheck cases/healthy-tin-loaf.json",
      "  crumbtrail compare cases/healthy-tin-loaf.json cases/over-proofed-tin-loaf.json",
      "  crumbtrail trace - --format json < sheet.json",
      "  crumbtrail vary cases/healthy-tin-loaf.json --salt 0..4%%",
      "  crumbtrail card over-proofed",
      "  crumbtrail mystery --level hard",
      "  crumbtrail batch sheets.jsonl --out reports.jsonl",
      "  crumbtrail log add demo --note \"first try\"",
      "",
      "Help on one command: crumbtrail trace --help"
    })
public final class CrumbtrailCommand implements Runnable {
  /** The commands below this one, by the word on the command line, in the order of its help. */
  private static final Map<String, Class<?>> COMMANDS = commands();

  /** Commands that tell of all others. */
  private static final Set<String> KNOWING = Set.of("man", "completion");

  /** What every command that reads a sheet says of its parameter. */
  public static final String SHEET =
      "the bake sheet; - for standard input, demo for one that comes with the program";

  /** When an answer is coloured. */
  enum Colour {
    AUTO,
    ALWAYS,
    NEVER;

    @Override
    public String toString() {
      return Lower.of(this);
    }
  }

  @Spec CommandSpec spec;

  @Option(
      names = "--color",
      paramLabel = "WHEN",
      defaultValue = "AUTO",
      scope = ScopeType.INHERIT,
      description = "colours: ${COMPLETION-CANDIDATES} (on a terminal unless told)")
  Colour colour;

  private final Terminal terminal;

  CrumbtrailCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  private static Map<String, Class<?>> commands() {
    Map<String, Class<?>> all = new LinkedHashMap<>();
    all.put("new", NewCommand.class);
    all.put("trace", TraceCommand.class);
    all.put("precheck", PrecheckCommand.class);
    all.put("next", NextCommand.class);
    all.put("compare", CompareCommand.class);
    all.put("batch", BatchCommand.class);
    all.put("vary", VaryCommand.class);
    all.put("mystery", MysteryCommand.class);
    all.put("lesson", LessonCommand.class);
    all.put("card", CardCommand.class);
    all.put("serve", ServeCommand.class);
    all.put(LogCommand.NAME, LogCommand.class);
    all.put("rules", RulesCommand.class);
    all.put("completion", CompletionCommand.class);
    all.put("man", ManCommand.class);
    all.put("version", VersionCommand.class);
    return Collections.unmodifiableMap(all);
  }

  /**
   * Gives the command those below it: where the first word names one, that one alone. To look at
   * all of them takes a fifth of a second, and nothing is said of the others there.
   */
  static void offer(CommandLine root, String... arguments) {
    Class<?> only = arguments.length == 0 ? null : COMMANDS.get(arguments[0]);
    boolean alone = only != null && !KNOWING.contains(arguments[0]);
    (alone ? List.<Class<?>>of(only) : COMMANDS.values()).forEach(root::addSubcommand);
  }

  @Override
  public void run() {
    spec.commandLine().getOut().print(Welcome.text());
    spec.commandLine().getOut().flush();
  }

  Terminal terminal() {
    return terminal;
  }

  /** Whether a person types what this command reads. */
  public static boolean typed(CommandSpec spec) {
    return ((CrumbtrailCommand) spec.root().userObject()).terminal().typed();
  }

  boolean coloured() {
    return colour == Colour.ALWAYS || (colour != Colour.NEVER && terminal.wantsColour());
  }

  /** What a command below this one writes to. */
  public static Screen screen(CommandSpec spec) {
    // A command that is run by itself, as its tests do, has nobody watching.
    CrumbtrailCommand root =
        spec.root().userObject() instanceof CrumbtrailCommand found
            ? found
            : new CrumbtrailCommand(Terminal.piped());
    return new Screen(
        spec.commandLine().getOut(),
        spec.commandLine().getErr(),
        root.terminal.width(),
        root.coloured(),
        root.terminal.watched());
  }

  /** For commands that take long. */
  public static final class ProgressOption {
    @Option(
        names = "--progress",
        description = "tell how far the work is, also where standard error is no terminal")
    boolean asked;

    /** Whether it is told. */
    public boolean shown(CommandSpec spec) {
      return asked || screen(spec).progress();
    }
  }

  /** A rules folder of the baker's own. */
  public static final class RulesOption {
    @Spec(Spec.Target.MIXEE)
    CommandSpec command;

    @Option(
        names = "--rules",
        paramLabel = "DIR",
        description = "use the rules in this folder in place of the built-in ones")
    public Path folder;
  }
}
