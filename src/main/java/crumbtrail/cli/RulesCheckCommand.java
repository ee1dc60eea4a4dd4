package crumbtrail.cli;

import crumbtrail.cli.screen.Progress;
import crumbtrail.knowledge.Fault;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.rules.RuleBook;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** All guards over a rules folder. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description =
        "Check every word of the rules and whether anything is missing. Each fault is named with"
            + " file and line, what is wrong, and what would be right.",
    exitCodeListHeading = "%nExit status:%n",
    exitCodeList = {"0:no fault", "2:at least one fault", "1:a fault of the program"},
    footer = {
      "",
      "Examples:",
      "  crumbtrail rules check",
      "  crumbtrail rules check my-rules --hints"
    })
final class RulesCheckCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Parameters(
      paramLabel = "DIR",
      arity = "0..1",
      description = "the rules folder (./rules if there is one, else the built-in rules)")
  Path folder;

  @Option(names = "--hints", description = "also name what may be worth a look")
  boolean hints;

  @Override
  public Integer call() throws Exception {
    PrintWriter out = spec.commandLine().getOut();
    RuleBook book;
    List<Fault> faults;
    boolean shown = CrumbtrailCommand.screen(spec).progress();
    try (Progress told = Progress.waiting(spec.commandLine().getErr(), shown, "Checking")) {
      told.begin();
      book = Rules.book(folder);
      faults = book.faults();
    }
    if (!faults.isEmpty()) {
      PrintWriter err = spec.commandLine().getErr();
      err.println("The rules have " + faults.size() + " fault(s):");
      faults.forEach(err::println);
    }
    if (hints) {
      book.hints().forEach(hint -> out.println("hint: " + hint));
    }
    out.println(summary(book));
    return faults.isEmpty() ? 0 : Faults.INPUT;
  }

  private static String summary(RuleBook book) {
    Knowledge knowledge = book.catalogue().knowledge();
    return "%d rules, %d causes, %d signs, %d circumstances, %d readings, %d breads, %d sources"
        .formatted(
            book.rules().size(),
            knowledge.causes().size(),
            knowledge.signs().size(),
            knowledge.circumstances().size(),
            knowledge.readings().size(),
            knowledge.styles().size(),
            knowledge.sources().size());
  }
}
