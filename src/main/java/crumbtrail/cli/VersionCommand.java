package crumbtrail.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.rules.RuleBase;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What is running. */
@Command(
    name = "version",
    mixinStandardHelpOptions = true,
    description =
        "Tell what is running: the program, its rules with the hash that stands in every report,"
            + " and Java.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail version",
      "  crumbtrail version --rules rules",
      "  crumbtrail version --format json"
    })
final class VersionCommand implements Callable<Integer> {
  /** In what form it is told. */
  enum Format {
    TEXT,
    JSON;

    @Override
    public String toString() {
      return Lower.of(this);
    }
  }

  /**
   * What is told.
   *
   * @param version of the program
   * @param ruleBase hash of the rules folder
   * @param edition what the rules folder calls its edition, empty where it does not say
   * @param rules how many rules there are
   * @param java version and maker of the Java that runs it
   */
  record Running(String version, String ruleBase, String edition, int rules, String java) {}

  @Spec CommandSpec spec;

  @Mixin RulesOption rules;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "TEXT",
      description = "${COMPLETION-CANDIDATES} (${DEFAULT-VALUE} unless told)")
  Format format;

  @Override
  public Integer call() throws Exception {
    RuleBase base = Rules.ruleBase(rules, spec.commandLine().getErr());
    Running running =
        new Running(Version.program(), base.version(), base.edition(), base.size(), Version.java());
    PrintWriter out = spec.commandLine().getOut();
    out.println(format == Format.JSON ? json(running) : text(running));
    out.flush();
    return 0;
  }

  private static String json(Running running) throws JsonProcessingException {
    return new ObjectMapper()
        .enable(SerializationFeature.INDENT_OUTPUT)
        .writeValueAsString(running);
  }

  private static String text(Running running) {
    String edition = running.edition().isEmpty() ? "" : "edition " + running.edition() + ", ";
    return """
        crumbtrail  %s
        rules       %s%d rules, %s
        Java        %s"""
        .formatted(running.version(), edition, running.rules(), running.ruleBase(), running.java());
  }
}
