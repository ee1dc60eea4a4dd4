package crumbtrail.report;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CausesAloneTest {
  private static final int THREADS = 8;
  private static final int EVERY = 6;

  @Test
  void the_causes_alone_are_those_of_the_whole_report() throws Exception {
    List<BakeSheet> sheets = sheets();
    for (int one = 0; one < sheets.size(); one += EVERY) {
      Report whole = Scored.PIPELINE.trace(sheets.get(one));
      Report alone = Scored.PIPELINE.causes(sheets.get(one));

      assertThat(alone.causes()).isEqualTo(whole.causes()).isNotEmpty();
      assertThat(alone.workup()).isEqualTo(whole.workup());
      assertThat(alone.cautions()).isEqualTo(whole.cautions());
      assertThat(alone.firmness()).isNull();
      assertThat(alone.corrections()).isEmpty();
    }
  }

  /** What one thread left behind in a session that another takes up never shows. */
  @Test
  void many_threads_at_once_answer_as_one_alone() throws Exception {
    List<BakeSheet> sheets = sheets();
    List<String> single = new ArrayList<>();
    for (BakeSheet sheet : sheets) {
      single.add(JsonReport.line(new PostMortem(Scored.PIPELINE.rules()).causes(sheet)));
    }
    ExecutorService pool = Executors.newFixedThreadPool(THREADS);
    try {
      List<Future<List<String>>> all = new ArrayList<>();
      for (int thread = 0; thread < THREADS; thread++) {
        all.add(pool.submit(inOrderOf(new Random(thread), sheets)));
      }
      for (Future<List<String>> answers : all) {
        assertThat(answers.get()).isEqualTo(single);
      }
    } finally {
      pool.shutdownNow();
    }
  }

  private static Callable<List<String>> inOrderOf(Random random, List<BakeSheet> sheets) {
    List<Integer> order = new ArrayList<>();
    for (int one = 0; one < sheets.size(); one++) {
      order.add(one);
    }
    Collections.shuffle(order, random);
    return () -> {
      String[] answers = new String[sheets.size()];
      for (int one : order) {
        answers[one] = JsonReport.line(Scored.PIPELINE.causes(sheets.get(one)));
      }
      return List.of(answers);
    };
  }

  private static List<BakeSheet> sheets() throws IOException {
    List<BakeSheet> sheets = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("cases"))) {
      for (Path file : files.filter(one -> one.toString().endsWith(".json")).sorted().toList()) {
        SheetReader.read(Files.readString(file)).sheet().ifPresent(sheets::add);
      }
    }
    return sheets;
  }
}
