package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.api.BakeEndpoints;
import crumbtrail.api.Endpoint;
import crumbtrail.api.LookUpEndpoints;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The interface for programs, with the real pipeline behind it. */
class ApiTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static WebFace face;
  private static Asker asker;
  private static JsonNode openApi;

  @BeforeAll
  static void serve() throws JsonProcessingException {
    face = ApiServer.start();
    asker = new Asker(face.address());
    openApi = JSON.readTree(asker.get("/openapi.json").body());
  }

  @AfterAll
  static void stop() {
    face.close();
  }

  static Stream<Endpoint> all() {
    return Stream.concat(BakeEndpoints.ALL.stream(), LookUpEndpoints.ALL.stream());
  }

  @Test
  void every_route_for_programs_is_described_and_every_description_has_its_route() {
    List<String> described =
        all().map(endpoint -> endpoint.method() + " " + endpoint.path()).toList();
    assertThat(face.routes())
        .filteredOn(route -> !route.startsWith("HEAD ") && !route.endsWith(" " + ApiRoutes.DOCS))
        .filteredOn(route -> route.matches("\\w+ /(api|schemas|openapi|health).*"))
        .containsExactlyInAnyOrderElementsOf(described);
    assertThat(openApi.path("paths").fieldNames())
        .toIterable()
        .containsExactlyInAnyOrderElementsOf(all().map(Endpoint::path).distinct().toList());
  }

  @Test
  void whatever_can_be_wished_of_the_next_bake_is_described() {
    List<String> wishes =
        Stream.concat(
                WishForm.blank("{}", Texts.english()).fields().stream().map(WishForm.Field::name),
                Stream.of(WishForm.SINGLE))
            .toList();
    assertThat(BakeEndpoints.NEXT.parameters())
        .extracting(Endpoint.Parameter::name)
        .containsExactlyInAnyOrderElementsOf(wishes);
  }

  @ParameterizedTest
  @MethodSource("all")
  void the_example_is_answered_as_described(Endpoint endpoint) throws JsonProcessingException {
    HttpResponse<String> response = asked(endpoint);
    assertThat(response.statusCode()).as(response.body()).isEqualTo(200);
    assertThat(response.headers().firstValue("Content-Type")).contains("application/json");
    JsonNode answer = JSON.readTree(response.body());
    assertThat(Shown.missing(JSON.readTree(endpoint.example().shown()), answer)).isEmpty();
    assertThat(faults(endpoint, answer)).isEmpty();
  }

  private static HttpResponse<String> asked(Endpoint endpoint) {
    Endpoint.Example example = endpoint.example();
    return endpoint.method().equals("GET")
        ? asker.get(example.address())
        : asker.post(example.address(), example.type(), example.body());
  }

  // Strict: a key that the description leaves out is a fault here.
  private static List<String> faults(Endpoint endpoint, JsonNode answer) {
    JsonNode schema =
        openApi
            .path("paths")
            .path(endpoint.path())
            .path(endpoint.method().equals("GET") ? "get" : "post")
            .at("/responses/200/content/application~1json/schema");
    return ApiSchema.strict(openApi, schema).faults(answer);
  }
}
