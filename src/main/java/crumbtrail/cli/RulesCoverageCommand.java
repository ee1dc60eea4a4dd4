package crumbtrail.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.handbook.Coverage;
import crumbtrail.handbook.CoverageWords;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Which rules spoke on which sheets. */
@Command(
    name = "coverage",
    mixinStandardHelpOptions = true,
    description = "Show which rules spoke on which sheets, and which spoke on none.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail rules coverage",
      "  crumbtrail rules coverage cases --format json"
    })
final class RulesCoverageCommand implements Callable<Integer> {
  enum Format {
    TEXT,
    JSON;

    @Override
    public String toString() {
      return Lower.of(this);
    }
  }

  @Spec CommandSpec spec;

  @Mixin RulesOption rules;

  @Parameters(
      paramLabel = "DIR",
      arity = "0..*",
      description = "folders of bake sheets (the project's own cases and probes unless told)")
  List<Path> folders;

  @Option(
      names = "--format",
      paramLabel = "text|json",
      defaultValue = "TEXT",
      description = "form of the answer (text unless told)")
  Format format;

  @Override
  public Integer call() throws Exception {
    Coverage coverage = Rules.coverage(rules, folders, spec.commandLine().getErr());
    spec.commandLine()
        .getOut()
        .print(
            format == Format.TEXT
                ? CoverageWords.text(coverage)
                : new ObjectMapper()
                        .writerWithDefaultPrettyPrinter()
                        .writeValueAsString(CoverageWords.json(coverage))
                    + System.lineSeparator());
    spec.commandLine().getOut().flush();
    return 0;
  }
}
