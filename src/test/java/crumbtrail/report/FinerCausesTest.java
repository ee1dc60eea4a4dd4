package crumbtrail.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each finer cause can be reached by what a baker would say of it, formula and numbers unknown. */
class FinerCausesTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  static Stream<Arguments> rows() throws IOException {
    try (var in = FinerCausesTest.class.getResourceAsStream("finer-causes.tsv")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#") && !line.isBlank())
          .map(line -> Arguments.of((Object[]) line.split("\t")));
    }
  }

  @ParameterizedTest(name = "{3}: {1}")
  @MethodSource("rows")
  void a_remark_and_a_sign_lead_to_it(String style, String remark, String signs, String cause) {
    ObjectNode sheet = JSON.createObjectNode().put("title", "A remark and a sign");
    sheet.put("style", style);
    sheet.putObject("process").putArray("remarks").add(remark);
    var seen = sheet.putArray("seen");
    Arrays.stream(signs.split("\\|")).forEach(seen::add);
    Scored scored = Scored.of(cause, sheet, JSON.createArrayNode().add(cause));

    assertThat(scored.within(3))
        .as(
            "rank %d; first: %s",
            scored.rank(),
            scored.report().causes().stream().limit(4).map(Report.RankedCause::key).toList())
        .isTrue();
  }
}
