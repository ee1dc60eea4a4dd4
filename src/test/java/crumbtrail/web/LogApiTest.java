package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.api.Endpoint;
import crumbtrail.api.LogEndpoints;
import crumbtrail.api.PeopleEndpoints;
import crumbtrail.api.StudyEndpoints;
import crumbtrail.bakelog.LogPlace;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.SomeBakes;
import crumbtrail.bakelog.store.SqlLogStore;
import crumbtrail.people.Passwords;
import crumbtrail.people.Role;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The log as programs meet it: of one person, and of several. */
class LogApiTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String PASSWORD = "rye and salt and patience";

  @TempDir static Path folder;

  private static WebFace alone;
  private static WebFace shared;
  private static LogStore school;
  private static Asker asker;
  private static Asker many;

  @BeforeAll
  static void serve() {
    alone = ApiServer.start();
    asker = new Asker(alone.address());
    LogPlace place = LogFace.file(folder);
    school = SqlLogStore.open(place);
    String secret = Passwords.hash(PASSWORD);
    school.people().add("Ida", Role.KEEPER, secret);
    school.people().add("Una", Role.TEACHER, secret);
    school.people().add("Jon", Role.BAKER, secret);
    school.people().add("Eva", Role.BAKER, secret);
    shared = LogFace.bare(new LogServing(new LogDoor(() -> SqlLogStore.open(place)), true, false));
    many = new Asker(shared.address());
  }

  @AfterAll
  static void stop() {
    alone.close();
    shared.close();
    school.close();
  }

  @Test
  void a_change_can_name_what_it_was_made_for() throws JsonProcessingException {
    HttpResponse<String> first = asker.get("/api/log/bakes/2");
    String tag = first.headers().firstValue("ETag").orElseThrow();
    assertThat(tag).startsWith("\"");
    assertThat(first.headers().firstValue("Cache-Control")).contains("private, no-cache");
    assertThat(asker.get("/api/log/bakes/2", "If-None-Match", tag).statusCode()).isEqualTo(304);

    HttpResponse<String> changed = patch("/api/log/bakes/2", "{\"note\": \"one\"}", tag);
    assertThat(changed.statusCode()).isEqualTo(200);
    HttpResponse<String> late = patch("/api/log/bakes/2", "{\"note\": \"two\"}", tag);
    problem(late, 412);
    problem(asker.method("DELETE", "/api/log/bakes/2", "If-Match", tag), 412);
    assertThat(json(asker.get("/api/log/bakes/2")).path("note").asText()).isEqualTo("one");
    String now = changed.headers().firstValue("ETag").orElseThrow();
    assertThat(patch("/api/log/bakes/2", "{\"note\": \"three\"}", now).statusCode()).isEqualTo(200);
    assertThat(patch("/api/log/bakes/2", "{\"outcome\": \"\"}", "*").statusCode()).isEqualTo(200);
    JsonNode called =
        json(
            patch(
                "/api/log/bakes/2",
                "{\"label\": \"Stones\", \"recipe\": \"Rye\", \"baked\": \"2026-04-01T09:30\"}",
                "*"));
    assertThat(called.path("label").asText()).isEqualTo("Stones");
    assertThat(called.path("recipe").asText()).isEqualTo("Rye");
    assertThat(called.path("baked").asText()).isEqualTo("2026-04-01T09:30");
    assertThat(called.path("note").asText()).isEqualTo("three");
    problem(patch("/api/log/bakes/2", "{\"baked\": \"soon\"}", "*"), 400);
  }

  @Test
  void what_is_wrong_is_told_all_at_once() throws JsonProcessingException {
    JsonNode kept =
        problem(
            asker.post(
                "/api/log/bakes",
                Asker.JSON,
                "{\"sheet\": {\"formula\": [7]}, \"baked\": \"soon\", \"outcome\": \"odd\","
                    + " \"label\": 3, \"colour\": 1}"),
            400);
    assertThat(kept.path("problems"))
        .extracting(one -> one.path("where").asText())
        .containsExactlyInAnyOrder("colour", "label", "baked", "outcome", "sheet.formula[0]");
    JsonNode noted =
        problem(patch("/api/log/bakes/1", "{\"confirmed\": [\"moon-phase\"]}", "*"), 400);
    assertThat(noted.path("problems").path(0).path("where").asText()).isEqualTo("confirmed[0]");
    for (String body : List.of("", "[]", "null", "{", "{}")) {
      problem(asker.post("/api/log/bakes", Asker.JSON, body), 400);
    }
    problem(asker.post("/api/log/bakes", Asker.FORM, "a=b"), 415);
    problem(asker.post("/api/log/bakes", Asker.JSON, "x".repeat(LogForms.LONGEST + 1)), 413);
    problem(asker.post("/api/log/bakes", Asker.JSON, "{}", "Origin", "http://evil.example"), 403);
    problem(asker.post("/api/log/bakes/1/photos", Asker.JSON, "{\"picture\": \"<svg>\"}"), 400);
    problem(asker.get("/api/log/bakes?most=900"), 400);
    problem(asker.get("/api/log/bakes?after=x"), 400);
    problem(asker.get("/api/log/bakes?since=soon"), 400);
    problem(asker.get("/api/log/bakes/70000"), 404);
    problem(asker.get("/api/log/bakes/x"), 404);
    problem(asker.post("/api/log/session", Asker.JSON, "{}"), 404);
  }

  @Test
  void pages_of_the_list_follow_each_other() throws JsonProcessingException {
    JsonNode first = json(asker.get("/api/log/bakes?most=1"));
    assertThat(first.path("bakes")).hasSize(1);
    JsonNode second = json(asker.get("/api/log/bakes?most=1&after=" + first.path("next").asText()));
    assertThat(second.path("bakes").path(0).path("id").asLong())
        .isNotEqualTo(first.path("bakes").path(0).path("id").asLong());
  }

  @Test
  void a_shared_log_wants_a_token_and_takes_no_cookie() throws JsonProcessingException {
    for (Endpoint one :
        Stream.of(LogEndpoints.ALL, StudyEndpoints.ALL, PeopleEndpoints.ALL)
            .flatMap(List::stream)
            .filter(one -> !PeopleEndpoints.OPEN.contains(one))
            .toList()) {
      HttpResponse<String> answer =
          many.send(one.method(), one.example().address(), Asker.JSON, "{}");
      problem(answer, 401);
      assertThat(answer.headers().firstValue("WWW-Authenticate")).contains("Bearer");
    }
    String token = token("Jon");
    assertThat(many.get("/api/log/bakes", "Cookie", "crumbtrail=" + token).statusCode())
        .isEqualTo(401);
    assertThat(many.get("/api/log/bakes", "Authorization", "Bearer " + token).statusCode())
        .isEqualTo(200);
    problem(many.get("/api/log/bakes", "Authorization", "Bearer " + token + "x"), 401);
    problem(
        many.post("/api/log/session", Asker.JSON, "{\"name\": \"Jon\", \"password\": \"no\"}"),
        401);

    assertThat(many.method("DELETE", "/api/log/session", "Authorization", "Bearer " + token))
        .matches(answer -> answer.statusCode() == 200);
    problem(many.get("/api/log/bakes", "Authorization", "Bearer " + token), 401);
  }

  /** A bake of Jon's that was given to Una's class: asked for by Jon, Eva, Una and Ida. */
  @Test
  void programs_see_and_change_what_their_people_may() throws JsonProcessingException {
    long una = school.people().account("Una").orElseThrow().person().id();
    long jon = school.people().account("Jon").orElseThrow().person().id();
    long tuesday = school.people().make("Tuesday", una, "AAAAA-BBBBB").id();
    school.people().join(tuesday, jon);
    Map<String, List<Integer>> expected =
        Map.of(
            "GET /api/log/bakes/{id}", List.of(200, 404, 200, 200),
            "GET /api/log/bakes/{id}/since", List.of(200, 404, 200, 200),
            "GET /api/log/calibration?of={class}", List.of(404, 404, 200, 200),
            "PATCH /api/log/bakes/{id}", List.of(200, 404, 403, 403),
            "DELETE /api/log/bakes/{id}", List.of(200, 404, 403, 200),
            "POST /api/log/bakes/{id}/photos", List.of(400, 404, 400, 400),
            "GET /api/log/photos/{photo}", List.of(200, 404, 200, 200),
            "DELETE /api/log/photos/{photo}", List.of(200, 404, 403, 200),
            "GET /api/log/bakes?of=all", List.of(403, 403, 403, 200),
            "GET /api/log/bakes?of={class}", List.of(404, 404, 200, 200));
    List<String> tokens = List.of(token("Jon"), token("Eva"), token("Una"), token("Ida"));
    for (Map.Entry<String, List<Integer>> row : expected.entrySet()) {
      for (int who = 0; who < tokens.size(); who++) {
        long bake = school.of(Scope.baker(jon)).add(SomeBakes.traced(1).of(jon, tuesday));
        long photo = school.of(Scope.baker(jon)).addPhoto(bake, SomeBakes.photo()).orElseThrow();
        String[] asked =
            row.getKey()
                .replace("{id}", "" + bake)
                .replace("{photo}", "" + photo)
                .replace("{class}", "" + tuesday)
                .split(" ");
        String body = asked[0].equals("PATCH") ? "{\"note\": \"x\"}" : "{}";
        HttpResponse<String> answer =
            many.send(
                asked[0], asked[1], Asker.JSON, body, "Authorization", "Bearer " + tokens.get(who));
        assertThat(answer.statusCode())
            .as("%s by %d: %s", row.getKey(), who, answer.body())
            .isEqualTo(row.getValue().get(who));
      }
    }
  }

  private static String token(String name) throws JsonProcessingException {
    return json(many.post(
            "/api/log/session",
            Asker.JSON,
            "{\"name\": \"" + name + "\", \"password\": \"" + PASSWORD + "\"}"))
        .path("token")
        .asText();
  }

  private static HttpResponse<String> patch(String path, String body, String match) {
    return asker.send("PATCH", path, Asker.JSON, body, "If-Match", match);
  }

  private static JsonNode problem(HttpResponse<String> answer, int status)
      throws JsonProcessingException {
    return StoodIn.problem(answer, status);
  }

  private static JsonNode json(HttpResponse<String> answer) throws JsonProcessingException {
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    return JSON.readTree(answer.body());
  }
}
