package crumbtrail.cli;

import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.cli.interview.Interview;
import crumbtrail.cli.screen.Screen;
import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.report.SheetEcho;
import crumbtrail.rules.RuleBase;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A bake sheet written by question and answer. */
@Command(
    name = "new",
    mixinStandardHelpOptions = true,
    description =
        "Write a bake sheet by question and answer. Any question may be left out; what was"
            + " understood is said back. The sheet is kept from answer to answer.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail new",
      "  crumbtrail new tuesday.json",
      "  crumbtrail new - < answers.txt | crumbtrail trace -"
    })
final class NewCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin RulesOption rules;

  @Parameters(
      paramLabel = "FILE",
      arity = "0..1",
      defaultValue = "bake.json",
      description =
          "where the sheet is written (${DEFAULT-VALUE} unless told); - for standard output")
  String file;

  @Option(names = "--force", description = "write over a file that is there")
  boolean force;

  @Override
  public Integer call() throws Exception {
    boolean toOutput = file.equals("-");
    Path target = Path.of(file);
    if (!toOutput) {
      check(target);
    }
    Screen usual = CrumbtrailCommand.screen(spec);
    // The sheet alone goes to standard output, so that a pipe can take it.
    Screen screen = toOutput ? usual.on(usual.err()) : usual;
    String[] last = {""};
    Interview interview =
        new Interview(
            loading()::join,
            Input.answers(),
            ((CrumbtrailCommand) spec.root().userObject()).terminal().typed(),
            screen,
            sheet -> {
              last[0] = sheet;
              if (!toOutput) {
                keep(target, sheet);
              }
            });
    Interview.End end = talked(interview);
    if (toOutput) {
      usual.out().print(last[0]);
      usual.out().flush();
    }
    return told(end, screen.out());
  }

  private static Interview.End talked(Interview interview) throws Exception {
    try {
      return interview.run();
    } catch (CompletionException fault) {
      // A fault of the rules folder is told as with every other command.
      throw fault.getCause() instanceof Exception cause ? cause : fault;
    }
  }

  private int told(Interview.End end, PrintWriter out) {
    out.println();
    switch (end) {
      case NOTHING -> out.println("Nothing was typed, and nothing is written.");
      case TOO_LITTLE -> {
        out.println("What you typed is in " + file + ". It wants a recipe or something seen yet,");
        out.println("before it can be traced.");
      }
      case SHEET -> {
        out.println("The bake sheet is in " + (file.equals("-") ? "the output" : file) + ".");
        out.println("Find the causes:      crumbtrail trace " + file);
        out.println("Or look ahead at it:  crumbtrail precheck " + file);
      }
    }
    out.flush();
    return end == Interview.End.SHEET ? 0 : Faults.INPUT;
  }

  private void check(Path target) {
    Path folder = target.toAbsolutePath().getParent();
    if (Files.isDirectory(target) || folder == null) {
      throw new BadInput(List.of(file + " is a folder. Name a file."));
    }
    if (!Files.isDirectory(folder)) {
      throw new BadInput(List.of("There is no folder " + folder + ". Make it, or name another."));
    }
    if (Files.exists(target) && !force) {
      throw new BadInput(
          List.of(file + " is there already. Name another file, or write over it with --force."));
    }
  }

  // What words mean is looked up while the baker answers the first question.
  private CompletableFuture<SheetEcho> loading() {
    return CompletableFuture.supplyAsync(
        () -> {
          try {
            RuleBase base = Rules.ruleBase(rules, spec.commandLine().getErr());
            return new SheetEcho(base.catalogue(), base.pantry());
          } catch (IOException | FaultyKnowledge fault) {
            throw new CompletionException(fault);
          }
        });
  }

  private static void keep(Path target, String sheet) throws IOException {
    WholeFile.write(target, file -> Files.writeString(file, sheet));
  }
}
