package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogPlace;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Outcome;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.SomeBakes;
import crumbtrail.bakelog.Sought;
import crumbtrail.bakelog.Verdict;
import crumbtrail.bakelog.store.SqlLogStore;
import java.io.ByteArrayInputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages of a log that one person keeps, asked as a browser asks. */
class LogPagesTest {
  private static final String HOSTILE =
      "\"'></textarea><script>alert(1)</script><img src=x onerror=alert(2)>&";

  @TempDir static Path folder;

  private static LogPlace place;
  private static WebFace face;
  private static Asker asker;

  @BeforeAll
  static void serve() {
    place = LogFace.file(folder);
    face = LogFace.start(place);
    asker = new Asker(face.address());
  }

  @AfterAll
  static void stop() {
    face.close();
  }

  @BeforeEach
  void empty() {
    try (LogStore store = SqlLogStore.open(place)) {
      BakeLog log = store.of(Scope.EVERYTHING);
      log.bakes(0).map(Bake::id).toList().forEach(log::delete);
    }
  }

  @Test
  void a_bake_is_kept_from_its_findings_with_everything_that_was_told() {
    HttpResponse<String> findings = asker.postForm(Tour.tinLoaf());
    assertThat(findings.body())
        .contains("Keep this bake", "value=\"Tin loaf, Tuesday class at the tide mill\"");
    String sheet = carried(findings.body());

    HttpResponse<String> kept =
        asker.postForm(
            "/log",
            Map.of(
                "sheet", sheet,
                "label", "Tuesday",
                "recipe", "Tin loaf",
                "baked", "2026-03-03",
                "note", "new flour\nfrom the mill",
                "outcome", "failed"));

    assertThat(kept.statusCode()).isEqualTo(303);
    assertThat(location(kept)).matches("/log/\\d+\\?done=kept");
    String page = asker.get(location(kept)).body();
    assertThat(page)
        .contains(
            "The bake is in the log.", "<h1>Tuesday</h1>", "3 March 2026", "failed", "new flour")
        .contains("final proof too long", "the top caved in", "6 g fine salt");
    Bake bake = inStore(number(location(kept)));
    assertThat(bake.sheet()).isEqualTo(sheet);
    assertThat(bake.outcome()).isEqualTo(Outcome.FAILED);
    assertThat(bake.traced()).isNotNull();
    assertThat(bake.owner()).isEqualTo(Bake.ONLY_BAKER);
  }

