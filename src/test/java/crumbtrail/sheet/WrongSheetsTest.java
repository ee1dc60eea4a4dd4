package crumbtrail.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A table of sheets that cannot be used, each with all that is told of it, word for word. To write
 * the answers anew and read them over: {@code mvn test -Dtest=WrongSheetsTest
 * -Dcrumbtrail.write=true}.
 */
class WrongSheetsTest {
  private static final Path TABLE = Path.of("src/test/resources/wrong-sheets.json");

  record Wrong(String sheet, List<String> told) {
    @Override
    public String toString() {
      return sheet.length() <= 100 ? sheet : sheet.substring(0, 100) + "…";
    }
  }

  static Stream<Wrong> table() throws IOException {
    List<Wrong> table = new ArrayList<>();
    for (JsonNode row : new ObjectMapper().readTree(TABLE.toFile())) {
      List<String> told = new ArrayList<>();
      row.path("told").forEach(one -> told.add(one.asText()));
      table.add(new Wrong(row.path("sheet").asText(), told));
    }
    return table.stream();
  }

  @ParameterizedTest
  @MethodSource("table")
  void a_wrong_sheet_is_told_what_is_wrong_where_and_what_would_do(Wrong wrong) {
    assertThat(told(wrong.sheet())).isEqualTo(wrong.told()).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("table")
  void nothing_told_is_for_programmers(Wrong wrong) {
    for (Problem problem : SheetReader.read(wrong.sheet()).problems()) {
      assertThat(problem.what()).isNotBlank().hasSizeLessThan(250);
      assertThat(problem.remedy()).isNotBlank();
      assertThat(problem.what() + problem.remedy())
          .doesNotContain(
              "fasterxml", "Source:", "Exception", "Feature", "token", "java.", "code ");
    }
  }

  @Test
  void there_are_more_than_a_hundred_of_them_and_none_twice() throws IOException {
    assertThat(table().map(Wrong::sheet)).hasSizeGreaterThan(100).doesNotHaveDuplicates();
    if (Boolean.getBoolean("crumbtrail.write")) {
      write();
    }
  }

  private static List<String> told(String sheet) {
    return SheetReader.read(sheet).problems().stream()
        .map(one -> one.where() + ": " + one.what() + ". " + one.remedy())
        .toList();
  }

  private static void write() throws IOException {
    ObjectMapper json = new ObjectMapper();
    ArrayNode rows = json.createArrayNode();
    for (Wrong wrong : table().toList()) {
      ObjectNode row = rows.addObject().put("sheet", wrong.sheet());
      ArrayNode told = row.putArray("told");
      told(wrong.sheet()).forEach(told::add);
    }
    Files.writeString(TABLE, json.writerWithDefaultPrettyPrinter().writeValueAsString(rows) + "\n");
  }
}
