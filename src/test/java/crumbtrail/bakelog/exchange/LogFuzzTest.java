package crumbtrail.bakelog.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.SomeBakes;
import crumbtrail.fuzz.Corpus;
import crumbtrail.fuzz.Fuzz;
import crumbtrail.people.People;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** A file of bakes is taken line by line, and what is wrong with a line is told. */
class LogFuzzTest {
  private static final LogStore NOWHERE = new Nowhere();

  @Test
  void lines_of_json() throws IOException {
    List<String> seeds = new ArrayList<>(Corpus.bakes());
    for (int day = 0; day < 20; day++) {
      seeds.add(BakeJson.line(SomeBakes.traced(day)) + "\n" + BakeJson.line(SomeBakes.tinLoaf(1)));
    }
    Fuzz.of(
        "bakes-jsonl",
        0.03,
        seeds,
        text ->
            LogImport.jsonLines(lines(text), SomeBakes.TUESDAY, NOWHERE, LogFuzzTest::told).bad()
                == 0);
  }

  @Test
  void tables() throws IOException {
    Fuzz.of(
        "bakes-csv",
        0.05,
        List.of(
            "when,label,formula,seen\n2026-03-01,Tin loaf,500 g flour; 310 g water,dense crumb\n",
            "when,label,recipe,note,outcome,confirmed,ruledOut,formula\n"
                + "2026-03-01 14:30,\"Tin, loaf\",Tin,\"a \"\"note\"\"\",good,over-proofed,"
                + "salt-too-low;over-baked,500 g flour\n",
            """
            formula,process.bulk,process.mixing.time,process.vessel.lid,title
            500 g flour; 300 g water,60 min at 24 C; 14 h at 4 C,8 min,true,Hearth loaf
            100 % flour,1 h,,false,
            """),
        text -> {
          try {
            return LogImport.table(lines(text), SomeBakes.TUESDAY, NOWHERE, LogFuzzTest::told).bad()
                == 0;
          } catch (BadLine fault) {
            told(1, fault);
            return false;
          }
        });
  }

  private static BufferedReader lines(String text) {
    return new BufferedReader(new StringReader(text));
  }

  private static void told(long line, BadLine fault) {
    assertThat(fault.problems())
        .as("line %d", line)
        .isNotEmpty()
        .allSatisfy(
            problem -> {
              assertThat(problem.what()).isNotBlank();
              assertThat(problem.remedy()).isNotBlank();
            });
  }

  /** A log that keeps nothing. */
  private static final class Nowhere implements LogStore {
    @Override
    public BakeLog of(Scope scope) {
      throw new UnsupportedOperationException();
    }

    @Override
    public <T> T atOneMoment(Scope scope, Function<BakeLog, T> asked) {
      throw new UnsupportedOperationException();
    }

    @Override
    public void fill(Consumer<Filling> filling) {
      filling.accept((bake, photos) -> true);
    }

    @Override
    public People people() {
      throw new UnsupportedOperationException();
    }

    @Override
    public String where() {
      return "nowhere";
    }

    @Override
    public void close() {
      // There is nothing to close.
    }
  }
}
