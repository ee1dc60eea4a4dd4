package crumbtrail.cli;

import crumbtrail.cli.CrumbtrailCommand.ProgressOption;
import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.cli.screen.Progress;
import crumbtrail.report.Batch;
import crumbtrail.report.PostMortem;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** One report a line for one sheet a line. */
@Command(
    name = "batch",
    mixinStandardHelpOptions = true,
    description =
        "Trace many bakes: one sheet a line in, one report a line out, in order. A line that cannot"
            + " be used yields an error object on its line, and the rest go on.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail batch sheets.jsonl --out reports.jsonl",
      "  crumbtrail batch sheets.jsonl --causes --out causes.jsonl",
      "  crumbtrail batch - < sheets.jsonl > reports.jsonl"
    })
final class BatchCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin RulesOption rules;

  @Mixin ProgressOption progress;

  @Parameters(
      paramLabel = "SHEETS.jsonl",
      description = "bake sheets, one a line; - for standard input")
  String sheets;

  @Option(
      names = "--out",
      paramLabel = "REPORTS.jsonl",
      description = "write the reports there (standard output unless told)")
  Path target;

  @Option(
      names = "--causes",
      description =
          "the causes alone and what they rest on, without how firm they are, what to ask next and"
              + " what to change: far sooner done")
  boolean causes;

  @Override
  public Integer call() throws Exception {
    PrintWriter err = spec.commandLine().getErr();
    if (target != null) {
      checkTarget();
    }
    try (BufferedReader lines = Input.lines(sheets)) {
      PostMortem postMortem = Rules.postMortem(rules, err);
      Batch batch = new Batch(causes ? postMortem::causes : postMortem::trace);
      Batch.Count count;
      if (target == null) {
        count = run(batch, lines, spec.commandLine().getOut());
      } else {
        count = toFile(batch, lines);
      }
      err.println(
          count.reports() + " report(s), " + count.faults() + " line(s) that cannot be used");
    }
    return 0;
  }

  private Batch.Count toFile(Batch batch, BufferedReader lines) throws IOException {
    AtomicReference<Batch.Count> count = new AtomicReference<>();
    WholeFile.write(
        target,
        file -> {
          try (PrintWriter out = new PrintWriter(Files.newBufferedWriter(file))) {
            count.set(run(batch, lines, out));
          }
        });
    return count.get();
  }

  // Looked at before the work begins: nobody wants to learn it after a thousand sheets.
  private void checkTarget() {
    Path folder = target.toAbsolutePath().getParent();
    if (folder == null || Files.isDirectory(target)) {
      throw new BadInput(List.of("--out: " + target + " is a folder. Name a file."));
    }
    if (!Files.isDirectory(folder)) {
      throw new BadInput(
          List.of("--out: there is no folder " + folder + ". Make it, or name another."));
    }
  }

  private Batch.Count run(Batch batch, BufferedReader lines, PrintWriter out) throws IOException {
    boolean shown = progress.shown(spec);
    long total = shown ? count() : Progress.UNKNOWN;
    try (Progress told =
        Progress.counting(
            spec.commandLine().getErr(), shown, "sheets", total, InstantSource.system())) {
      return batch.run(lines, out, told::done);
    } catch (Batch.Unwritable full) {
      throw new BadInput(List.of(full.getMessage()));
    }
  }

  // A pipe can be read only once.
  private long count() throws IOException {
    if (sheets.equals("-")) {
      return Progress.UNKNOWN;
    }
    try (BufferedReader lines = Input.lines(sheets)) {
      return lines.lines().filter(line -> !line.isBlank()).count();
    }
  }
}
