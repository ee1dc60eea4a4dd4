package crumbtrail.cli.manual;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Completion for the fish shell, from the model of the commands. */
public final class FishCompletion {
  private final StringBuilder script = new StringBuilder();
  private final String program;

  private FishCompletion(String program) {
    this.program = program;
  }

  /** The script for a program. */
  public static String of(CommandSpec root) {
    FishCompletion fish = new FishCompletion(root.name());
    fish.command(root, List.of());
    return fish.script.toString();
  }

  private void command(CommandSpec command, List<String> way) {
    List<String> below = List.copyOf(command.subcommands().keySet());
    String here = here(way, below);
    command
        .subcommands()
        .forEach(
            (name, line) -> line(here, " -f -a " + quoted(name) + words(line.getCommandSpec())));
    command.options().stream()
        .filter(option -> !option.hidden())
        .forEach(option -> option(here, option));
    command.positionalParameters().stream()
        .map(FishCompletion::values)
        .filter(values -> !values.isEmpty())
        .forEach(values -> line(here, " -f -a " + quoted(values)));
    for (CommandLine line : command.subcommands().values()) {
      List<String> further = new ArrayList<>(way);
      further.add(line.getCommandName());
      command(line.getCommandSpec(), further);
    }
  }

  private void option(String here, OptionSpec option) {
    StringBuilder words = new StringBuilder();
    for (String name : option.names()) {
      words.append(name.startsWith("--") ? " -l " : " -s ").append(name.replaceFirst("^-+", ""));
    }
    if (option.arity().max() > 0) {
      String values = values(option);
      words.append(values.isEmpty() ? " -r" : " -x -a " + quoted(values));
    }
    String said = option.description().length == 0 ? "" : option.description()[0];
    line(here, words + (said.isEmpty() ? "" : " -d " + quoted(said.replace("%%", "%"))));
  }

  private void line(String here, String words) {
    script.append("complete -c ").append(program).append(here).append(words).append('\n');
  }

  // True where all commands on the way have been typed and none below them.
  private static String here(List<String> way, List<String> below) {
    String typed =
        way.stream()
            .map(name -> "__fish_seen_subcommand_from " + name)
            .collect(Collectors.joining("; and "));
    String open =
        below.isEmpty() ? "" : "not __fish_seen_subcommand_from " + String.join(" ", below);
    String condition = typed.isEmpty() || open.isEmpty() ? typed + open : typed + "; and " + open;
    return condition.isEmpty() ? "" : " -n " + quoted(condition);
  }

  private static String words(CommandSpec command) {
    String[] said = command.usageMessage().description();
    return said.length == 0 ? "" : " -d " + quoted(said[0].replace("%%", "%"));
  }

  private static String values(ArgSpec arg) {
    List<String> values = new ArrayList<>();
    if (arg.completionCandidates() != null) {
      arg.completionCandidates().forEach(values::add);
    }
    return String.join(" ", values);
  }

  private static String quoted(String words) {
    return "'" + words.replace("\\", "\\\\").replace("'", "\\'") + "'";
  }
}
