package crumbtrail.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class BatchTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final List<Long> progress = new ArrayList<>();

  @Test
  void each_line_gets_its_report_in_order() throws IOException {
    List<JsonNode> reports = run(sheet("one") + "\n" + sheet("two") + "\n" + sheet("three") + "\n");

    assertThat(reports)
        .extracting(report -> report.path("title").asText())
        .containsExactly("one", "two", "three");
  }

  @Test
  void a_bad_line_yields_an_error_on_its_line_and_the_rest_go_on() throws IOException {
    StringWriter out = new StringWriter();
    String sheets =
        String.join("\n", sheet("one"), "{\"seen\": [", "{\"sene\": []}", "[]", sheet("two"));

    Batch.Count count =
        batch().run(new BufferedReader(new StringReader(sheets)), new PrintWriter(out), d -> {});

    List<JsonNode> answers = parsed(out.toString());
    assertThat(count).isEqualTo(new Batch.Count(2, 3));
    assertThat(answers).hasSize(5);
    assertThat(answers.get(0).path("title").asText()).isEqualTo("one");
    assertThat(answers.get(1).at("/error/line").asInt()).isEqualTo(2);
    assertThat(answers.get(1).at("/error/problems/0/what").asText()).contains("not JSON");
    assertThat(answers.get(2).at("/error/line").asInt()).isEqualTo(3);
    assertThat(answers.get(2).at("/error/problems/0/where").asText()).isEqualTo("sene");
    assertThat(answers.get(2).at("/error/problems/0/remedy").asText()).contains("seen");
    assertThat(answers.get(3).at("/error/line").asInt()).isEqualTo(4);
    assertThat(answers.get(4).path("title").asText()).isEqualTo("two");
  }

  @Test
  void an_error_names_its_parts_in_a_fixed_order() throws IOException {
    StringWriter out = new StringWriter();
    batch().run(new BufferedReader(new StringReader("[]")), new PrintWriter(out), done -> {});

    assertThat(out.toString()).startsWith("{\"error\":{\"line\":1,\"what\":");
  }

  @Test
  void empty_lines_are_passed_over_but_counted() throws IOException {
    List<JsonNode> answers = run("\n" + sheet("one") + "\r\n  \n\nnonsense\n\n");

    assertThat(answers).hasSize(2);
    assertThat(answers.get(0).path("title").asText()).isEqualTo("one");
    assertThat(answers.get(1).at("/error/line").asInt()).isEqualTo(5);
  }

  @Test
  void nothing_in_gives_nothing_out() throws IOException {
    assertThat(run("")).isEmpty();
    assertThat(run("\n\n")).isEmpty();
    assertThat(progress).isEmpty();
  }

  @Test
  void a_thousand_sheets_give_a_thousand_reports_in_order() throws IOException {
    StringBuilder sheets = new StringBuilder();
    for (int nth = 0; nth < 1000; nth++) {
      sheets.append(sheet("bake " + nth)).append('\n');
    }

    List<JsonNode> reports = run(sheets.toString());

    assertThat(reports).hasSize(1000);
    for (int nth = 0; nth < 1000; nth++) {
      assertThat(reports.get(nth).path("title").asText()).isEqualTo("bake " + nth);
      assertThat(reports.get(nth).path("causes")).isNotEmpty();
    }
    assertThat(progress)
        .containsExactlyElementsOf(LongStream.rangeClosed(1, 1000).boxed().toList());
  }

  @Test
  void reports_that_cannot_be_written_are_an_error_at_once() {
    Writer full =
        new Writer() {
          @Override
          public void write(char[] text, int from, int length) throws IOException {
            throw new IOException("no space left");
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    String sheets = (sheet("one") + "\n").repeat(1000);

    IOException refused =
        catchThrowableOfType(
            IOException.class,
            () ->
                batch()
                    .run(
                        new BufferedReader(new StringReader(sheets)),
                        new PrintWriter(full),
                        progress::add));

    assertThat(refused).hasMessageContaining("cannot be written");
    assertThat(progress).hasSizeLessThan(200);
  }

  private List<JsonNode> run(String sheets) throws IOException {
    StringWriter out = new StringWriter();
    batch().run(new BufferedReader(new StringReader(sheets)), new PrintWriter(out), progress::add);
    return parsed(out.toString());
  }

  private static List<JsonNode> parsed(String lines) throws IOException {
    List<JsonNode> parsed = new ArrayList<>();
    for (String line : lines.lines().toList()) {
      parsed.add(JSON.readTree(line));
    }
    return parsed;
  }

  private static String sheet(String title) {
    return "{\"title\": \"" + title + "\", \"seen\": [\"dense crumb\", \"pale crust\"]}";
  }

  private static Batch batch() {
    // Order, lines and progress are the same whatever is made of a sheet.
    return new Batch(Scored.PIPELINE::causes);
  }
}
