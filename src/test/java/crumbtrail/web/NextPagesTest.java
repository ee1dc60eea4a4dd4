package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.sheet.Problem;
import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The next bake and the check before baking, as pages, files and answers. */
class NextPagesTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String HOSTILE =
      "\"'><script>alert(1)</script><img src=x onerror=alert(2)>&";

  @RegisterExtension static final StoodIn face = new StoodIn();

  @Test
  void markupInTheNextBakeComesBackAsText() {
    face.made(Samples.making(Samples.everywhere(HOSTILE)));
    Map<String, String> typed = new HashMap<>();
    typed.put(WishForm.SHEET, HOSTILE);
    HttpResponse<String> made = face.asker().postForm("/next", typed);
    assertThat(made.statusCode()).isEqualTo(200);
    assertThat(made.body().replace("<script src=\"/assets/paper.js\" defer></script>", ""))
        .contains("&lt;script&gt;")
        .doesNotContain("<script", "<img", "\"'>");

    WishForm.blank("", Texts.english()).fields().forEach(field -> typed.put(field.name(), HOSTILE));
    HttpResponse<String> refused = face.asker().postForm("/next", typed);
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body()).contains("&lt;script").doesNotContain("<script", "<img", "\"'>");
    StoodIn.assertGuarded(refused);
  }

  @Test
  void theSheetTravelsFromTheFormIntoTheNextBake() {
    AtomicReference<String> sheet = new AtomicReference<>("");
    HttpResponse<String> report =
        face.asker()
            .postForm("/trace", Map.of("seen", "it \"fell\" <flat>", "recipe", "500 g flour"));
    Matcher carried = Pattern.compile("name=\"sheet\" value=\"([^\"]*)\"").matcher(report.body());
    assertThat(carried.find()).isTrue();
    String value = carried.group(1).replace("&#34;", "\"").replace("&lt;", "<");
    assertThat(value)
        .isEqualTo("{\"seen\":[\"it \\\"fell\\\" <flat>\"],\"recipe\":\"500 g flour\"}");
    face.made(
        Samples.tracing(
            json -> {
              sheet.set(json);
              return new Traced.Made<>(Samples.everywhere("next"));
            }));
    face.asker().postForm("/next", Map.of("sheet", value));
    assertThat(sheet.get()).isEqualTo(value);
  }

  @Test
  void aCheckBeforeBakingHasItsOwnHeadingsAndCarriesNoSigns() {
    HttpResponse<String> response =
        face.asker().postForm("/precheck", Map.of("seen", "flat loaf", "recipe", "500 g flour"));
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
    StoodIn.assertGuarded(response);
  }

  @Test
  void theNextBakeIsAPageAFileAndAnAnswer() throws JsonProcessingException {
    Map<String, String> fields =
        Map.of("sheet", "{}", "start", "9:00", "overnight", "12 h", "one", "yes");
    HttpResponse<String> page = face.asker().postForm("/next", fields);
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.body())
        .contains("What is different", "value=\"9:00\"", "value=\"12 h\"", "checked");
    StoodIn.assertGuarded(page);

    HttpResponse<String> file = face.asker().postForm("/next.json", fields);
    assertThat(file.headers().firstValue("Content-Disposition"))
        .contains("attachment; filename=\"next-bake.json\"");
    assertThat(JSON.readTree(file.body()).path("title").asText()).isEqualTo("plain words");
    StoodIn.assertGuarded(file);

    JsonNode answer =
        JSON.readTree(face.asker().post("/api/next?start=9:00&one=yes", Asker.JSON, "{}").body());
    assertThat(answer.at("/sheet/title").asText()).isEqualTo("plain words");
  }

  @Test
  void wishesThatCannotBeReadAreToldBesideTheirFields() throws JsonProcessingException {
    Map<String, String> fields = Map.of("sheet", "{}", "start", "26:00", "dough", "a lot");
    for (String path : List.of("/next", "/next.json")) {
      HttpResponse<String> page = face.asker().postForm(path, fields);
      assertThat(page.statusCode()).isEqualTo(400);
      assertThat(page.body())
          .contains("<a href=\"#wish-start\">", "<a href=\"#wish-dough\">", "value=\"a lot\"");
      assertThat(page.body()).containsPattern("id=\"wish-dough\"[^>]*aria-invalid=\"true\"");
    }
    JsonNode problem =
        StoodIn.problem(face.asker().post("/api/next?dough=lots", Asker.JSON, "{}"), 400);
    assertThat(problem.path("detail").asText()).contains("dough").contains("900 g");
    face.made(Samples.refusing(new Problem("formula[0]", "no amount", "say how much")));
    StoodIn.problem(face.asker().post("/api/next", Asker.JSON, "{}"), 400);
    HttpResponse<String> refused = face.asker().postForm("/next", Map.of("sheet", "{}"));
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body()).contains("No amount: say how much.");
  }
}
