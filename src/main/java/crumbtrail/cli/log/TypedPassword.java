package crumbtrail.cli.log;

import crumbtrail.cli.BadInput;
import crumbtrail.cli.CrumbtrailCommand;
import crumbtrail.people.Passwords;
import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;

/**
 * A new password: typed twice at a terminal that does not show it, or the first line of standard
 * input. It is never an argument, since everybody on a machine can see those.
 */
final class TypedPassword {
  private TypedPassword() {}

  /** The hash of a password for somebody of this name. */
  static String hash(CommandSpec spec, String name) throws IOException {
    String password;
    if (!CrumbtrailCommand.typed(spec)) {
      String line =
          new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)).readLine();
      password = line == null ? "" : line;
    } else {
      Console console = System.console();
      password = read(console, "Password for %s: ", name);
      if (!password.equals(read(console, "Once more: "))) {
        throw new BadInput(List.of("The two passwords are not the same. Nothing was changed."));
      }
    }
    Passwords.fault(password, name)
        .ifPresent(
            fault -> {
              throw new BadInput(List.of(words(fault)));
            });
    return Passwords.hash(password);
  }

  private static String read(Console console, String prompt, Object... values) {
    char[] typed = console.readPassword(prompt, values);
    return typed == null ? "" : new String(typed);
  }

  private static String words(Passwords.Fault fault) {
    return switch (fault) {
      case TOO_SHORT ->
          "The password is too short: at least "
              + Passwords.SHORTEST
              + " characters. Type it when asked, or send it through standard input.";
      case TOO_LONG -> "The password is too long: at most " + Passwords.LONGEST + " characters.";
      case THE_NAME -> "The password is the name. Take another.";
    };
  }
}
