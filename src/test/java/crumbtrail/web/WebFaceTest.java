package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.advice.Wish;
import crumbtrail.report.RecipeLayout;
import crumbtrail.report.Replied;
import crumbtrail.report.Reply;
import crumbtrail.report.Report;
import crumbtrail.sheet.Problem;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The server as browsers and programs meet it, with stand-ins for the pipeline. */
class WebFaceTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String HOSTILE =
      "\"'><script>alert(1)</script><img src=x onerror=alert(2)>&";

  private static final AtomicReference<Tracer> TRACER = new AtomicReference<>();
  private static WebFace face;
  private static Asker asker;

  @BeforeEach
  void resetTracer() {
    TRACER.set(Samples.making(Samples.everywhere("plain words")));
  }

  @BeforeAll
  static void start() {
    face = WebFace.start(current(), "127.0.0.1", 0);
    asker = new Asker(face.address());
  }

  @AfterAll
  static void stop() {
    face.close();
  }

  @ParameterizedTest
  @CsvSource({
    "/, text/html",
    "/about, text/html",
    "/health, application/json",
    "/assets/crumbtrail.css, text/css",
    "/assets/draft.js, text/javascript",
    "/assets/sheet.js, text/javascript",
    "/assets/signs.css, text/css",
    "/assets/icon.svg, image/svg+xml"
  })
  void serves(String path, String type) {
    HttpResponse<String> response = asker.get(path);
    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(response.headers().firstValue("Content-Type").orElseThrow()).startsWith(type);
    assertGuarded(response);
  }

  @Test
  void theFormBecomesASheetAndThenAReport() throws JsonProcessingException {
    AtomicReference<String> sheet = new AtomicReference<>("");
    TRACER.set(
        Samples.tracing(
            json -> {
              sheet.set(json);
              return new Traced.Made<>(Samples.failed("went flat"));
            }));
    HttpResponse<String> response =
        asker.postForm(Map.of("seen", "flat loaf", "recipe", "500 g flour", "room", "21 C"));
    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(response.body())
        .contains("Likely causes", "What to change", "went flat", "2 further causes");
    assertThat(JSON.readTree(sheet.get()))
        .isEqualTo(
            JSON.readTree(
                "{\"seen\":[\"flat loaf\"],\"recipe\":\"500 g flour\","
                    + "\"process\":{\"room\":\"21 C\"}}"));
    assertGuarded(response);
  }

  @Test
  void aReportThatSaysNothingIsStillAPage() {
    TRACER.set(Samples.making(Samples.empty()));
    HttpResponse<String> response = asker.postForm(Map.of("seen", "flat loaf"));
    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(response.body()).contains("Nothing on this sheet points to a cause yet");
  }

  @Test
  void aRefusedFormComesBackAsTypedWithEachFaultBesideItsField() {
    TRACER.set(
        Samples.refusing(
            new Problem("process.room", "warmish is no temperature", "write 21 C or 70 F"),
            new Problem("knownCauses", "This is of no use here.", "")));
    HttpResponse<String> response = asker.postForm(Map.of("room", "warmish", "lid", "no"));
    assertThat(response.statusCode()).isEqualTo(400);
    assertThat(response.body())
        .contains(
            "2 things need another look",
            "value=\"warmish\"",
            "<a href=\"#room\">Kitchen</a>",
            "<p>Warmish is no temperature. Write 21 C or 70 F.</p>",
            "This is of no use here.",
            "<option value=\"no\" selected>");
    assertThat(response.body()).containsPattern("id=\"room\"[^>]*aria-invalid=\"true\"");
    assertGuarded(response);
  }

  @Test
  void theLibraryOfThePageIsOursToServeAndMayBeKept() {
    Matcher script =
        Pattern.compile("src=\"(/assets/htmx-[^\"]+)\"").matcher(asker.get("/").body());
    assertThat(script.find()).isTrue();
    HttpResponse<String> library = asker.get(script.group(1));
    assertThat(library.statusCode()).isEqualTo(200);
    assertThat(library.headers().firstValue("Content-Type").orElseThrow())
        .startsWith("text/javascript");
    assertThat(library.headers().firstValue("Cache-Control").orElseThrow()).contains("immutable");
    assertThat(library.body()).contains("htmx");
    assertGuarded(library);
  }

  @Test
  void aLayoutIsAPanelForAScriptAndTheWholeFormForAButton() {
    String body = "recipe=500+g+flour&seen=flat&sign-pale-crust=saw";
    HttpResponse<String> panel = asker.post("/layout", Asker.FORM, body, "HX-Request", "true");
    assertThat(panel.statusCode()).isEqualTo(200);
    assertThat(panel.body()).contains("data-said").doesNotContain("<html", "<form");
    assertGuarded(panel);
    HttpResponse<String> form = asker.post("/layout", Asker.FORM, body);
    assertThat(form.statusCode()).isEqualTo(200);
    assertThat(form.body()).contains("<form", "500 g flour</textarea>", "data-draft=\"sent\"");
    assertGuarded(form);
  }

  @Test
  void unitsComeWithTheAddressAndAreRememberedByOneHarmlessCookie() {
    HttpResponse<String> chosen = asker.get("/?units=us");
    assertThat(chosen.body()).contains("70 F");
    assertThat(chosen.headers().firstValue("Set-Cookie").orElseThrow())
        .contains("units=us", "SameSite=Lax", "HttpOnly");
    assertThat(asker.get("/", "Cookie", "units=us").body()).contains("70 F");
    assertThat(asker.get("/", "Cookie", "units=furlongs").body()).contains("21 C");
    assertThat(asker.get("/").headers().firstValue("Set-Cookie")).isEmpty();
  }

  @Test
  void aPictureThatIsNoneIsNotFound() throws JsonProcessingException {
    problem(asker.get("/pictures/no-such-sign.svg"), 404);
  }

  @Test
  void anEmptyFormIsToldWhatToSay() {
    TRACER.set(Samples.refusing(new Problem("", "neither formula nor seen", "write JSON")));
    HttpResponse<String> response = asker.postForm(Map.of("room", "21 C"));
    assertThat(response.body())
        .contains("<a href=\"#seen\">", "There is nothing to go on yet.")
        .doesNotContain("JSON");
  }

  @Test
  void theInterfaceForProgramsAnswersWithTheReport() throws JsonProcessingException {
    HttpResponse<String> response =
        asker.post("/api/trace", "application/json; charset=UTF-8", "{}");
    assertThat(response.statusCode()).isEqualTo(200);
    JsonNode report = JSON.readTree(response.body());
    assertThat(report.at("/causes/0/probability").asDouble()).isEqualTo(0.83);
    assertThat(report.at("/formula/hydration/allWater").asDouble()).isEqualTo(63.1);
    assertGuarded(response);
  }

  @Test
  void aRefusedSheetIsAProblemWithAllItsProblems() throws JsonProcessingException {
    TRACER.set(Samples.refusing(new Problem("formula[0]", "No amount.", "Say how much.")));
    JsonNode problem = problem(asker.post("/api/trace", Asker.JSON, "{}"), 400);
    assertThat(problem.at("/problems/0/where").asText()).isEqualTo("formula[0]");
    assertThat(problem.at("/problems/0/what").asText()).isEqualTo("No amount.");
    assertThat(problem.at("/problems/0/remedy").asText()).isEqualTo("Say how much.");
    assertThat(problem.at("/type").asText()).isEqualTo("/api/docs#problem-bake-sheet");
  }

  @Test
  void aMissingPageIsAProblemOrAPage() throws JsonProcessingException {
    problem(asker.get("/nowhere"), 404);
    problem(asker.get("/api/nowhere", "Accept", "text/html"), 404);
    HttpResponse<String> page = asker.get("/nowhere", "Accept", "text/html");
    assertThat(page.statusCode()).isEqualTo(404);
    assertThat(page.body()).contains("<h1>Not found</h1>");
    assertGuarded(page);
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
    HttpResponse<String> response = asker.method(method, path);
    problem(response, 405);
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
    problem(asker.post(path, type, body), 413);
    problem(asker.postInChunks(path, type, body), 413);
    assertThat(asker.post(path, type, body.substring(1)).statusCode()).isEqualTo(200);
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
    problem(asker.post(path, type, "{}"), 415);
  }

  @Test
  void brokenTextIsAProblem() throws JsonProcessingException {
    for (String path : List.of("/trace", "/precheck", "/next", "/next.json")) {
      problem(asker.post(path, Asker.FORM, "seen=%zz"), 400);
    }
  }

  @Test
  void aFaultOfTheProgramGivesANumberAndNothingElse() throws JsonProcessingException {
    for (Throwable fault : List.of(new IllegalStateException("secret"), new StackOverflowError())) {
      TRACER.set(Samples.tracing(sheet -> sneak(fault)));
      HttpResponse<String> response = asker.post("/api/trace", Asker.JSON, "{}");
      JsonNode problem = problem(response, 500);
      assertThat(problem.path("incident").asText()).matches("[0-9a-f]{8}");
      assertThat(response.body()).doesNotContain("secret", "Exception", "Error\"", "at crumbtrail");
    }
    TRACER.set(Samples.tracing(sheet -> sneak(new IllegalStateException("secret"))));
    HttpResponse<String> page = asker.postForm(Map.of("seen", "flat"));
    assertThat(page.statusCode()).isEqualTo(500);
    assertThat(page.body()).contains("Internal server error").doesNotContain("secret");
    assertGuarded(page);
  }

  @Test
  void markupInAnyFieldComesBackAsText() {
    TRACER.set(Samples.refusing(new Problem("recipe", HOSTILE, HOSTILE)));
    Map<String, String> typed = new HashMap<>();
    FormLayout.ALL.forEach(field -> typed.put(field.name(), HOSTILE + field.name()));
    HttpResponse<String> refused = asker.postForm(typed);
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body()).doesNotContain("<script>", "<img", "\"'>");
    for (FormField field : FormLayout.ALL) {
      if (field.kind() != FormField.Kind.YES_NO) {
        assertThat(refused.body())
            .containsPattern("&lt;script(&gt;|>).{0,100}&amp;" + field.name());
      }
    }

    TRACER.set(Samples.making(Samples.everywhere(HOSTILE)));
    HttpResponse<String> made = asker.postForm(typed);
    assertThat(made.statusCode()).isEqualTo(200);
    assertThat(made.body()).contains("&lt;script&gt;").doesNotContain("<script", "<img", "\"'>");

    TRACER.set(Samples.making(Samples.failed(HOSTILE)));
    HttpResponse<String> failed = asker.postForm(typed);
    assertThat(failed.body()).contains("&lt;script&gt;").doesNotContain("<script", "<img", "\"'>");
  }

  @Test
  void markupInTheNextBakeComesBackAsText() {
    TRACER.set(Samples.making(Samples.everywhere(HOSTILE)));
    Map<String, String> typed = new HashMap<>();
    typed.put(WishForm.SHEET, HOSTILE);
    HttpResponse<String> made = asker.postForm("/next", typed);
    assertThat(made.statusCode()).isEqualTo(200);
    assertThat(made.body()).contains("&lt;script&gt;").doesNotContain("<script", "<img", "\"'>");

    WishForm.blank("", Texts.english()).fields().forEach(field -> typed.put(field.name(), HOSTILE));
    HttpResponse<String> refused = asker.postForm("/next", typed);
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body()).contains("&lt;script").doesNotContain("<script", "<img", "\"'>");
    assertGuarded(refused);
  }

  @Test
  void theSheetTravelsFromTheFormIntoTheNextBake() {
    AtomicReference<String> sheet = new AtomicReference<>("");
    HttpResponse<String> report =
        asker.postForm("/trace", Map.of("seen", "it \"fell\" <flat>", "recipe", "500 g flour"));
    Matcher carried = Pattern.compile("name=\"sheet\" value=\"([^\"]*)\"").matcher(report.body());
    assertThat(carried.find()).isTrue();
    String value = carried.group(1).replace("&#34;", "\"").replace("&lt;", "<");
    assertThat(value)
        .isEqualTo("{\"seen\":[\"it \\\"fell\\\" <flat>\"],\"recipe\":\"500 g flour\"}");
    TRACER.set(
        Samples.tracing(
            json -> {
              sheet.set(json);
              return new Traced.Made<>(Samples.everywhere("next"));
            }));
    asker.postForm("/next", Map.of("sheet", value));
    assertThat(sheet.get()).isEqualTo(value);
  }

  @Test
  void aCheckBeforeBakingHasItsOwnHeadingsAndCarriesNoSigns() {
    HttpResponse<String> response =
        asker.postForm("/precheck", Map.of("seen", "flat loaf", "recipe", "500 g flour"));
    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(response.body())
        .contains(
            ">What may go wrong</h2>",
            ">Change before you start</h2>",
            ">Missing from the recipe</h2>",
            ">Levels</h2>",
            ">What would be seen</h2>",
            ">What to watch</h2>")
        .doesNotContain(">Likely causes</h2>", "flat loaf");
    assertGuarded(response);
  }

  @Test
  void theNextBakeIsAPageAFileAndAnAnswer() throws JsonProcessingException {
    Map<String, String> fields =
        Map.of("sheet", "{}", "start", "9:00", "overnight", "12 h", "one", "yes");
    HttpResponse<String> page = asker.postForm("/next", fields);
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.body())
        .contains("What is different", "value=\"9:00\"", "value=\"12 h\"", "checked");
    assertGuarded(page);

    HttpResponse<String> file = asker.postForm("/next.json", fields);
    assertThat(file.headers().firstValue("Content-Disposition"))
        .contains("attachment; filename=\"next-bake.json\"");
    assertThat(JSON.readTree(file.body()).path("title").asText()).isEqualTo("plain words");
    assertGuarded(file);

    JsonNode answer =
        JSON.readTree(asker.post("/api/next?start=9:00&one=yes", Asker.JSON, "{}").body());
    assertThat(answer.at("/sheet/title").asText()).isEqualTo("plain words");
  }

  @Test
  void wishesThatCannotBeReadAreToldBesideTheirFields() throws JsonProcessingException {
    Map<String, String> fields = Map.of("sheet", "{}", "start", "26:00", "dough", "a lot");
    for (String path : List.of("/next", "/next.json")) {
      HttpResponse<String> page = asker.postForm(path, fields);
      assertThat(page.statusCode()).isEqualTo(400);
      assertThat(page.body())
          .contains("<a href=\"#wish-start\">", "<a href=\"#wish-dough\">", "value=\"a lot\"");
      assertThat(page.body()).containsPattern("id=\"wish-dough\"[^>]*aria-invalid=\"true\"");
    }
    JsonNode problem = problem(asker.post("/api/next?dough=lots", Asker.JSON, "{}"), 400);
    assertThat(problem.path("detail").asText()).contains("dough").contains("900 g");
    TRACER.set(Samples.refusing(new Problem("formula[0]", "no amount", "say how much")));
    problem(asker.post("/api/next", Asker.JSON, "{}"), 400);
    HttpResponse<String> refused = asker.postForm("/next", Map.of("sheet", "{}"));
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body()).contains("No amount: say how much.");
  }

  @Test
  void anotherNameForThisMachineIsRefused() throws IOException {
    for (String host : List.of("evil.example", "127.0.0.1.evil.example", "localhost.evil:80", "")) {
      String answer =
          asker.raw("GET / HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n");
      assertThat(answer).as(host).containsPattern("^HTTP/1.1 4(21|00) ").contains("nosniff");
    }
    String answer = asker.raw("GET / HTTP/1.1\r\nHost: LOCALHOST:1\r\nConnection: close\r\n\r\n");
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
      problem(asker.post(path, Asker.FORM, "", header, value), 403);
    }
    for (String path : List.of("/api/trace", "/api/precheck", "/api/next")) {
      problem(asker.post(path, Asker.JSON, "{}", header, value), 403);
    }
  }

  @Test
  void aPostFromOurOwnPageIsTaken() {
    String origin = face.address().toString().replaceFirst("/$", "");
    assertThat(asker.post("/trace", Asker.FORM, "", "Origin", origin).statusCode()).isEqualTo(200);
    assertThat(asker.post("/trace", Asker.FORM, "", "Sec-Fetch-Site", "same-origin").statusCode())
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
    String answer = asker.raw(request);
    assertThat(answer).containsPattern("^HTTP/1.1 (4|5)\\d\\d ");
    assertThat(answer).doesNotContainIgnoringCase("jetty").doesNotContainIgnoringCase("exception");
    assertThat(answer).contains("nosniff");
  }

  @Test
  void tooLongAHeaderIsRefusedAndGuarded() throws IOException {
    String answer =
        asker.raw("GET / HTTP/1.1\r\nHost: localhost\r\nX: " + "x".repeat(20_000) + "\r\n\r\n");
    assertThat(answer).startsWith("HTTP/1.1 431 ").contains("nosniff");
  }

  @Test
  void aRunningAnswerIsFinishedBeforeTheServerStops() throws Exception {
    CountDownLatch running = new CountDownLatch(1);
    TRACER.set(
        Samples.tracing(
            sheet -> {
              running.countDown();
              pause(600);
              return new Traced.Made<>(Samples.everywhere("in time"));
            }));
    WebFace stopping = WebFace.start(current(), "127.0.0.1", 0);
    Asker last = new Asker(stopping.address());
    AtomicReference<HttpResponse<String>> answer = new AtomicReference<>();
    Thread caller = new Thread(() -> answer.set(last.post("/api/trace", Asker.JSON, "{}")));
    caller.start();
    assertThat(running.await(10, TimeUnit.SECONDS)).isTrue();
    stopping.close();
    caller.join(10_000);
    assertThat(answer.get()).isNotNull();
    assertThat(answer.get().statusCode()).isEqualTo(200);
  }

  // Whatever stands in at the time of the question.
  private static Tracer current() {
    return new Tracer() {
      @Override
      public Traced<Report> trace(String sheet) {
        return TRACER.get().trace(sheet);
      }

      @Override
      public Traced<Replied> reply(String sheet, Set<String> passed, Reply reply) {
        return TRACER.get().reply(sheet, passed, reply);
      }

      @Override
      public Traced<Report> precheck(String sheet) {
        return TRACER.get().precheck(sheet);
      }

      @Override
      public Traced<Report.NextBakeSheet> next(String sheet, Wish wish) {
        return TRACER.get().next(sheet, wish);
      }

      @Override
      public RecipeLayout layout(JsonNode sheet) {
        return TRACER.get().layout(sheet);
      }
    };
  }

  private static JsonNode problem(HttpResponse<String> response, int status)
      throws JsonProcessingException {
    assertThat(response.statusCode()).as(response.body()).isEqualTo(status);
    assertThat(response.headers().firstValue("Content-Type"))
        .hasValueSatisfying(type -> assertThat(type).startsWith("application/problem+json"));
    assertGuarded(response);
    JsonNode problem = JSON.readTree(response.body());
    assertThat(problem.path("status").asInt()).isEqualTo(status);
    assertThat(problem.path("title").asText()).isNotEmpty();
    assertThat(problem.path("detail").asText()).isNotEmpty();
    return problem;
  }

  private static void assertGuarded(HttpResponse<String> response) {
    SecurityHeaders.ALL.forEach(
        (name, value) -> {
          if (!name.equals("Cache-Control")) {
            assertThat(response.headers().allValues(name)).as(name).containsExactly(value);
          }
        });
    assertThat(response.headers().firstValue("Server")).isEmpty();
  }

  private static void pause(long millis) {
    try {
      Thread.sleep(millis);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
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
