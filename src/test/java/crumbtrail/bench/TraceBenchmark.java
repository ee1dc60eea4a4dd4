package crumbtrail.bench;

import crumbtrail.report.PostMortem;
import crumbtrail.report.Report;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The whole way from a sheet to its report, warm: workup, rules, findings, words. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class TraceBenchmark {
  /** The sheet. */
  @Param({Bench.CASE, Bench.FULL})
  public String file;

  private PostMortem postMortem;
  private BakeSheet sheet;

  /** Loads the rule base and the sheet, which is not measured. */
  @Setup
  public void load() {
    postMortem = new PostMortem(RuleBase.bundled());
    sheet = Bench.sheet(file);
  }

  /** One report. */
  @Benchmark
  public Report trace() {
    return postMortem.trace(sheet);
  }
}
