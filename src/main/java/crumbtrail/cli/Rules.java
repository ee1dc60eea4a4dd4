package crumbtrail.cli;

import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.cli.screen.Progress;
import crumbtrail.handbook.Coverage;
import crumbtrail.handbook.SheetFiles;
import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.report.PostMortem;
import crumbtrail.rules.RuleBase;
import crumbtrail.rules.RuleBook;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Loads the rule base that the command line asks for. */
public final class Rules {
  private Rules() {}

  /** The pipeline over the built-in rules, or over the folder that the option names. */
  public static PostMortem postMortem(RulesOption option, PrintWriter progress)
      throws FaultyKnowledge, IOException {
    return new PostMortem(ruleBase(option, progress));
  }

  /** The rules as written: of this folder, or of ./rules, or those the program was built with. */
  public static RuleBook book(Path folder) throws FaultyKnowledge {
    if (folder != null && !Files.isDirectory(folder)) {
      throw new BadInput(List.of("There is no folder " + folder + ". Name a folder like rules/."));
    }
    if (folder == null && !here()) {
      return RuleBook.bundled();
    }
    return RuleBook.read(folder == null ? Path.of("rules") : folder);
  }

  /**
   * Which rules spoke on the sheets of these folders.
   *
   * @param option the rules; ./rules or the built-in ones unless it names a folder
   * @param folders null for those of the project
   */
  static Coverage coverage(RulesOption option, List<Path> folders, PrintWriter progress)
      throws FaultyKnowledge, IOException {
    List<SheetFiles.Named> sheets = new ArrayList<>();
    for (Path folder : folders == null ? SheetFiles.projects() : folders) {
      if (!Files.isDirectory(folder)) {
        throw new BadInput(List.of("There is no folder " + folder + " of bake sheets."));
      }
      sheets.addAll(sheets(folder));
    }
    RuleBook book = book(option.folder);
    return Coverage.of(underWork(option, progress), book, sheets);
  }

  /** The rules that the option names, or ./rules where somebody works on them, or the built-in. */
  static RuleBase underWork(RulesOption option, PrintWriter progress)
      throws FaultyKnowledge, IOException {
    RulesOption same = new RulesOption();
    same.command = option.command;
    same.folder = option.folder == null && here() ? Path.of("rules") : option.folder;
    return ruleBase(same, progress);
  }

  private static List<SheetFiles.Named> sheets(Path folder) throws IOException {
    try {
      return SheetFiles.read(folder);
    } catch (FileSystemException unreadable) {
      throw unreadable;
    } catch (IOException fault) {
      throw new BadInput(List.of(String.valueOf(fault.getMessage())));
    }
  }

  private static boolean here() {
    return Files.isDirectory(Path.of("rules", "stages"));
  }

  static RuleBase ruleBase(RulesOption option, PrintWriter progress)
      throws FaultyKnowledge, IOException {
    if (option.folder == null) {
      return RuleBase.bundled();
    }
    if (!Files.isDirectory(option.folder)) {
      throw new BadInput(
          List.of("--rules: there is no folder " + option.folder + ". Name a folder like rules/."));
    }
    boolean shown = option.command != null && CrumbtrailCommand.screen(option.command).progress();
    try (Progress told = Progress.waiting(progress, shown, "Working on the rules")) {
      told.begin();
      return RuleBase.of(option.folder, cache(), told::say);
    }
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
