package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogPlace;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Outcome;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.Verdict;
import crumbtrail.bakelog.store.SqlLogStore;
import crumbtrail.report.JsonReport;
import crumbtrail.report.PostMortem;
import crumbtrail.report.Report;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.SheetReader;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages that study a log: nine good loaves and a failed one, and a failed one of no recipe. */
class StudyPagesTest {
  private static final LocalDateTime FIRST = LocalDateTime.of(2026, 3, 1, 9, 0);
  private static final int GOOD = 9;

  @TempDir static Path folder;

  private static WebFace face;
  private static Asker asker;

  @BeforeAll
  static void serve() throws IOException {
    LogPlace place = LogFace.file(folder);
    PostMortem postMortem = new PostMortem(RuleBase.bundled());
    String good = Files.readString(Path.of("cases", "healthy-tin-loaf.json"));
    String failed = Files.readString(Path.of("cases", "over-proofed-tin-loaf.json"));
    try (LogStore store = SqlLogStore.open(place)) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      crumbtrail.bakelog.Traced well = traced(postMortem, good);
      for (int day = 0; day < GOOD; day++) {
        log.add(
            Bake.of(FIRST.plusDays(day), "Loaf " + day, "Tin loaf", good)
                .withOutcome(Outcome.GOOD)
                .withTraced(well));
      }
      crumbtrail.bakelog.Traced badly = traced(postMortem, failed);
      for (String recipe : new String[] {"Tin loaf", ""}) {
        log.add(
            Bake.of(FIRST.plusDays(GOOD), "Forgotten <loaf>", recipe, failed)
                .withOutcome(Outcome.FAILED)
                .withTraced(badly)
                .withVerdicts(Map.of("over-proofed", Verdict.CONFIRMED)));
      }
    }
    face = LogFace.start(place);
    asker = new Asker(face.address());
  }

  private static crumbtrail.bakelog.Traced traced(PostMortem postMortem, String sheet) {
    Report report = postMortem.trace(SheetReader.read(sheet).sheet().orElseThrow());
    return new crumbtrail.bakelog.Traced(JsonReport.line(report), report.ruleBase());
  }

  @AfterAll
  static void stop() {
    face.close();
  }

  @Test
  void the_log_leads_to_what_it_teaches_with_charts_tables_causes_and_lessons() {
    assertThat(asker.get("/log").body()).contains("<a href=\"/log/study\">");

    String page = asker.get("/log/study?recipe=tin+loaf").body();

    assertThat(page)
        .contains("The latest 10 bakes; of 1 a cause was confirmed.")
        .contains("<h2 id=\"chart-proof-ripeness\">", "class=\"picture wide\"")
        .contains("<th scope=\"col\">Out of the usual</th>", "<td>yes</td>")
        .contains("final proof too long: in one bake")
        .contains("<a href=\"/lessons/8\">", "confirmed in 1 of 1 judged bakes")
        .contains("Of 2 judged bakes, the first cause was right in 2");
  }

  @Test
  void what_changed_since_it_last_worked_is_told_on_a_page() {
    assertThat(asker.get("/log/10").body())
        .contains("<a class=\"button second\" href=\"/log/10/since\">");

    String page = asker.get("/log/10/since").body();

    assertThat(page)
        .contains("Forgotten &lt;loaf", "<a href=\"/log/9\">Loaf 8</a>, 9 March 2026")
        .containsSubsequence("What can explain the change", "final proof, time: 60 min → 3 h")
        .contains("Risk of final proof too long: ")
        .doesNotContain("<loaf>");
    assertThat(asker.get("/log/10/compare?better=3").body())
        .contains("<a href=\"/log/3\">Loaf 2</a>");
  }

  @Test
  void where_it_never_worked_that_is_said() {
    for (int bake : new int[] {1, 11}) {
      HttpResponse<String> answer = asker.get("/log/" + bake + "/since");
      assertThat(answer.statusCode()).isEqualTo(200);
      assertThat(answer.body()).contains("No earlier bake of this recipe is noted as good.");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "/log/10/compare, 400",
    "/log/10/compare?better=x, 400",
    "/log/10/compare?better=99, 404",
    "/log/99/since, 404",
    "/log/study?of=7, 404",
    "/log/study?recipe=%3Cscript%3E, 200"
  })
  void what_cannot_be_shown_is_said(String path, int status) {
    HttpResponse<String> answer = asker.get(path);
    assertThat(answer.statusCode()).isEqualTo(status);
    assertThat(answer.body()).doesNotContain("<script>").isNotBlank();
  }

  @Test
  void the_pages_speak_german() {
    assertThat(asker.get("/log/study?lang=de").body())
        .contains("Was das Backbuch lehrt", "Teigtemperatur");
    assertThat(asker.get("/log/10/since?lang=de").body())
        .contains("Was die Änderung erklären kann");
  }
}
