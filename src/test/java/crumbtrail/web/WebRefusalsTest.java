package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import crumbtrail.report.Report;
import crumbtrail.sheet.Problem;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the server refuses, and how it says so. */
class WebRefusalsTest {
  @RegisterExtension static final StoodIn face = new StoodIn();

  @Test
  void aRefusedSheetIsAProblemWithAllItsProblems() throws JsonProcessingException {
    face.made(Samples.refusing(new Problem("formula[0]", "No amount.", "Say how much.")));
    JsonNode problem = StoodIn.problem(face.asker().post("/api/trace", Asker.JSON, "{}"), 400);
    assertThat(problem.at("/problems/0/where").asText()).isEqualTo("formula[0]");
    assertThat(problem.at("/problems/0/what").asText()).isEqualTo("No amount.");
    assertThat(problem.at("/problems/0/remedy").asText()).isEqualTo("Say how much.");
    assertThat(problem.at("/type").asText()).isEqualTo("/api/docs#problem-bake-sheet");
  }

  @Test
  void aMissingPageIsAProblemOrAPage() throws JsonProcessingException {
    StoodIn.problem(face.asker().get("/nowhere"), 404);
    StoodIn.problem(face.asker().get("/api/nowhere", "Accept", "text/html"), 404);
    HttpResponse<String> page = face.asker().get("/nowhere", "Accept", "text/html");
    assertThat(page.statusCode()).isEqualTo(404);
    assertThat(page.body()).contains("<h1>Not found</h1>");
    StoodIn.assertGuarded(page);
  }

