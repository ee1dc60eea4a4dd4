package crumbtrail.cli;

import crumbtrail.cli.log.LogCommand;
import crumbtrail.cli.manual.HelpShape;
import crumbtrail.cli.screen.Terminal;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.RunLast;

/** The command line. */
public final class Main {
  private Main() {}

  /**
   * Runs the command and ends the program with its status: 0 answered, 2 bad input, 1 a fault of
   * the program.
   */
  public static void main(String[] arguments) {
    System.exit(run(Terminal.here(), arguments));
  }

  /** As if started in a pipe, with nobody at a screen. */
  static int run(String... arguments) {
    return run(Terminal.piped(), arguments);
  }

  static int run(Terminal terminal, String... arguments) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    if (arguments.length == 0) {
      // Said before all commands are looked up, so that it is there at once.
      out.print(Welcome.text());
      out.flush();
      return 0;
    }
    CrumbtrailCommand root = new CrumbtrailCommand(terminal);
    CommandLine line =
        commands(root, arguments)
            .setOut(out)
            .setErr(err)
            .setUsageHelpWidth(terminal.width())
            .setExecutionStrategy(parsed -> execute(root, parsed));
    VaryCommand.offerKnobs(line, arguments);
    return line.execute(arguments);
  }

  /** All commands as they stand on the command line. */
  static CommandLine commands(CrumbtrailCommand root) {
    CommandLine line = new CommandLine(root);
    CrumbtrailCommand.offer(line);
    LogCommand.offer(line, LogCommand.NAME);
    return shaped(line);
  }

  /** Those of them that these arguments can ask for. */
  private static CommandLine commands(CrumbtrailCommand root, String... arguments) {
    CommandLine line = new CommandLine(root);
    CrumbtrailCommand.offer(line, arguments);
    LogCommand.offer(line, arguments);
    return shaped(line);
  }

  private static CommandLine shaped(CommandLine line) {
    line.setCaseInsensitiveEnumValuesAllowed(true)
        .setExecutionExceptionHandler(Faults::handle)
        .setParameterExceptionHandler(Misread::handle);
    HelpShape.give(line);
    return line;
  }

  // Whether help is coloured is known only when the command line has been read.
  private static int execute(CrumbtrailCommand root, ParseResult parsed) {
    CommandLine line = root.spec.commandLine();
    line.setColorScheme(Help.defaultColorScheme(root.coloured() ? Ansi.ON : Ansi.OFF));
    return new RunLast().execute(parsed);
  }
}
