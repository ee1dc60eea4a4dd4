package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Real reports and next bakes beside their schemas, which here take no key they do not name. */
class ReportSchemaTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** Every so many of the invented bakes, since working on all of them takes a while. */
  private static final int EVERY = 9;

  private static WebFace face;
  private static Asker asker;

  @BeforeAll
  static void serve() {
    face = ApiServer.start();
    asker = new Asker(face.address());
  }

  @AfterAll
  static void stop() {
    face.close();
  }

  @Test
  void every_report_is_as_its_schema_says() throws IOException {
    JsonNode openApi = JSON.readTree(asker.get("/openapi.json").body());
    ApiSchema strict = strict(openApi, "Report");
    ApiSchema nextBake = strict(openApi, "NextBakeSheet");
    ApiSchema served = ApiSchema.of(JSON.readTree(asker.get("/schemas/report.json").body()));
    List<String> faults = new ArrayList<>();
    for (Path sheet : sheets()) {
      String text = Files.readString(sheet);
      for (String path : List.of("/api/trace", "/api/precheck")) {
        JsonNode report = JSON.readTree(asker.post(path, Asker.JSON, text).body());
        assertThat(report.has("causes")).as(sheet + " " + report).isTrue();
        strict.faults(report).forEach(fault -> faults.add(sheet + " " + path + " " + fault));
        assertThat(served.faults(report)).isEmpty();
      }
      JsonNode next = JSON.readTree(asker.post("/api/next", Asker.JSON, text).body());
      nextBake.faults(next).forEach(fault -> faults.add(sheet + " next " + fault));
    }
    assertThat(faults).isEmpty();
  }

  @Test
  void a_schema_refuses_what_is_no_report() throws IOException {
    ApiSchema served = ApiSchema.of(JSON.readTree(asker.get("/schemas/report.json").body()));
    assertThat(served.faults(JSON.readTree("{}"))).isNotEmpty();
    assertThat(served.faults(JSON.readTree("{\"causes\": \"none\"}"))).isNotEmpty();
  }

  private static ApiSchema strict(JsonNode openApi, String name) {
    return ApiSchema.strict(
        openApi, JSON.createObjectNode().put("$ref", "#/components/schemas/" + name));
  }

  private static List<Path> sheets() throws IOException {
    List<Path> sheets = new ArrayList<>();
    try (Stream<Path> cases = Files.list(Path.of("cases"))) {
      List<Path> all = cases.filter(one -> one.toString().endsWith(".json")).sorted().toList();
      for (int place = 0; place < all.size(); place += EVERY) {
        sheets.add(all.get(place));
      }
    }
    sheets.add(Path.of("src/test/resources/contract-sheet.json"));
    return sheets;
  }
}