  @ParameterizedTest
  @CsvSource({
    "GET, /api/trace, 'OPTIONS, POST'",
    "DELETE, /trace, 'GET, HEAD, OPTIONS, POST'",
    "GET, /answer, 'OPTIONS, POST'",
    "GET, /report.txt, 'OPTIONS, POST'",
    "GET, /layout, 'OPTIONS, POST'",
    "DELETE, /precheck, 'GET, HEAD, OPTIONS, POST'",
    "GET, /next, 'OPTIONS, POST'",
    "GET, /next.json, 'OPTIONS, POST'",
    "GET, /api/precheck, 'OPTIONS, POST'",
    "GET, /api/next, 'OPTIONS, POST'",
    "DELETE, /, 'GET, HEAD, OPTIONS'",
    "PUT, /api/trace, 'OPTIONS, POST'",
    "POST, /health, 'GET, HEAD, OPTIONS'"
  })
  void aWrongMethodIsAProblem(String method, String path, String allowed)
      throws JsonProcessingException {
    HttpResponse<String> response = face.asker().method(method, path);
    StoodIn.problem(response, 405);
    assertThat(response.headers().firstValue("Allow")).contains(allowed);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/trace",
        "/layout",
        "/api/trace",
        "/precheck",
        "/api/precheck",
        "/next",
        "/next.json",
        "/api/next"
      })
  void aLongBodyIsAProblem(String path) throws JsonProcessingException {
    String type = path.startsWith("/api") ? Asker.JSON : Asker.FORM;
    String body = "x".repeat(WebFace.BODY_LIMIT + 1);
    StoodIn.problem(face.asker().post(path, type, body), 413);
    StoodIn.problem(face.asker().postInChunks(path, type, body), 413);
    assertThat(face.asker().post(path, type, body.substring(1)).statusCode()).isEqualTo(200);
  }

  @ParameterizedTest
  @CsvSource({
    "/api/trace, text/plain",
    "/api/trace, application/x-www-form-urlencoded",
    "/api/trace, application/json; charset=utf-16",
    "/trace, application/json",
    "/api/precheck, text/plain",
    "/api/next, text/plain",
    "/precheck, application/json",
    "/next, application/json",
    "/next.json, multipart/form-data; boundary=x",
    "/layout, application/json",
    "/trace, multipart/form-data; boundary=x"
  })
  void anotherTypeIsAProblem(String path, String type) throws JsonProcessingException {
    StoodIn.problem(face.asker().post(path, type, "{}"), 415);
  }

  @Test
  void brokenTextIsAProblem() throws JsonProcessingException {
    for (String path : List.of("/trace", "/precheck", "/next", "/next.json")) {
      StoodIn.problem(face.asker().post(path, Asker.FORM, "seen=%zz"), 400);
    }
  }

  @Test
  void aFaultOfTheProgramGivesANumberAndNothingElse() throws JsonProcessingException {
    for (Throwable fault : List.of(new IllegalStateException("secret"), new StackOverflowError())) {
      face.made(Samples.tracing(sheet -> sneak(fault)));
      HttpResponse<String> response = face.asker().post("/api/trace", Asker.JSON, "{}");
      JsonNode problem = StoodIn.problem(response, 500);
      assertThat(problem.path("incident").asText()).matches("[0-9a-f]{8}");
      assertThat(response.body()).doesNotContain("secret", "Exception", "Error\"", "at crumbtrail");
    }
    face.made(Samples.tracing(sheet -> sneak(new IllegalStateException("secret"))));
    HttpResponse<String> page = face.asker().postForm(Map.of("seen", "flat"));
    assertThat(page.statusCode()).isEqualTo(500);
    assertThat(page.body()).contains("Internal server error").doesNotContain("secret");
    StoodIn.assertGuarded(page);
  }

  @Test
  void aPictureThatIsNoneIsNotFound() throws JsonProcessingException {
    StoodIn.problem(face.asker().get("/pictures/no-such-sign.svg"), 404);
  }

  @Test
  void anotherNameForThisMachineIsRefused() throws IOException {
    for (String host : List.of("evil.example", "127.0.0.1.evil.example", "localhost.evil:80", "")) {
      String answer =
          face.asker().raw("GET / HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n");
      assertThat(answer).as(host).containsPattern("^HTTP/1.1 4(21|00) ").contains("nosniff");
    }
    String answer =
        face.asker().raw("GET / HTTP/1.1\r\nHost: LOCALHOST:1\r\nConnection: close\r\n\r\n");
    assertThat(answer).startsWith("HTTP/1.1 200 ");
  }

  @ParameterizedTest
  @CsvSource({
    "Origin, http://evil.example",
    "Origin, null",
    "Sec-Fetch-Site, cross-site",
    "Sec-Fetch-Site, same-site"
  })
  void aPostFromAForeignPageIsRefused(String header, String value) throws JsonProcessingException {
    for (String path : List.of("/trace", "/precheck", "/layout", "/next", "/next.json")) {
      StoodIn.problem(face.asker().post(path, Asker.FORM, "", header, value), 403);
    }
    for (String path : List.of("/api/trace", "/api/precheck", "/api/next")) {
      StoodIn.problem(face.asker().post(path, Asker.JSON, "{}", header, value), 403);
    }
  }

  @Test
  void aPostFromOurOwnPageIsTaken() {
    String origin = face.address().toString().replaceFirst("/$", "");
    assertThat(face.asker().post("/trace", Asker.FORM, "", "Origin", origin).statusCode())
        .isEqualTo(200);
    assertThat(
            face.asker()
                .post("/trace", Asker.FORM, "", "Sec-Fetch-Site", "same-origin")
                .statusCode())
        .isEqualTo(200);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "BROKEN\r\n\r\n",
        "GET /%zz HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n",
        "GET /assets/../../secret HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n",
        "GET / HTTP/1.1\r\nHost: localhost\r\nHost: localhost\r\nConnection: close\r\n\r\n",
        "GET / HTTP/9.9\r\nHost: localhost\r\nConnection: close\r\n\r\n"
      })
  void requestsThatReachNoRouteSayLittleAndAreGuarded(String request) throws IOException {
    String answer = face.asker().raw(request);
    assertThat(answer).containsPattern("^HTTP/1.1 (4|5)\\d\\d ");
    assertThat(answer).doesNotContainIgnoringCase("jetty").doesNotContainIgnoringCase("exception");
    assertThat(answer).contains("nosniff");
  }

  @Test
  void tooLongAHeaderIsRefusedAndGuarded() throws IOException {
    String answer =
        face.asker()
            .raw("GET / HTTP/1.1\r\nHost: localhost\r\nX: " + "x".repeat(20_000) + "\r\n\r\n");
    assertThat(answer).startsWith("HTTP/1.1 431 ").contains("nosniff");
  }

  @Test
  void tooLongAnAddressIsRefusedAndGuarded() throws IOException {
    String answer =
        face.asker().raw("GET /?x=" + "x".repeat(20_000) + " HTTP/1.1\r\nHost: localhost\r\n\r\n");
    assertThat(answer).startsWith("HTTP/1.1 414 ").contains("nosniff");
  }

  private static Traced<Report> sneak(Throwable fault) {
    // The log of the tests need not show where a fault was made up.
    fault.setStackTrace(new StackTraceElement[0]);
    if (fault instanceof Error error) {
      throw error;
    }
    throw (RuntimeException) fault;
  }
}
