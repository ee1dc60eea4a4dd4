package crumbtrail.cli.manual;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** The options of a command under headings, in one order for all commands. */
public final class OptionGroups {
  private static final String ELSE = "Options";
  private static final String KNOBS = "What can be turned (one or two)";
  private static final String WORK = "Rules and cases";
  private static final String GENERAL = "General";

  private static final Map<String, List<String>> GROUPS = groups();

  private OptionGroups() {}

  private static Map<String, List<String>> groups() {
    Map<String, List<String>> groups = new LinkedHashMap<>();
    groups.put("The answer", List.of("--format", "--out", "--force", "--hints"));
    groups.put("A talk", List.of("--ask", "--save", "--level", "--seed"));
    groups.put("Your day and dough", List.of("--start", "--ready", "--bulk", "--proof"));
    groups.put(WORK, List.of("--rules", "--cases", "--real", "--tables"));
    groups.put(GENERAL, List.of("--color", "--progress", "--help", "--version"));
    return groups;
  }

  /** The options that are shown, under their headings; headings without options are left out. */
  public static Map<String, List<OptionSpec>> of(CommandSpec command) {
    Map<String, List<OptionSpec>> sorted = new LinkedHashMap<>();
    sorted.put(ELSE, new ArrayList<>());
    sorted.put(KNOBS, new ArrayList<>());
    GROUPS.keySet().forEach(heading -> sorted.put(heading, new ArrayList<>()));
    for (OptionSpec option : command.options()) {
      if (!option.hidden()) {
        sorted.get(heading(option)).add(option);
      }
    }
    sorted.values().removeIf(List::isEmpty);
    return sorted;
  }

  // An option that no field of a command holds is one of the catalogue's quantities.
  private static String heading(OptionSpec option) {
    if (option.userObject() == null && !option.usageHelp() && !option.versionHelp()) {
      return KNOBS;
    }
    return GROUPS.entrySet().stream()
        .filter(group -> group.getValue().contains(option.longestName()))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(ELSE);
  }
}
