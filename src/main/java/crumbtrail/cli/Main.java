package crumbtrail.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** The command line. */
public final class Main {
  private Main() {}

  /**
   * Runs the command and ends the program with its status: 0 answered, 2 bad input, 1 a fault of
   * the program.
   */
  public static void main(String[] arguments) {
    System.exit(run(arguments));
  }

  static int run(String... arguments) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    CommandLine line =
        new CommandLine(new CrumbtrailCommand())
            .setOut(out)
            .setErr(err)
            .setCaseInsensitiveEnumValuesAllowed(true)
            .setExecutionExceptionHandler(Faults::handle);
    VaryCommand.offerKnobs(line, arguments);
    return line.execute(arguments);
  }
}
