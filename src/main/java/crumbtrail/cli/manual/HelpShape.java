package crumbtrail.cli.manual;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** How the help of every command looks: options under headings, exit status at its end. */
public final class HelpShape {
  private static final int LONGEST_OPTION = 26;

  private HelpShape() {}

  /** What the exit status of a command means. */
  public static Map<String, String> exitStatus() {
    Map<String, String> status = new LinkedHashMap<>();
    status.put("0", "answered");
    status.put("2", "the input cannot be used; what is wrong is said on standard error");
    status.put("1", "a fault of the program");
    return status;
  }

  /** Gives this shape to a command and all below it. */
  public static void give(CommandLine line) {
    UsageMessageSpec usage = line.getCommandSpec().usageMessage();
    if (usage.exitCodeList().isEmpty()) {
      usage.exitCodeListHeading("%nExit status:%n").exitCodeList(exitStatus());
    }
    usage.longOptionsMaxWidth(LONGEST_OPTION);
    line.getHelpSectionMap().put(UsageMessageSpec.SECTION_KEY_OPTION_LIST, HelpShape::options);
    line.getSubcommands().values().forEach(HelpShape::give);
  }

  private static String options(Help help) {
    StringBuilder text = new StringBuilder();
    CommandSpec command = help.commandSpec();
    OptionGroups.of(command)
        .forEach(
            (heading, options) -> {
              text.append('\n').append(help.colorScheme().text(heading + ":")).append('\n');
              text.append(rows(help, options));
            });
    return text.toString();
  }

  private static String rows(Help help, List<OptionSpec> options) {
    Help.Layout layout = help.createDefaultLayout(options, List.of(), help.colorScheme());
    layout.addOptions(options, help.createDefaultParamLabelRenderer());
    return layout.toString();
  }
}
