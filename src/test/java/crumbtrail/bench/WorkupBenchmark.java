package crumbtrail.bench;

import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.SheetWorkup;
import crumbtrail.workup.Workup;
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

/**
 * One full workup of a sheet that is already read: formula, words, models. A what-if is one of
 * these, so that hundreds must fit between two clicks: the aim is below 1 ms on one core.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class WorkupBenchmark {
  /** The sheet. */
  @Param({Bench.CASE, Bench.FULL})
  public String file;

  private SheetWorkup workups;
  private BakeSheet sheet;

  /** Loads the catalogues and the sheet, which is not measured. */
  @Setup
  public void load() {
    RuleBase rules = RuleBase.bundled();
    workups = new SheetWorkup(rules.catalogue(), rules.pantry());
    sheet = Bench.sheet(file);
  }

  /** One workup. */
  @Benchmark
  public Workup work() {
    return workups.work(sheet);
  }
}