  @Test
  void bad_input_loses_nothing_that_was_typed() {
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put("sheet", Tour.SHEET);
    typed.put("label", "");
    typed.put("recipe", "Tin <loaf>");
    typed.put("baked", "last Tuesday");
    typed.put("note", "the flour was new");
    typed.put("outcome", "fair");

    HttpResponse<String> refused = asker.postForm("/log", typed);

    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body())
        .contains(
            "Give the bake a name.",
            "Write the day as 2026-03-01.",
            "value=\"Tin &lt;loaf>\"",
            "value=\"last Tuesday\"",
            "the flour was new",
            "<option value=\"fair\" selected>",
            "<a href=\"#baked\">");
    assertThat(carried(refused.body())).isEqualTo(Tour.SHEET);
    assertThat(count()).isZero();
  }

  @Test
  void name_recipe_and_day_of_a_kept_bake_can_be_changed() {
    long id = kept("Tuesday", "2026-03-03");
    assertThat(asker.get("/log/" + id).body())
        .contains("name=\"label\" type=\"text\" value=\"Tuesday\"", "value=\"2026-03-03\"");
    Bake before = inStore(id);
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put("label", "Wednesday <tin>");
    typed.put("recipe", "Another loaf");
    typed.put("baked", "2026-03-04");
    typed.put("note", "moved");

    assertThat(asker.postForm("/log/" + id, typed).statusCode()).isEqualTo(303);

    Bake after = inStore(id);
    assertThat(after.label()).isEqualTo("Wednesday <tin>");
    assertThat(after.recipe()).isEqualTo("Another loaf");
    assertThat(after.baked().toLocalDate()).isEqualTo("2026-03-04");
    assertThat(after.sheet()).isEqualTo(before.sheet());
    assertThat(after.traced()).isEqualTo(before.traced());
    assertThat(asker.get("/log/" + id).body()).contains("<h1>Wednesday &lt;tin&gt;</h1>");

    // The same day again keeps the time of the day.
    assertThat(asker.postForm("/log/" + id, typed).statusCode()).isEqualTo(303);
    assertThat(inStore(id).baked()).isEqualTo(after.baked());

    typed.put("label", " ");
    typed.put("baked", "soon");
    HttpResponse<String> refused = asker.postForm("/log/" + id, typed);
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body())
        .contains(
            "Give the bake a name.",
            "<a href=\"#baked\">",
            "value=\"soon\"",
            "<details class=\"called\" open>",
            "<h1>Wednesday &lt;tin&gt;</h1>");
    assertThat(inStore(id)).isEqualTo(after);
  }

  @Test
  void notes_may_be_as_long_as_the_log_keeps_them_and_no_longer() {
    long id = kept("Tuesday", "2026-03-03");
    String longest = "ö".repeat(Bake.LONGEST_NOTE);
    assertThat(asker.postForm("/log/" + id, Map.of("note", longest)).statusCode()).isEqualTo(303);
    assertThat(inStore(id).note()).isEqualTo(longest);

    HttpResponse<String> refused =
        asker.postForm("/log/" + id, Map.of("note", longest + "!", "outcome", "good"));

    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body())
        .contains("At most 20,000 characters are kept.", longest + "!", "good\" selected");
    assertThat(inStore(id).note()).isEqualTo(longest);
    assertThat(asker.postForm("/log/" + id, Map.of("note", "x".repeat(500_000))).statusCode())
        .isEqualTo(413);
  }

  @Test
  void what_was_found_out_is_noted_and_can_be_taken_back() {
    long id = kept("Tuesday", "2026-03-03");
    String causes = "/log/" + id + "/causes";
    asker.postForm(
        causes,
        Map.of(
            "cause-over-proofed", "yes",
            "cause-salt-too-low", "no",
            "cause-moon-phase", "yes",
            "other", "oven-too-hot",
            "other-said", "no"));
    assertThat(inStore(id).verdicts())
        .containsOnly(
            Map.entry("over-proofed", Verdict.CONFIRMED),
            Map.entry("salt-too-low", Verdict.RULED_OUT),
            Map.entry("oven-too-hot", Verdict.RULED_OUT));
    assertThat(asker.get("/log").body()).contains("Confirmed: final proof too long");

    asker.postForm(causes, Map.of("cause-over-proofed", "", "cause-oven-too-hot", ""));

    assertThat(inStore(id).verdicts()).containsOnlyKeys("salt-too-low");
  }

  @Test
  void the_list_is_searched_and_leafed_through() {
    for (int day = 1; day <= 28; day++) {
      kept("Loaf " + day, "2026-02-%02d".formatted(day));
    }
    String first = asker.get("/log").body();
    assertThat(labels(first)).hasSize(LogRoutes.MOST).startsWith("Loaf 28");
    Matcher older = Pattern.compile("<a href=\"([^\"]+)\" rel=\"next\"").matcher(first);
    assertThat(older.find()).isTrue();
    String second = asker.get(older.group(1).replace("&amp;", "&")).body();
    assertThat(labels(second)).containsExactly("Loaf 3", "Loaf 2", "Loaf 1");

    assertThat(labels(asker.get("/log?words=loaf+17").body())).containsExactly("Loaf 17");
    assertThat(labels(asker.get("/log?since=2026-02-10&until=2026-02-11").body()))
        .containsExactly("Loaf 11", "Loaf 10");
    assertThat(labels(asker.get("/log?recipe=tin+loaf&cause=over-proofed&words=9").body()))
        .containsExactly("Loaf 9");
    assertThat(asker.get("/log?words=bagel").body()).contains("No bake in the log is like that.");
    HttpResponse<String> faulty = asker.get("/log?since=soon&words=loaf");
    assertThat(faulty.statusCode()).isEqualTo(400);
    assertThat(faulty.body()).contains("value=\"soon\"", "Write the day as 2026-03-01.");
  }

  @Test
  void the_findings_of_a_kept_bake_can_be_opened_again() {
    long id = kept("Tuesday", "2026-03-03");
    HttpResponse<String> findings = asker.get("/log/" + id + "/findings");
    assertThat(findings.statusCode()).isEqualTo(200);
    assertThat(findings.body())
        .contains("Likely causes", "final proof too long", "<a href=\"/log/" + id + "\">")
        .doesNotContain("Put it into the log");
  }

  @Test
  void a_bake_is_deleted_after_a_question() {
    long id = kept("Tuesday", "2026-03-03");
    String question = asker.get("/log/" + id + "/delete").body();
    assertThat(question).contains("Delete this bake for good?", "Tuesday");
    assertThat(count()).isEqualTo(1);

    HttpResponse<String> deleted = asker.postForm("/log/" + id + "/delete", Map.of());

    assertThat(location(deleted)).isEqualTo("/log?done=deleted");
    assertThat(asker.get("/log/" + id).statusCode()).isEqualTo(404);
    assertThat(count()).isZero();
  }

  @Test
  void a_photo_comes_in_made_safe_is_shown_and_goes() throws Exception {
    long id = kept("Tuesday", "2026-03-03");
    URI photos = face.address().resolve("/log/" + id + "/photos");
    byte[] file = SomeBakes.picture(40, 30, "jpeg");

    HttpResponse<String> added = LogFace.upload(photos, Map.of(), file);

    assertThat(location(added)).isEqualTo("/log/" + id + "?done=photo#photos");
    String photo = "/log/photos/" + inStore(id).photos().get(0).id();
    assertThat(asker.get("/log/" + id).body())
        .contains("<img src=\"" + photo + "\"", "width=\"40\"", "alt=\"Photo 1 of Tuesday\"");
    HttpResponse<byte[]> shown =
        HttpClient.newHttpClient()
            .send(
                HttpRequest.newBuilder(face.address().resolve(photo)).build(),
                BodyHandlers.ofByteArray());
    assertThat(shown.headers().firstValue("Content-Type")).contains("image/jpeg");
    assertThat(shown.body()).isNotEqualTo(file).startsWith(0xFF, 0xD8);

    asker.postForm(photo.replace("/log", "/log/" + id) + "/delete", Map.of());
    assertThat(asker.get(photo).statusCode()).isEqualTo(404);
  }

  @Test
  void what_is_no_photo_or_too_large_is_refused_in_words() throws Exception {
    long id = kept("Tuesday", "2026-03-03");
    URI photos = face.address().resolve("/log/" + id + "/photos");
    HttpResponse<String> text =
        LogFace.upload(photos, Map.of(), "<svg onload=alert(1)>".getBytes(StandardCharsets.UTF_8));
    assertThat(text.statusCode()).isEqualTo(400);
    assertThat(text.body()).contains("cannot be kept as a photo").doesNotContain("onload");
    byte[] large = new byte[26_000_000];
    new Random(7).nextBytes(large);
    HttpResponse<String> tooLarge = LogFace.upload(photos, Map.of(), large);
    assertThat(tooLarge.statusCode()).isEqualTo(413);
    assertThat(tooLarge.body()).contains("over 25 MB");
    assertThat(asker.post("/log/" + id + "/photos", Asker.FORM, "photo=x").statusCode())
        .isEqualTo(415);
    assertThat(inStore(id).photos()).isEmpty();
  }

  @Test
  void everything_can_be_taken_along() throws Exception {
    kept("Tuesday", "2026-03-03");
    HttpResponse<byte[]> file =
        HttpClient.newHttpClient()
            .send(
                HttpRequest.newBuilder(face.address().resolve("/log/bakes.zip")).build(),
                BodyHandlers.ofByteArray());
    assertThat(file.headers().firstValue("Content-Type")).contains("application/zip");
    String bakes = "";
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file.body()))) {
      for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        if (entry.getName().equals("bakes.jsonl")) {
          bakes = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
        }
      }
    }
    assertThat(bakes).contains("\"label\":\"Tuesday\"");
  }

  @Test
  void hostile_text_in_every_field_stays_text() {
    HttpResponse<String> kept =
        asker.postForm(
            "/log",
            Map.of(
                "sheet",
                "{\"title\": \"<script>\", \"seen\": [\"<img src=x onerror=alert(1)>\"],"
                    + " \"formula\": [\"500 g <script>flour\"]}",
                "label",
                HOSTILE,
                "recipe",
                HOSTILE,
                "baked",
                "2026-03-03",
                "note",
                HOSTILE,
                "outcome",
                HOSTILE));
    String at = location(kept).replaceFirst("\\?.*", "");
    for (String path :
        List.of(
            at,
            "/log",
            at + "/delete",
            at + "/findings",
            "/log?words=" + encoded() + "&recipe=" + encoded() + "&cause=" + encoded(),
            "/log?since=" + encoded(),
            "/log?after=" + encoded(),
            "/log?done=" + encoded())) {
      assertThat(asker.get(path).body())
          .as(path)
          .doesNotContain("<script>", "<img src=x", "\"'>", "</textarea><");
    }
    assertThat(asker.get("/log?of=" + encoded()).statusCode()).isEqualTo(404);
  }

  @ParameterizedTest
  @CsvSource({
    "/log/70000, 404",
    "/log/x, 404",
    "/log/0, 404",
    "/log/-1, 404",
    "/log/99999999999999999999, 404",
    "/log/70000/findings, 404",
    "/log/70000/delete, 404",
    "/log/photos/70000, 404",
    "/log?of=all, 403",
    "/log?of=3, 404",
    "/log?after=nonsense, 200"
  })
  void what_is_not_there_is_said(String path, int status) {
    HttpResponse<String> answer = asker.get(path, "Accept", "text/html");
    assertThat(answer.statusCode()).isEqualTo(status);
    StoodIn.assertGuarded(answer);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"/log", "/log/1", "/log/1/causes", "/log/1/delete", "/log/1/photos/1/delete"})
  void a_post_from_a_foreign_page_or_of_another_kind_is_refused(String path) {
    kept("Tuesday", "2026-03-03");
    assertThat(asker.post(path, Asker.FORM, "", "Origin", "http://evil.example").statusCode())
        .isEqualTo(403);
    assertThat(asker.post(path, "text/plain", "a=b").statusCode()).isEqualTo(415);
    assertThat(count()).isEqualTo(1);
  }

  @Test
  void a_log_that_cannot_be_opened_is_told_of_and_tried_again() throws Exception {
    Path file = Files.createDirectory(folder.resolve("other.mv.db"));
    LogPlace other = LogPlace.of(folder.resolve("other").toString(), Map.of());
    try (WebFace second =
        LogFace.bare(LogServing.own(new LogDoor(() -> SqlLogStore.open(other))))) {
      Asker late = new Asker(second.address());
      HttpResponse<String> broken = late.get("/log", "Accept", "text/html");
      assertThat(broken.statusCode()).isEqualTo(503);
      assertThat(broken.body()).contains("The bake log", "other.mv.db").doesNotContain("Exception");
      assertThat(late.get("/").statusCode()).isEqualTo(200);

      Files.delete(file);

      assertThat(late.get("/log").statusCode()).isEqualTo(200);
    }
  }

  @Test
  void a_server_without_a_log_says_so() {
    try (WebFace bare = LogFace.without()) {
      Asker other = new Asker(bare.address());
      assertThat(other.get("/log").body()).contains("This server keeps no log.");
      assertThat(other.postForm(Tour.tinLoaf()).body()).doesNotContain("Keep this bake");
      assertThat(other.postForm("/log", Map.of()).statusCode()).isEqualTo(405);
    }
  }

  private long kept(String label, String day) {
    return number(
        location(
            asker.postForm(
                "/log",
                Map.of("sheet", Tour.SHEET, "label", label, "recipe", "Tin loaf", "baked", day))));
  }

  private static long number(String address) {
    return Long.parseLong(address.replaceAll("\\D", ""));
  }

  private Bake inStore(long id) {
    try (LogStore store = SqlLogStore.open(place)) {
      return store.of(Scope.ONLY_BAKER).find(id).orElseThrow();
    }
  }

  private int count() {
    try (LogStore store = SqlLogStore.open(place)) {
      return store.of(Scope.EVERYTHING).list(Sought.ALL, 50, null).lines().size();
    }
  }

  private static String location(HttpResponse<String> answer) {
    return answer.headers().firstValue("Location").orElseThrow();
  }

  private static List<String> labels(String page) {
    return Pattern.compile("<h2><a href=\"/log/\\d+\">([^<]*)</a></h2>")
        .matcher(page)
        .results()
        .map(one -> one.group(1))
        .toList();
  }

  /** The sheet that a form carries along. */
  static String carried(String page) {
    Matcher field =
        Pattern.compile("action=\"/log\".*?name=\"sheet\" value=\"([^\"]*)\"", Pattern.DOTALL)
            .matcher(page);
    assertThat(field.find()).isTrue();
    return field
        .group(1)
        .replace("&#34;", "\"")
        .replace("&#39;", "'")
        .replace("&lt;", "<")
        .replace("&amp;", "&");
  }

  private static String encoded() {
    return java.net.URLEncoder.encode(HOSTILE, StandardCharsets.UTF_8);
  }
}
