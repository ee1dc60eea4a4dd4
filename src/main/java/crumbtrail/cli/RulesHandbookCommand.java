package crumbtrail.cli;

import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.handbook.Coverage;
import crumbtrail.handbook.Handbook;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the handbook from the rules. */
@Command(
    name = "handbook",
    mixinStandardHelpOptions = true,
    description = "Write the handbook: a page for each cause and each sign, and the tables.",
    footer = {"", "Examples:", "  crumbtrail rules handbook --out docs/handbook"})
final class RulesHandbookCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin RulesOption rules;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      required = true,
      description =
          "folder for the pages, such as docs/handbook; pages in it of causes and signs that are"
              + " no more are taken away")
  Path folder;

  @Override
  public Integer call() throws Exception {
    Coverage coverage = Rules.coverage(rules, null, spec.commandLine().getErr());
    Map<String, String> pages = Handbook.pages(Rules.book(rules.folder), coverage);
    Handbook.write(pages, folder);
    spec.commandLine().getOut().println(pages.size() + " pages in " + folder);
    return 0;
  }
}
