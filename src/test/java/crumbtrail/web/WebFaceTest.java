package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.sheet.Problem;
import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The server as browsers and programs meet it, with stand-ins for the pipeline. */
class WebFaceTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String HOSTILE =
      "\"'><script>alert(1)</script><img src=x onerror=alert(2)>&";

  @RegisterExtension static final StoodIn face = new StoodIn();

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
    HttpResponse<String> response = face.asker().get(path);
    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(response.headers().firstValue("Content-Type").orElseThrow()).startsWith(type);
    StoodIn.assertGuarded(response);
  }

  @Test
  void theFormBecomesASheetAndThenAReport() throws JsonProcessingException {
    AtomicReference<String> sheet = new AtomicReference<>("");
    face.made(
        Samples.tracing(
            json -> {
              sheet.set(json);
              return new Traced.Made<>(Samples.failed("went flat"));
            }));
    HttpResponse<String> response =
        face.asker().postForm(Map.of("seen", "flat loaf", "recipe", "500 g flour", "room", "21 C"));
    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(response.body())
        .contains("Likely causes", "What to change", "went flat", "2 further causes");
    assertThat(JSON.readTree(sheet.get()))
        .isEqualTo(
            JSON.readTree(
                "{\"seen\":[\"flat loaf\"],\"recipe\":\"500 g flour\","
                    + "\"process\":{\"room\":\"21 C\"}}"));
    StoodIn.assertGuarded(response);
  }

  @Test
  void aReportThatSaysNothingIsStillAPage() {
    face.made(Samples.making(Samples.empty()));
    HttpResponse<String> response = face.asker().postForm(Map.of("seen", "flat loaf"));
    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(response.body()).contains("Nothing on this sheet points to a cause yet");
  }

  @Test
  void aRefusedFormComesBackAsTypedWithEachFaultBesideItsField() {
    face.made(
        Samples.refusing(
            new Problem("process.room", "warmish is no temperature", "write 21 C or 70 F"),
            new Problem("knownCauses", "This is of no use here.", "")));
    HttpResponse<String> response = face.asker().postForm(Map.of("room", "warmish", "lid", "no"));
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
    StoodIn.assertGuarded(response);
  }

  @Test
  void theLibraryOfThePageIsOursToServeAndMayBeKept() {
    Matcher script =
        Pattern.compile("src=\"(/assets/htmx-[^\"]+)\"").matcher(face.asker().get("/").body());
    assertThat(script.find()).isTrue();
    HttpResponse<String> library = face.asker().get(script.group(1));
    assertThat(library.statusCode()).isEqualTo(200);
    assertThat(library.headers().firstValue("Content-Type").orElseThrow())
        .startsWith("text/javascript");
    assertThat(library.headers().firstValue("Cache-Control").orElseThrow()).contains("immutable");
    assertThat(library.body()).contains("htmx");
    StoodIn.assertGuarded(library);
  }

  @Test
  void aLayoutIsAPanelForAScriptAndTheWholeFormForAButton() {
    String body = "recipe=500+g+flour&seen=flat&sign-pale-crust=saw";
    HttpResponse<String> panel =
        face.asker().post("/layout", Asker.FORM, body, "HX-Request", "true");
    assertThat(panel.statusCode()).isEqualTo(200);
    assertThat(panel.body()).contains("data-said").doesNotContain("<html", "<form");
    StoodIn.assertGuarded(panel);
    HttpResponse<String> form = face.asker().post("/layout", Asker.FORM, body);
    assertThat(form.statusCode()).isEqualTo(200);
    assertThat(form.body()).contains("<form", "500 g flour</textarea>", "data-draft=\"sent\"");
    StoodIn.assertGuarded(form);
  }

  @Test
  void unitsComeWithTheAddressAndAreRememberedByOneHarmlessCookie() {
    HttpResponse<String> chosen = face.asker().get("/?units=us");
    assertThat(chosen.body()).contains("70 F");
    assertThat(chosen.headers().firstValue("Set-Cookie").orElseThrow())
        .contains("units=us", "SameSite=Lax", "HttpOnly");
    assertThat(face.asker().get("/", "Cookie", "units=us").body()).contains("70 F");
    assertThat(face.asker().get("/", "Cookie", "units=furlongs").body()).contains("21 C");
    assertThat(face.asker().get("/").headers().firstValue("Set-Cookie")).isEmpty();
  }

  @Test
  void anEmptyFormIsToldWhatToSay() {
    face.made(Samples.refusing(new Problem("", "neither formula nor seen", "write JSON")));
    HttpResponse<String> response = face.asker().postForm(Map.of("room", "21 C"));
    assertThat(response.body())
        .contains("<a href=\"#seen\">", "There is nothing to go on yet.")
        .doesNotContain("JSON");
  }

  @Test
  void theInterfaceForProgramsAnswersWithTheReport() throws JsonProcessingException {
    HttpResponse<String> response =
        face.asker().post("/api/trace", "application/json; charset=UTF-8", "{}");
    assertThat(response.statusCode()).isEqualTo(200);
    JsonNode report = JSON.readTree(response.body());
    assertThat(report.at("/causes/0/probability").asDouble()).isEqualTo(0.83);
    assertThat(report.at("/formula/hydration/allWater").asDouble()).isEqualTo(63.1);
    StoodIn.assertGuarded(response);
  }

  @Test
  void markupInAnyFieldComesBackAsText() {
    face.made(Samples.refusing(new Problem("recipe", HOSTILE, HOSTILE)));
    Map<String, String> typed = new HashMap<>();
    FormLayout.ALL.forEach(field -> typed.put(field.name(), HOSTILE + field.name()));
    HttpResponse<String> refused = face.asker().postForm(typed);
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body()).doesNotContain("<script>", "<img", "\"'>");
    for (FormField field : FormLayout.ALL) {
      if (field.kind() != FormField.Kind.YES_NO) {
        assertThat(refused.body())
            .containsPattern("&lt;script(&gt;|>).{0,100}&amp;" + field.name());
      }
    }

    face.made(Samples.making(Samples.everywhere(HOSTILE)));
    HttpResponse<String> made = face.asker().postForm(typed);
    assertThat(made.statusCode()).isEqualTo(200);
    assertThat(made.body()).contains("&lt;script&gt;").doesNotContain("<script", "<img", "\"'>");

    face.made(Samples.making(Samples.failed(HOSTILE)));
    HttpResponse<String> failed = face.asker().postForm(typed);
    assertThat(failed.body()).contains("&lt;script&gt;").doesNotContain("<script", "<img", "\"'>");
  }

  @Test
  void aRunningAnswerIsFinishedBeforeTheServerStops() throws Exception {
    CountDownLatch running = new CountDownLatch(1);
    face.made(
        Samples.tracing(
            sheet -> {
              running.countDown();
              pause(600);
              return new Traced.Made<>(Samples.everywhere("in time"));
            }));
    WebFace stopping = WebFace.start(face.tracer(), "127.0.0.1", 0);
    Asker last = new Asker(stopping.address());
    AtomicReference<HttpResponse<String>> answer = new AtomicReference<>();
    Thread caller = new Thread(() -> answer.set(last.post("/api/trace", Asker.JSON, "{}")));
    caller.start();
    assertThat(running.await(60, TimeUnit.SECONDS)).isTrue();
    stopping.close();
    caller.join(60_000);
    assertThat(answer.get()).isNotNull();
    assertThat(answer.get().statusCode()).isEqualTo(200);
  }

  private static void pause(long millis) {
    try {
      Thread.sleep(millis);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
