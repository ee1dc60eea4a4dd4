package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.api.BakeEndpoints;
import crumbtrail.api.Endpoint;
import crumbtrail.api.LogEndpoints;
import crumbtrail.api.LookUpEndpoints;
import crumbtrail.api.PeopleEndpoints;
import crumbtrail.api.StudyEndpoints;
import crumbtrail.bakelog.LogPlace;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The interface for programs, with the real pipeline behind it. */
class ApiTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir static Path folder;

  private static WebFace face;
  private static WebFace school;
  private static LogPlace place;
  private static Asker asker;
  private static JsonNode openApi;

  @BeforeAll
  static void serve() throws JsonProcessingException {
    face = ApiServer.start();
    asker = new Asker(face.address());
    place = LogFace.file(folder);
    school = ApiServer.school(place);
    openApi = JSON.readTree(asker.get("/openapi.json").body());
  }

  @AfterAll
  static void stop() {
    face.close();
    school.close();
  }

  static Stream<Endpoint> all() {
    return Stream.of(
            BakeEndpoints.ALL,
            LogEndpoints.ALL,
            StudyEndpoints.ALL,
            PeopleEndpoints.ALL,
            LookUpEndpoints.ALL)
        .flatMap(List::stream);
  }

  // Measures are told as text, not as JSON.
  static Stream<Endpoint> described() {
    return Stream.concat(all(), Stream.of(LookUpEndpoints.METRICS));
  }

  @Test
  void every_route_for_programs_is_described_and_every_description_has_its_route() {
    List<String> described =
        described().map(endpoint -> endpoint.method() + " " + endpoint.path()).toList();
    assertThat(face.routes())
        .filteredOn(route -> !route.startsWith("HEAD ") && !route.endsWith(" " + ApiRoutes.DOCS))
        .filteredOn(route -> route.matches("\\w+ /(api|schemas|openapi|health|ready|metrics).*"))
        .containsExactlyInAnyOrderElementsOf(described);
    assertThat(openApi.path("paths").fieldNames())
        .toIterable()
        .containsExactlyInAnyOrderElementsOf(described().map(Endpoint::path).distinct().toList());
  }

  @Test
  void whatever_can_be_wished_of_the_next_bake_is_all() {
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

  @Test
  void what_needs_a_log_in_is_described_as_such() {
    assertThat(openApi.at("/components/securitySchemes/token/scheme").asText()).isEqualTo("bearer");
    JsonNode paths = openApi.path("paths");
    assertThat(paths.at("/~1api~1log~1people/get/security").toString())
        .isEqualTo("[{\"token\":[]}]");
    // Where one person keeps the log nobody logs in.
    assertThat(paths.at("/~1api~1log~1bakes/get/security").toString())
        .isEqualTo("[{},{\"token\":[]}]");
    assertThat(paths.at("/~1api~1log~1session/post").has("security")).isFalse();
    assertThat(paths.at("/~1api~1trace/post").has("security")).isFalse();
  }

  private static HttpResponse<String> asked(Endpoint endpoint) {
    Endpoint.Example example = endpoint.example();
    boolean people = PeopleEndpoints.ALL.contains(endpoint);
    Asker asked = people ? new Asker(school.address()) : asker;
    String token = "Bearer " + (people ? ApiServer.token(place) : "none");
    return example.body().isEmpty()
        ? asked.method(endpoint.method(), example.address(), "Authorization", token)
        : asked.send(
            endpoint.method(),
            example.address(),
            example.type(),
            example.body(),
            "Authorization",
            token);
  }

  // Strict: a key that the description leaves out is a fault here.
  private static List<String> faults(Endpoint endpoint, JsonNode answer) {
    JsonNode schema =
        openApi
            .path("paths")
            .path(endpoint.path())
            .path(endpoint.method().toLowerCase(Locale.ROOT))
            .at("/responses/200/content/application~1json/schema");
    return ApiSchema.strict(openApi, schema).faults(answer);
  }
}
