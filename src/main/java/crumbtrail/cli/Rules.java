package crumbtrail.cli;

import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.report.PostMortem;
import crumbtrail.rules.RuleBase;
import crumbtrail.rules.RuleBook;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Loads the rule base that the command line asks for. */
final class Rules {
  private Rules() {}

  /** The pipeline over the built-in rules, or over the folder that the option names. */
  static PostMortem postMortem(RulesOption option, PrintWriter progress)
      throws FaultyKnowledge, IOException {
    return new PostMortem(ruleBase(option, progress));
  }

  /** The rules as written: of this folder, or of ./rules, or those the program was built with. */
  static RuleBook book(Path folder) throws FaultyKnowledge {
    if (folder != null && !Files.isDirectory(folder)) {
      throw new BadInput(List.of("There is no folder " + folder + ". Name a folder like rules/."));
    }
    Path here = Path.of("rules");
    if (folder == null && !Files.isDirectory(here.resolve("stages"))) {
      return RuleBook.bundled();
    }
    return RuleBook.read(folder == null ? here : folder);
  }

  private static RuleBase ruleBase(RulesOption option, PrintWriter progress)
      throws FaultyKnowledge, IOException {
    if (option.folder == null) {
      return RuleBase.bundled();
    }
    if (!Files.isDirectory(option.folder)) {
      throw new BadInput(
          List.of("--rules: there is no folder " + option.folder + ". Name a folder like rules/."));
    }
    return RuleBase.of(option.folder, cache(), progress::println);
  }

  private static Path cache() {
    String base = System.getenv("XDG_CACHE_HOME");
    Path home =
        base == null || base.isBlank()
            ? Path.of(System.getProperty("user.home"), ".cache")
            : Path.of(base);
    return home.resolve("crumbtrail").resolve("rules");
  }
}
