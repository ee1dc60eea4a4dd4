package crumbtrail.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import org.kie.api.KieBase;
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
 * How the engine's cost grows with the number of rules: one run over the facts of the next case,
 * and the laying out of all rules at the start.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class GrowthBenchmark {
  /** How many of the rules, taken evenly from all. */
  @Param({"350", "700", "1400"})
  public int rules;

  /**
   * Engines with the same rules, laid out apart and asked in turn. Each run does the same work, but
   * several engines hold each other's networks out of the nearer caches.
   */
  @Param({"1", "4"})
  public int engines;

  private final List<List<Object>> facts = new ArrayList<>();
  private List<PlainRule> plain;
  private final Map<String, Testimony.Preface> prefaces = new ConcurrentHashMap<>();
  private final List<KieBase> bases = new ArrayList<>();
  private int next;

  /** Loads rules and cases, which is not measured. */
  @Setup
  public void load() {
    plain = SomeRules.plain(rules);
    for (int one = 0; one < engines; one++) {
      bases.add(PlainNetwork.of(plain));
    }
    facts.addAll(SomeRules.facts().values());
  }

  /** One run of the rules over the facts of one bake. */
  @Benchmark
  public Object run() {
    next++;
    KieBase base = bases.get(next % engines);
    try (RuleRun run = new RuleRun(base, prefaces, new Broken())) {
      return run.evidence(facts.get(next / engines % facts.size()));
    }
  }

  /** The rules laid out for the engine. */
  @Benchmark
  public Object layOut() {
    return PlainNetwork.of(plain);
  }
}
