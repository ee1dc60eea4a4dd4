package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.api.BakeEndpoints;
import crumbtrail.api.Endpoint;
import crumbtrail.api.LookUpEndpoints;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How the interface for programs keeps to HTTP. */
class ApiHttpTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static WebFace face;
  private static Asker asker;
  private static String docs;

  @BeforeAll
  static void serve() {
    face = ApiServer.start();
    asker = new Asker(face.address());
    docs = asker.get(ApiRoutes.DOCS, "Accept", "text/html").body();
  }

  @AfterAll
  static void stop() {
    face.close();
  }

  static Stream<Endpoint> posts() {
    return BakeEndpoints.ALL.stream();
  }

  static Stream<Endpoint> gets() {
    return LookUpEndpoints.ALL.stream();
  }

  @ParameterizedTest
  @MethodSource("gets")
  void what_a_client_has_already_is_not_sent_again(Endpoint endpoint) {
    String address = endpoint.example().address();
    HttpResponse<String> first = asker.get(address);
    String tag = first.headers().firstValue("ETag").orElseThrow();
    assertThat(first.headers().firstValue("Cache-Control")).contains("no-cache");

    for (String known : List.of(tag, "W/\"other\", " + tag, tag.substring(2), "*")) {
      HttpResponse<String> again = asker.get(address, "If-None-Match", known);
      assertThat(again.statusCode()).as(known).isEqualTo(304);
      assertThat(again.body()).isEmpty();
      assertThat(again.headers().firstValue("ETag")).contains(tag);
    }
    assertThat(asker.get(address, "If-None-Match", "W/\"other\"").statusCode()).isEqualTo(200);
  }

  @ParameterizedTest
  @MethodSource("gets")
  void the_head_is_that_of_the_answer(Endpoint endpoint) {
    String address = endpoint.example().address();
    HttpResponse<String> head = asker.method("HEAD", address);
    HttpResponse<String> answer = asker.get(address);
    assertThat(head.statusCode()).isEqualTo(200);
    assertThat(head.body()).isEmpty();
    for (String name : List.of("Content-Type", "ETag", "Cache-Control", "Vary")) {
      assertThat(head.headers().firstValue(name))
          .as(name)
          .isPresent()
          .isEqualTo(answer.headers().firstValue(name));
    }
  }

  @ParameterizedTest
  @CsvSource({"/, text/html", "/lessons, text/html", "/assets/crumbtrail.css, text/css"})
  void pages_and_assets_have_heads_too(String path, String type) {
    HttpResponse<String> head = asker.method("HEAD", path);
    assertThat(head.statusCode()).isEqualTo(200);
    assertThat(head.headers().firstValue("Content-Type").orElseThrow()).startsWith(type);
    assertThat(asker.method("HEAD", "/api/causes/no-such").statusCode()).isEqualTo(404);
    assertThat(asker.method("HEAD", "/lessons/99").statusCode()).isEqualTo(404);
  }

  @Test
  void an_asset_that_a_client_has_is_not_sent_again() {
    HttpResponse<String> first = asker.get("/assets/crumbtrail.css");
    String tag = first.headers().firstValue("ETag").orElseThrow();
    HttpResponse<String> again = asker.get("/assets/crumbtrail.css", "If-None-Match", tag);
    assertThat(again.statusCode()).isEqualTo(304);
    assertThat(again.body()).isEmpty();
  }

  @Test
  void answers_about_a_bake_are_kept_by_nobody() {
    for (Endpoint endpoint : BakeEndpoints.ALL) {
      HttpResponse<String> response =
          asker.post(
              endpoint.example().address(), endpoint.example().type(), endpoint.example().body());
      assertThat(response.headers().firstValue("Cache-Control")).contains("no-store");
      assertThat(response.headers().firstValue("ETag")).isEmpty();
    }
    HttpResponse<String> any = asker.get("/api/mystery");
    assertThat(any.statusCode()).isEqualTo(200);
    assertThat(any.headers().firstValue("Cache-Control")).contains("no-store");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/api/signs", "/openapi.json", "/assets/crumbtrail.css"})
  void long_answers_are_compressed_for_those_who_can_read_it(String path) throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(face.address() + path.substring(1)))
            .header("Accept-Encoding", "gzip")
            .build();
    HttpResponse<byte[]> packed =
        HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofByteArray());
    assertThat(packed.headers().firstValue("Content-Encoding")).contains("gzip");
    assertThat(packed.headers().firstValue("Vary")).contains("Accept-Encoding");
    HttpResponse<String> plain = asker.get(path);
    assertThat(plain.headers().firstValue("Content-Encoding")).isEmpty();
    assertThat(unpacked(packed.body())).isEqualTo(plain.body());
    assertThat(packed.body().length).isLessThan(plain.body().length() / 2);
    assertThat(packed.headers().firstValue("ETag")).isEqualTo(plain.headers().firstValue("ETag"));
  }

  private static String unpacked(byte[] packed) throws IOException {
    try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(packed))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "/api/trace, 'OPTIONS, POST'",
    "/api/causes/over-proofed, 'GET, HEAD, OPTIONS'",
    "/, 'GET, HEAD, OPTIONS'"
  })
  void an_address_tells_its_options(String path, String allowed) {
    HttpResponse<String> response = asker.method("OPTIONS", path);
    assertThat(response.statusCode()).isEqualTo(204);
    assertThat(response.body()).isEmpty();
    assertThat(response.headers().firstValue("Allow")).contains(allowed);
  }

  @Test
  void a_wrong_method_is_told_the_right_ones() throws JsonProcessingException {
    for (Endpoint endpoint : Stream.concat(posts(), gets()).toList()) {
      HttpResponse<String> response = asker.method("DELETE", endpoint.example().address());
      problem(response, 405);
      assertThat(response.headers().firstValue("Allow").orElseThrow()).contains(endpoint.method());
    }
  }

  @Test
  void what_is_not_there_is_a_problem() throws JsonProcessingException {
    for (String path :
        List.of("/api/nowhere", "/api/causes/no-such", "/api/lessons/0", "/api/lessons/x")) {
      problem(asker.get(path), 404);
    }
    problem(asker.method("OPTIONS", "/api/nowhere"), 404);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"text/html", "application/xml, text/*;q=0.5", "application/json;q=0", "image/png"})
  void who_does_not_take_json_is_told_so(String accept) throws JsonProcessingException {
    for (Endpoint endpoint : LookUpEndpoints.ALL) {
      HttpResponse<String> response = asker.get(endpoint.example().address(), "Accept", accept);
      assertThat(response.statusCode()).isEqualTo(406);
      if (endpoint.path().startsWith("/api/")) {
        problem(response, 406);
      }
    }
    problem(asker.post("/api/trace", Asker.JSON, "{}", "Accept", accept), 406);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"*/*", "application/*", "text/html, */*;q=0.1", "APPLICATION/JSON; charset=utf-8"})
  void who_takes_json_gets_it(String accept) {
    assertThat(asker.get("/api/version", "Accept", accept).statusCode()).isEqualTo(200);
  }

  @ParameterizedTest
  @MethodSource("posts")
  void bodies_that_cannot_be_taken_are_problems(Endpoint endpoint) throws JsonProcessingException {
    String path = endpoint.path();
    problem(asker.post(path, Asker.JSON, "x".repeat(WebFace.BODY_LIMIT + 1)), 413);
    problem(asker.postInChunks(path, Asker.JSON, "x".repeat(WebFace.BODY_LIMIT + 1)), 413);
    problem(asker.post(path, "application/xml", "<sheet/>"), 415);
    problem(asker.post(path, Asker.FORM, "seen=flat"), 415);
    problem(asker.post(path, Asker.JSON, "{}", "Origin", "http://evil.example"), 403);
    for (String body : List.of("", "[]", "null", "{", "\"x\"", "{\"colour\": 1}")) {
      HttpResponse<String> response = asker.post(path, Asker.JSON, body);
      if (!path.equals("/api/layout") || !body.startsWith("{\"")) {
        assertThat(problem(response, 400).path("problems")).as(body).isNotEmpty();
      }
    }
  }

  @Test
  void a_faulty_sheet_is_still_laid_out_as_far_as_it_goes() throws JsonProcessingException {
    JsonNode layout =
        JSON.readTree(
            asker
                .post(
                    "/api/layout",
                    Asker.JSON,
                    "{\"formula\": [\"500 g flour\", \"10 g salt\", 7], \"colour\": \"red\"}")
                .body());
    assertThat(layout.at("/salt").asDouble()).isEqualTo(2);
    assertThat(layout.path("problems"))
        .extracting(one -> one.path("where").asText())
        .containsExactlyInAnyOrder("formula[2]", "colour");
  }

  @Test
  void every_kind_of_problem_leads_to_its_section() {
    for (crumbtrail.api.ProblemKind kind : crumbtrail.api.ProblemKind.values()) {
      assertThat(kind.type()).isEqualTo("/api/docs#" + kind.anchor());
      assertThat(docs).contains("<h3 id=\"" + kind.anchor() + "\">");
    }
  }

  @Test
  void the_page_describes_every_address_without_scripts_and_with_whole_links() {
    for (Endpoint endpoint : Stream.concat(posts(), gets()).toList()) {
      assertThat(docs).contains("<h3 id=\"" + endpoint.id() + "\">", endpoint.path());
    }
    java.util.regex.Matcher link =
        java.util.regex.Pattern.compile("href=\"#([^\"]+)\"").matcher(docs);
    while (link.find()) {
      assertThat(docs).contains("id=\"" + link.group(1) + "\"");
    }
    assertThat(docs).doesNotContain("<script", "style=\"");
  }

  private static JsonNode problem(HttpResponse<String> response, int status)
      throws JsonProcessingException {
    assertThat(response.statusCode()).as(response.body()).isEqualTo(status);
    assertThat(response.headers().firstValue("Content-Type")).contains("application/problem+json");
    JsonNode problem = JSON.readTree(response.body());
    assertThat(problem.path("status").asInt()).isEqualTo(status);
    assertThat(problem.path("title").asText()).isNotBlank();
    assertThat(problem.path("detail").asText()).isNotBlank();
    assertThat(docs)
        .contains("id=\"" + problem.path("type").asText().replace("/api/docs#", "") + "\"");
    return problem;
  }
}
