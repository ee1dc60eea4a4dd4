package crumbtrail.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.sheet.SheetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class JsonReportTest {
  private static final ObjectMapper STRICT =
      new ObjectMapper()
          .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  static List<Path> cases() {
    return Scored.files(Path.of("cases"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void a_report_read_back_is_the_same_report(Path file) throws IOException {
    Report report =
        Scored.PIPELINE.trace(SheetReader.read(Files.readString(file)).sheet().orElseThrow());

    String line = JsonReport.line(report);
    String pretty = JsonReport.pretty(report);

    assertThat(line.lines()).hasSize(1);
    assertThat(line).doesNotContain("NaN").doesNotContain("Infinity");
    assertThat(pretty.lines().count()).isGreaterThan(10);
    assertThat(pretty).endsWith("}\n");
    assertThat(STRICT.readValue(line, Report.class)).isEqualTo(report);
    assertThat(STRICT.readTree(pretty)).isEqualTo(STRICT.readTree(line));
  }
}
