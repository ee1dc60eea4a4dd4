package crumbtrail.bakelog.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Outcome;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.SomeBakes;
import crumbtrail.bakelog.Verdict;
import crumbtrail.bakelog.store.SqlLogStore;
import crumbtrail.bakelog.store.StoreKind;
import java.io.BufferedReader;
import java.io.StringReader;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Bakes from elsewhere, line by line and row by row. */
class LogImportTest {
  private static final LocalDateTime NOON = LocalDateTime.of(2026, 5, 1, 12, 0);

  @TempDir Path folder;

  private final List<String> bad = new ArrayList<>();

  private LogImport.Count lines(LogStore store, String text) throws Exception {
    return LogImport.jsonLines(new BufferedReader(new StringReader(text)), NOON, store, this::told);
  }

  private LogImport.Count table(LogStore store, String text) throws Exception {
    return LogImport.table(new BufferedReader(new StringReader(text)), NOON, store, this::told);
  }

  private void told(long line, BadLine fault) {
    fault.problems().forEach(one -> bad.add(line + " " + one.where() + ": " + one.what()));
  }

  @ParameterizedTest
  @EnumSource
  void sheets_and_written_out_bakes_come_in_line_by_line(StoreKind kind) throws Exception {
    Bake own =
        SomeBakes.traced(3)
            .withOutcome(Outcome.FAIR)
            .withVerdicts(Map.of("over-proofed", Verdict.CONFIRMED));
    String text =
        "{\"title\": \"Rye\",  \"seen\": [\"dense\"]}\n\n"
            + "no bake\n"
            + "{\"sene\": []}\n"
            + BakeJson.line(own)
            + "\n";
    try (LogStore store = SqlLogStore.open(kind.place(folder))) {
      assertThat(lines(store, text)).isEqualTo(new LogImport.Count(2, 0, 2));
      assertThat(bad).hasSize(2);
      assertThat(bad.get(0)).startsWith("3 : this is not JSON");
      assertThat(bad.get(1)).startsWith("4 sene: ");
      BakeLog log = store.of(Scope.ONLY_BAKER);
      List<Bake> bakes = log.bakes(0).toList();
      assertThat(bakes.get(0).sheet()).isEqualTo("{\"title\": \"Rye\",  \"seen\": [\"dense\"]}");
      assertThat(bakes.get(0).label()).isEqualTo("Rye");
      assertThat(bakes.get(0).baked()).isEqualTo(NOON);
      assertThat(bakes.get(1)).isEqualTo(own.numbered(bakes.get(1).id()));

      assertThat(lines(store, text))
          .as("the second time adds nothing")
          .isEqualTo(new LogImport.Count(0, 2, 2));
    }
  }

  @ParameterizedTest
  @EnumSource
  void a_table_comes_in_row_by_row(StoreKind kind) throws Exception {
    String text =
        """
        when,label,recipe,note,outcome,confirmed,ruledOut,formula,process.bulk,process.mixing.time,process.baking.fan,seen
        2026-03-01,First,Tin loaf,"close, near the base",failed,over-proofed; salt-too-low,under-baked,500 g flour; 300 g water,60 min at 24 C; 12 h at 4 C,8 min,true,dense
        2026-03-08 09:15,Second,Tin loaf,,good,,,500 g flour; 310 g water,,,,
        8 March,Third,,,,,,500 g flour,,,,
        ,Fourth,,,great,,,500 g flour,,,,
        ,Fifth,,,,,,,,,,
        """;
    try (LogStore store = SqlLogStore.open(kind.place(folder))) {
      assertThat(table(store, text)).isEqualTo(new LogImport.Count(2, 0, 3));
      assertThat(bad.get(0)).isEqualTo("4 when: \"8 March\" is no day");
      assertThat(bad.get(1)).isEqualTo("5 outcome: there is no outcome \"great\"");
      assertThat(bad.get(2)).startsWith("6 : the sheet has neither a formula nor anything seen");

      List<Bake> bakes = store.of(Scope.ONLY_BAKER).bakes(0).toList();
      Bake first = bakes.get(0);
      assertThat(first.baked()).isEqualTo(LocalDateTime.of(2026, 3, 1, 12, 0));
      assertThat(first.note()).isEqualTo("close, near the base");
      assertThat(first.outcome()).isEqualTo(Outcome.FAILED);
      assertThat(first.judged(Verdict.CONFIRMED)).containsExactly("over-proofed", "salt-too-low");
      assertThat(first.judged(Verdict.RULED_OUT)).containsExactly("under-baked");
      JsonNode sheet = new ObjectMapper().readTree(first.sheet());
      assertThat(sheet.at("/formula/1").asText()).isEqualTo("300 g water");
      assertThat(sheet.at("/process/bulk/1").asText()).isEqualTo("12 h at 4 C");
      assertThat(sheet.at("/process/mixing/time").asText()).isEqualTo("8 min");
      assertThat(sheet.at("/process/baking/fan").booleanValue()).isTrue();
      assertThat(bakes.get(1).baked()).isEqualTo(LocalDateTime.of(2026, 3, 8, 9, 15));
      assertThat(table(store, text)).isEqualTo(new LogImport.Count(0, 2, 3));
    }
  }

  @Test
  void a_table_without_a_column_of_the_sheet_is_refused() {
    try (LogStore store = SqlLogStore.open(StoreKind.H2.place(folder))) {
      assertThatThrownBy(() -> table(store, "when,label\n2026-03-01,One\n"))
          .isInstanceOf(BadLine.class)
          .hasMessageContaining("no column belongs to the bake sheet");
      assertThatThrownBy(() -> table(store, "")).isInstanceOf(BadLine.class);
      assertThat(store.of(Scope.EVERYTHING).bakes(0)).isEmpty();
    }
  }
}
