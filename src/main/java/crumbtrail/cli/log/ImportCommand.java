package crumbtrail.cli.log;

import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.exchange.BadLine;
import crumbtrail.bakelog.exchange.LogImport;
import crumbtrail.cli.BadInput;
import crumbtrail.cli.Input;
import crumbtrail.sheet.Problem;
import java.io.BufferedReader;
import java.io.PrintWriter;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes bakes from a file. */
@Command(
    name = "import",
    mixinStandardHelpOptions = true,
    description =
        "Take bakes from a file of JSON Lines (bake sheets, or bakes as log export writes them) or from"
            + " a table. What is in the log already is left as it is; lines that cannot be used are"
            + " named, and the rest are taken. Trace them with log retrace.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail log import sheets.jsonl --when 2026-03-01",
      "  crumbtrail log import class.csv",
      "  crumbtrail log import - < sheets.jsonl"
    })
final class ImportCommand implements Callable<Integer> {
  private static final int BAD_INPUT = 2;

  /** More than these help nobody. */
  private static final int MOST_TOLD = 20;

  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Parameters(
      paramLabel = "FILE",
      description = "ends in .jsonl or .csv; - for JSON Lines from standard input")
  String file;

  @Option(
      names = "--when",
      paramLabel = "2026-03-01",
      description = "when those were baked that do not say it (now unless told)")
  String when;

  private int told;

  @Override
  public Integer call() throws Exception {
    boolean table = file.toLowerCase(Locale.ROOT).endsWith(".csv");
    LocalDateTime usual =
        when == null ? LocalDateTime.now(ZoneId.systemDefault()) : Kept.when("--when", when, 12);
    PrintWriter err = spec.commandLine().getErr();
    try (BufferedReader lines = Input.lines(file);
        LogStore store = kept.open()) {
      LogImport.Count count =
          table
              ? LogImport.table(lines, usual, store, this::told)
              : LogImport.jsonLines(lines, usual, store, this::told);
      err.println(
          "%d bake(s) added, %d known already, %d line(s) that cannot be used"
              .formatted(count.added(), count.known(), count.bad()));
      return count.bad() == 0 ? 0 : BAD_INPUT;
    } catch (BadLine fault) {
      throw BadInput.of(file, fault.problems());
    }
  }

  private void told(long line, BadLine fault) {
    told++;
    if (told == MOST_TOLD) {
      spec.commandLine().getErr().println("Further lines are only counted.");
    }
    if (told >= MOST_TOLD) {
      return;
    }
    for (Problem problem : fault.problems()) {
      spec.commandLine()
          .getErr()
          .println(
              "line %d%s: %s. %s"
                  .formatted(
                      line,
                      problem.where().isEmpty() ? "" : ", " + problem.where(),
                      problem.what(),
                      sentence(problem.remedy())));
    }
  }

  private static String sentence(String text) {
    return text.isEmpty()
        ? ""
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".";
  }
}
