package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.sheet.SheetReader;
import crumbtrail.sheet.SheetSchema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The schema of the bake sheet beside the reader of bake sheets. */
class SheetSchemaTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final ApiSchema SCHEMA = ApiSchema.of(SheetSchema.node());
  private static final List<Path> FOLDERS =
      List.of(
          Path.of("cases"),
          Path.of("src/test/resources/real-cases"),
          Path.of("src/test/resources/rule-probes"));

  @Test
  void every_sheet_of_the_project_is_taken() {
    List<String> refused = new ArrayList<>();
    List<JsonNode> sheets = FOLDERS.stream().flatMap(SheetSchemaTest::sheets).toList();
    for (JsonNode sheet : sheets) {
      boolean read = SheetReader.read(sheet).sheet().isPresent();
      List<String> faults = SCHEMA.faults(sheet);
      if (read && !faults.isEmpty()) {
        refused.add(sheet.path("title").asText() + ": " + faults);
      }
    }
    assertThat(sheets).hasSizeGreaterThan(200);
    assertThat(refused).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"formula\": \"500 g flour\\n310 g water\"}",
        "{\"recipe\": \"500 g flour\\n310 g water\"}",
        "{\"formula\": [\"500 g flour\", null, {\"ingredient\": \"salt\"}], \"seen\": null}",
        "{\"seen\": \"flat\\npale\"}",
        "{\"seen\": [{\"words\": \"pale crust\", \"degree\": \" Very \"}, \"flat\"]}",
        "{\"seen\": {\"sign\": \"pale crust\"}, \"process\": {\"bulk\": \"60 min at 24 C\"}}",
        "{\"seen\": [\"flat\"], \"process\": {\"bulk\": {\"time\": \"1 h\", \"folds\": \"two\"}}}",
        "{\"seen\": [\"flat\"], \"process\": {\"vessel\": {\"lid\": \"Yes\"}, \"remarks\": \"x\"}}",
        "{\"seen\": [\"flat\"], \"process\": {\"baking\": {\"steam\": true, \"fan\": \"off\"}}}",
        "{\"preferments\": {\"formula\": \"100 g flour\"}, \"title\": \"\"}",
        "{\"seen\": [\"flat\"], \"process\": {\"shaping\": {\"pieces\": 2.0}, \"cooling\": null}}"
      })
  void what_the_reader_takes_the_schema_takes(String sheet) throws IOException {
    assertThat(SheetReader.read(sheet).problems()).isEmpty();
    assertThat(SCHEMA.faults(JSON.readTree(sheet))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "[]",
        "\"500 g flour\"",
        "{\"title\": \"only a name\"}",
        "{\"formula\": [500]}",
        "{\"formula\": [[\"500 g flour\"]]}",
        "{\"formula\": [{\"amount\": \"6 g\"}]}",
        "{\"formula\": [{\"ingredient\": \"salt\", \"amount\": 6}]}",
        "{\"seen\": [\"flat\"], \"colour\": \"brown\"}",
        "{\"seen\": [\"flat\"], \"process\": {\"room\": 21}}",
        "{\"seen\": [\"flat\"], \"process\": {\"proofing\": []}}",
        "{\"seen\": [\"flat\"], \"process\": {\"proof\": [60]}}",
        "{\"seen\": [\"flat\"], \"process\": {\"vessel\": {\"lid\": \"perhaps\"}}}",
        "{\"seen\": [\"flat\"], \"process\": {\"shaping\": {\"pieces\": 0}}}",
        "{\"seen\": [\"flat\"], \"process\": {\"shaping\": {\"pieces\": 1.5}}}",
        "{\"seen\": [\"flat\"], \"process\": [\"kneaded\"]}",
        "{\"seen\": [{\"degree\": \"marked\"}]}",
        "{\"seen\": [{\"sign\": \"pale crust\", \"degree\": \"enormous\"}]}",
        "{\"seen\": [3]}",
        "{\"preferments\": [\"poolish\"]}"
      })
  void what_the_reader_refuses_by_its_shape_the_schema_refuses(String sheet) throws IOException {
    assertThat(SheetReader.read(sheet).problems()).isNotEmpty();
    assertThat(SCHEMA.faults(JSON.readTree(sheet))).isNotEmpty();
  }

  private static Stream<JsonNode> sheets(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().matches(".*\\.jsonl?")).sorted().toList().stream()
          .flatMap(SheetSchemaTest::in);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  // Real cases and probes may stand in lists, with the sheet beside what is known of it.
  private static Stream<JsonNode> in(Path file) {
    try {
      List<JsonNode> found = new ArrayList<>();
      if (file.toString().endsWith(".jsonl")) {
        for (String line : Files.readAllLines(file)) {
          found.add(JSON.readTree(line));
        }
      } else {
        JsonNode all = JSON.readTree(file.toFile());
        if (all.isArray()) {
          all.forEach(found::add);
        } else {
          found.add(all);
        }
      }
      return found.stream().map(one -> one.has("sheet") ? one.get("sheet") : one);
    } catch (IOException fault) {
      throw new UncheckedIOException(file.toString(), fault);
    }
  }
}
