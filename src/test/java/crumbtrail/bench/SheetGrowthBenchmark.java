package crumbtrail.bench;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbtrail.knowledge.SignKind;
import crumbtrail.report.PostMortem;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
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

/** How the cost of a diagnosis grows with the signs told and with the lines of the formula. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class SheetGrowthBenchmark {
  /** A tin loaf on which ever more signs are seen. */
  @State(Scope.Thread)
  public static class Signs {
    /** How many signs. */
    @Param({"1", "4", "16", "64"})
    public int signs;

    private PostMortem postMortem;
    private BakeSheet sheet;

    /** Loads the rule base and writes the sheet, which is not measured. */
    @Setup
    public void load() throws IOException {
      postMortem = new PostMortem(RuleBase.bundled());
      ObjectNode told = told();
      told.putPOJO(
          "seen",
          postMortem.rules().catalogue().knowledge().signs().stream()
              .map(SignKind::key)
              .limit(signs)
              .toList());
      sheet = read(told);
    }
  }

  /** A tin loaf of ever more lines: the flour shared among them. */
  @State(Scope.Thread)
  public static class Lines {
    /** How many lines. */
    @Param({"4", "16", "64", "96"})
    public int lines;

    private PostMortem postMortem;
    private String text;

    /** Loads the rule base and writes the sheet, which is not measured. */
    @Setup
    public void load() throws IOException {
      postMortem = new PostMortem(RuleBase.bundled());
      ObjectNode told = told();
      List<String> others = List.of("310 g water", "6 g fine salt", "5 g instant yeast");
      int flours = lines - others.size();
      told.putPOJO(
          "formula",
          IntStream.range(0, lines)
              .mapToObj(
                  at -> at < flours ? 500.0 / flours + " g bread flour" : others.get(at - flours))
              .toList());
      text = new ObjectMapper().writeValueAsString(told);
    }
  }

  private static ObjectNode told() throws IOException {
    return (ObjectNode) new ObjectMapper().readTree(Files.readString(Path.of(Bench.CASE)));
  }

  private static BakeSheet read(ObjectNode told) throws IOException {
    return SheetReader.read(new ObjectMapper().writeValueAsString(told)).sheet().orElseThrow();
  }

  /** From a sheet to its causes. */
  @Benchmark
  public Object signs(Signs of) {
    return of.postMortem.causes(of.sheet);
  }

  /** From the text of a sheet to its causes. */
  @Benchmark
  public Object lines(Lines of) {
    return of.postMortem.causes(SheetReader.read(of.text).sheet().orElseThrow());
  }
}
