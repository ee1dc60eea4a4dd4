package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.text.StringEscapeUtils;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page of a report answered, kept and passed on, with the real pipeline behind it. */
class ReportPagesTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Pattern FORM = Pattern.compile("(?s)<form class=\"ask\".*?</form>");
  private static final Pattern LINK = Pattern.compile("href=\"(/trace\\?sheet=[A-Za-z0-9_-]+)\"");

  private static WebFace face;
  private static Asker asker;

  @BeforeAll
  static void serve() {
    face = WholeFace.start();
    asker = new Asker(face.address());
  }

  @AfterAll
  static void stop() {
    face.close();
  }

  @Test
  void an_answer_goes_into_the_sheet_and_moves_the_causes() throws JsonProcessingException {
    Map<String, String> fields = question(traced(), 0);
    fields.put("said", "yes");
    HttpResponse<String> page = asker.postForm("/answer", fields);
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.body()).contains("Your answer moves:").containsPattern("from .*% to .*%");
    Map<String, String> after = question(page.body(), 0);
    assertThat(after.get("about")).isNotEqualTo(fields.get("about"));
    assertThat(after.get("passed")).isEqualTo(fields.get("about"));
    // The sheet has grown by the answer, as if the baker had written it.
    assertThat(JSON.readTree(after.get("sheet")).toString()).contains(fields.get("about"));
    // What was answered is held to while the next one is answered.
    after.put("said", "");
    HttpResponse<String> second = asker.postForm("/answer", after);
    assertThat(second.body()).contains("That question is left open.");
    assertThat(question(second.body(), 0).get("passed").split(","))
        .containsExactlyInAnyOrder(fields.get("about"), after.get("about"));
  }

  @Test
  void an_amount_that_cannot_be_read_comes_back_beside_its_question() {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("sheet", Tour.SHEET);
    fields.put("about", "core temperature");
    fields.put("said", "quite hot");
    HttpResponse<String> page = asker.postForm("/answer", fields);
    assertThat(page.statusCode()).isEqualTo(400);
    assertThat(page.body()).contains("The answer could not be used.").contains("Likely causes");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "sand", "<script>"})
  void a_question_that_nobody_asks_changes_nothing(String about) {
    HttpResponse<String> page =
        asker.postForm("/answer", Map.of("sheet", Tour.SHEET, "about", about, "said", "yes"));
    assertThat(page.statusCode()).isEqualTo(400);
    assertThat(page.body()).contains("There is no such question").doesNotContain("<script>");
  }

  @Test
  void a_link_brings_the_report_again() {
    Matcher link = LINK.matcher(traced());
    assertThat(link.find()).isTrue();
    HttpResponse<String> page = asker.get(link.group(1), "Accept", "text/html");
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.body()).contains("Tin loaf, Tuesday class at the tide mill", "Likely causes");
    assertThat(page.headers().firstValue("Cache-Control")).contains("no-store");
    assertThat(page.headers().firstValue("Referrer-Policy")).contains("no-referrer");
  }

  @Test
  void a_link_to_a_check_before_baking_checks_before_baking() {
    String letters = SheetLink.pack(Tour.SHEET).orElseThrow();
    assertThat(asker.get("/precheck?sheet=" + letters).body()).contains("What may go wrong");
  }

  @Test
  void a_link_that_carries_no_sheet_says_what_is_wrong_with_it() {
    String letters = SheetLink.pack("{\"process\": {\"room\": \"warmish\"}}").orElseThrow();
    HttpResponse<String> page = asker.get("/trace?sheet=" + letters, "Accept", "text/html");
    assertThat(page.statusCode()).isEqualTo(400);
    assertThat(page.body()).contains("process.room").contains("warmish");
    assertThat(asker.get("/trace?sheet=%00", "Accept", "text/html").statusCode()).isEqualTo(400);
    assertThat(asker.get("/trace?sheet=" + "A".repeat(6_500)).statusCode()).isEqualTo(414);
  }

  @Test
  void whoever_comes_without_a_sheet_is_led_to_it() {
    assertThat(asker.get("/trace").statusCode()).isEqualTo(302);
  }

  @Test
  void sheet_and_report_are_saved_as_files() throws JsonProcessingException {
    HttpResponse<String> sheet = asker.postForm("/sheet.json", Map.of("sheet", Tour.SHEET));
    assertThat(JSON.readTree(sheet.body())).isEqualTo(JSON.readTree(Tour.SHEET));
    assertThat(sheet.headers().firstValue("Content-Disposition").orElseThrow())
        .isEqualTo("attachment; filename=\"bake-sheet.json\"");
    HttpResponse<String> data = asker.postForm("/report.json", Map.of("sheet", Tour.SHEET));
    assertThat(JSON.readTree(data.body()).path("causes").size()).isPositive();
    HttpResponse<String> text = asker.postForm("/report.txt", Map.of("sheet", Tour.SHEET));
    assertThat(text.headers().firstValue("Content-Type").orElseThrow()).startsWith("text/plain");
    assertThat(text.body()).startsWith("Tin loaf (white tin loaf)\n====");
    assertThat(asker.postForm("/sheet.json", Map.of("sheet", "[]")).statusCode()).isEqualTo(400);
  }

  @Test
  void numbers_come_in_the_units_of_the_baker() {
    String us = asker.post("/trace?units=us", Asker.FORM, loaf(), "Accept", "text/html").body();
    assertThat(us).contains("°F").contains(" oz</td>");
    assertThat(traced()).doesNotContain(" oz</td>");
  }

  @Test
  void a_rule_is_shown_as_it_is_written_with_what_it_rests_on() {
    assertThat(traced()).contains("as it is written:", "<span>then ", "Rests on: ");
  }

  private static String traced() {
    return asker.post("/trace", Asker.FORM, loaf(), "Accept", "text/html").body();
  }

  private static String loaf() {
    return new Tour("loaf", "/trace", Tour.tinLoaf()).body();
  }

  // What a browser would send from the form of a question, but for the button.
  private static Map<String, String> question(String page, int place) {
    String form = FORM.matcher(page).results().skip(place).findFirst().orElseThrow().group();
    Map<String, String> fields = new LinkedHashMap<>();
    Pattern.compile("<input type=\"hidden\" name=\"(\\w+)\" value=\"([^\"]*)\"")
        .matcher(form)
        .results()
        .forEach(
            field -> fields.put(field.group(1), StringEscapeUtils.unescapeHtml4(field.group(2))));
    return fields;
  }
}
