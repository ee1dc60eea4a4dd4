package crumbtrail.bench;

import crumbtrail.quantity.Quantity;
import crumbtrail.report.JsonReport;
import crumbtrail.report.PostMortem;
import crumbtrail.rules.Evidence;
import crumbtrail.rules.Facts;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetQuantities;
import crumbtrail.sheet.SheetReader;
import crumbtrail.workup.SheetWorkup;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The causes of a bake from its sheet as text to its report as text, beside the engine alone over
 * the same facts. Each call takes the next of all cases. The course of a bake in the oven is
 * remembered for what-ifs; {@link #unknown} bakes each loaf a little hotter than the last time, so
 * that nothing is.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class DiagnosisBenchmark {
  private final List<String> texts = new ArrayList<>();
  private final List<BakeSheet> sheets = new ArrayList<>();
  private final List<List<Object>> facts = new ArrayList<>();
  private PostMortem postMortem;
  private int next;
  private long calls;

  /** Loads the rule base and the cases, which is not measured. */
  @Setup
  public void load() throws IOException {
    postMortem = new PostMortem(RuleBase.bundled());
    SheetWorkup workups =
        new SheetWorkup(postMortem.rules().catalogue(), postMortem.rules().pantry());
    try (Stream<Path> files = Files.list(Path.of("cases"))) {
      files.filter(one -> one.toString().endsWith(".json")).sorted().forEach(this::add);
    }
    sheets.forEach(sheet -> facts.add(Facts.of(workups.work(sheet))));
  }

  private void add(Path file) {
    try {
      texts.add(Files.readString(file));
      sheets.add(SheetReader.read(texts.get(texts.size() - 1)).sheet().orElseThrow());
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  /** The engine alone: facts in, what the rules say out. */
  @Benchmark
  public List<Evidence> engine() {
    return postMortem.rules().run(facts.get(turn()));
  }

  /** From a sheet to the causes of its report. */
  @Benchmark
  public Object causes() {
    return postMortem.causes(sheets.get(turn()));
  }

  /** The whole report on a bake: how firm it is, what to ask next and what to change. */
  @Benchmark
  public Object whole() {
    return postMortem.trace(sheets.get(turn()));
  }

  /** From the text of a sheet to the text of its report, as a batch does it. */
  @Benchmark
  public String line() {
    BakeSheet sheet = SheetReader.read(texts.get(turn())).sheet().orElseThrow();
    return JsonReport.line(postMortem.causes(sheet));
  }

  /** The same of a bake that was never seen before. */
  @Benchmark
  public Object unknown() {
    int turn = turn();
    double hotter = 1 + 1e-9 * ++calls;
    return postMortem.causes(
        SheetQuantities.changed(
            sheets.get(turn),
            (where, told) ->
                where.startsWith("process.baking.stages") && where.endsWith("oven")
                    ? new Quantity(
                        told.written(),
                        told.unit(),
                        told.low() * hotter,
                        told.value() * hotter,
                        told.high() * hotter)
                    : told));
  }

  private int turn() {
    next = (next + 1) % sheets.size();
    return next;
  }
}
