package crumbtrail.cli.manual;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** A manual page in roff with the man macros, from the model of a command. */
public final class ManPage {
  private final StringBuilder page = new StringBuilder();
  private final CommandSpec command;

  private ManPage(CommandSpec command) {
    this.command = command;
  }

  /** The page of a command. */
  public static String of(CommandSpec command) {
    ManPage page = new ManPage(command);
    page.write();
    return page.page.toString();
  }

  /** The name by which man finds the page: "crumbtrail-rules-check". */
  public static String name(CommandSpec command) {
    return command.qualifiedName("-");
  }

  private void write() {
    String title = name(command);
    macro(".TH", title.toUpperCase(Locale.ROOT), "1", "", version(), "Crumbtrail");
    macro(".SH", "NAME");
    text(title + " - " + summary(command));
    macro(".SH", "SYNOPSIS");
    text(new CommandLine.Help(command, Ansi.OFF).synopsis(0).strip().replaceAll("\\s+", " "));
    macro(".SH", "DESCRIPTION");
    text(description(command));
    arguments();
    options();
    commands();
    macro(".SH", "EXIT STATUS");
    command.usageMessage().exitCodeList().forEach(this::entry);
    examples();
    seeAlso();
  }

  private String version() {
    String[] version = command.root().version();
    return version.length == 0 ? "crumbtrail" : version[0];
  }

  private void arguments() {
    List<PositionalParamSpec> shown =
        command.positionalParameters().stream().filter(one -> !one.hidden()).toList();
    if (!shown.isEmpty()) {
      macro(".SH", "ARGUMENTS");
      shown.forEach(one -> entry(one.paramLabel(), String.join(" ", one.description())));
    }
  }

  private void options() {
    macro(".SH", "OPTIONS");
    OptionGroups.of(command)
        .forEach(
            (heading, options) -> {
              macro(".SS", heading);
              options.forEach(this::option);
            });
  }

  private void option(OptionSpec option) {
    String names = String.join(", ", option.names());
    String value = option.arity().max() == 0 ? "" : "=" + option.paramLabel();
    entry(names + value, String.join(" ", option.description()));
  }

  private void commands() {
    if (!command.subcommands().isEmpty()) {
      macro(".SH", "COMMANDS");
      command
          .subcommands()
          .forEach((name, below) -> entry(name, description(below.getCommandSpec())));
    }
  }

  private void examples() {
    List<String> lines =
        Arrays.stream(command.usageMessage().footer())
            .filter(line -> line.startsWith("  "))
            .map(line -> line.replace("%%", "%").strip())
            .toList();
    if (!lines.isEmpty()) {
      macro(".SH", "EXAMPLES");
      page.append(".nf\n");
      lines.forEach(this::text);
      page.append(".fi\n");
    }
  }

  private void seeAlso() {
    String others =
        command.parent() == null
            ? command.subcommands().values().stream()
                .map(below -> name(below.getCommandSpec()) + "(1)")
                .collect(Collectors.joining(", "))
            : name(command.parent()) + "(1)";
    if (!others.isEmpty()) {
      macro(".SH", "SEE ALSO");
      text(others);
    }
  }

  private static String description(CommandSpec command) {
    return Arrays.stream(command.usageMessage().description())
        .map(words -> words.replace("%%", "%").replace("%n", " "))
        .collect(Collectors.joining(" "));
  }

  // The first sentence, as the list of all manual pages shows it.
  private static String summary(CommandSpec command) {
    return description(command).replaceFirst("(?s)(?<=[.?:]) .*", "").replaceFirst("[.:]$", "");
  }

  private void entry(String name, String words) {
    page.append(".TP\n\\fB").append(escaped(name)).append("\\fR\n");
    text(words.replace("%%", "%"));
  }

  private void macro(String name, String... arguments) {
    page.append(name);
    for (String argument : arguments) {
      page.append(" \"").append(escaped(argument)).append('"');
    }
    page.append('\n');
  }

  private void text(String words) {
    String escaped = escaped(words);
    // A point or an apostrophe at its beginning would make a command of the line.
    boolean control = escaped.startsWith(".") || escaped.startsWith("\\(aq");
    page.append(control ? "\\&" : "").append(escaped).append('\n');
  }

  /** Words in which nothing is read as a command of roff. */
  static String escaped(String words) {
    StringBuilder safe = new StringBuilder(words.length() + 16);
    words
        .codePoints()
        .forEach(
            letter ->
                safe.append(
                    switch (letter) {
                      case '\\' -> "\\e";
                      case '-' -> "\\-";
                      case '"' -> "\\(dq";
                      case '\'' -> "\\(aq";
                      case '`' -> "\\(ga";
                      case '^' -> "\\(ha";
                      case '~' -> "\\(ti";
                      case '\n', '\r', '\t' -> " ";
                      default -> Character.toString(letter);
                    }));
    return safe.toString();
  }
}
