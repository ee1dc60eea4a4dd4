package crumbtrail.cli;

import crumbtrail.knowledge.Nearest;
import java.io.PrintWriter;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with a command line, what was probably meant, and where to read more. */
final class Misread {
  private Misread() {}

  static int handle(ParameterException fault, String... arguments) {
    CommandLine line = fault.getCommandLine();
    PrintWriter err = line.getErr();
    err.println(said(fault));
    meant(fault).ifPresent(word -> err.println("Did you mean " + word + "?"));
    Help help = line.getHelp();
    err.print("Usage: " + help.synopsis("Usage: ".length()));
    err.println("More: " + line.getCommandSpec().qualifiedName() + " --help");
    err.flush();
    return Faults.INPUT;
  }

  // What is named wrongly is most often spelt wrongly.
  private static Optional<String> meant(ParameterException fault) {
    if (!(fault instanceof UnmatchedArgumentException unmatched)) {
      return Optional.empty();
    }
    CommandLine line = fault.getCommandLine();
    String said = unmatched.getUnmatched().get(0);
    Collection<String> known =
        unmatched.isUnknownOption()
            ? line.getCommandSpec().optionsMap().keySet().stream()
                .filter(name -> name.startsWith("--"))
                .toList()
            : line.getSubcommands().keySet();
    return known.isEmpty() ? Optional.empty() : Optional.of(Nearest.of(bare(said), known));
  }

  private static String bare(String said) {
    return said.replaceFirst("=.*", "");
  }

  // The library's words name Java's brackets and constants; a baker's words do not.
  private static String said(ParameterException fault) {
    if (fault instanceof UnmatchedArgumentException unmatched) {
      String first = bare(unmatched.getUnmatched().get(0));
      if (unmatched.isUnknownOption()) {
        return "There is no option " + first + " here.";
      }
      boolean commands = !fault.getCommandLine().getSubcommands().isEmpty();
      return commands
          ? "There is no command \"" + first + "\"."
          : "\"" + first + "\" is one word too many.";
    }
    ArgSpec place = fault.getArgSpec();
    if (place != null && place.type().isEnum() && fault.getValue() != null) {
      List<String> would =
          Arrays.stream(place.type().getEnumConstants())
              .map(one -> one.toString().toLowerCase(Locale.ROOT))
              .toList();
      return named(place)
          + ": there is no \""
          + fault.getValue()
          + "\". Take one of "
          + String.join(", ", would)
          + ".";
    }
    String words = String.valueOf(fault.getMessage());
    return words.endsWith(".") ? words : words + ".";
  }

  private static String named(ArgSpec place) {
    return place instanceof OptionSpec option ? option.longestName() : place.paramLabel();
  }
}
