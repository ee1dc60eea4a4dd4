package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.rules.RuleBook;
import java.net.http.HttpResponse;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The handbook on the pages. */
class LeafPagesTest {
  private static final Pattern LINK =
      Pattern.compile("<a (?:class=\"[a-z ]*\" )?href=\"(/[^\"#]*)");

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
  void a_cause_stands_on_its_page_with_pictures_signs_and_sources() {
    HttpResponse<String> page = asker.get("/causes/over-proofed");
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.body())
        .contains("<h1>Final proof too long</h1>")
        .contains("Prove it to yourself with a small bake")
        .contains("<a href=\"/signs/collapsed-top\">top sunk or loaf collapsed</a>")
        .contains("<em>firmly</em>")
        .contains("<svg")
        .contains("<ol class=\"cited\">")
        .doesNotContain(".md")
        .doesNotContain("](");
  }

  @Test
  void a_cause_that_the_course_teaches_leads_to_its_lesson() {
    assertThat(asker.get("/causes/over-proofed").body())
        .contains("<a href=\"/lessons/8\">Lesson 8: The final proof, bursts and craters</a>");
    assertThat(asker.get("/causes/scoring-fault").body()).doesNotContain("href=\"/lessons/");
  }

  @Test
  void a_sign_stands_on_its_page_with_its_picture() {
    assertThat(asker.get("/signs/pale-crust").body())
        .contains("<h1>Crust too pale</h1>")
        .contains("<figure class=\"drawn\">")
        .contains("<svg")
        .contains("What would tell the likeliest apart");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/causes/sand", "/signs/sand", "/stages/sand", "/causes/..%2Fabout"})
  void what_the_handbook_does_not_hold_is_not_found(String path) {
    HttpResponse<String> page = asker.get(path, "Accept", "text/html");
    assertThat(page.statusCode()).isIn(400, 404);
    // The links to other languages lead to the same address; nothing else repeats it.
    assertThat(page.body().replaceAll("href=\"[^\"]*\"", "")).doesNotContain("sand");
  }

  @ParameterizedTest
  @CsvSource({
    "/handbook, Signs by place",
    "/handbook/matrix, Which signs go with which causes",
    "/causes, Final proof too long",
    "/stages/proof, Causes: proof"
  })
  void the_ways_in_are_there(String path, String words) {
    assertThat(asker.get(path).body()).containsIgnoringCase(words);
  }

  @Test
  void the_matrix_is_there_as_a_sheet() {
    HttpResponse<String> sheet = asker.get("/handbook/matrix.csv");
    assertThat(sheet.headers().firstValue("Content-Type").orElseThrow()).startsWith("text/csv");
    assertThat(sheet.body()).startsWith("sign,").contains("\npale-crust,");
  }

  // From the front page every leaf can be reached, and no link leads to nothing.
  @Test
  void every_link_leads_to_a_page() {
    Map<String, Integer> seen = new LinkedHashMap<>();
    Deque<String> open = new ArrayDeque<>();
    open.add("/handbook");
    while (!open.isEmpty()) {
      String path = open.poll();
      HttpResponse<String> page = asker.get(path);
      seen.put(path, page.statusCode());
      if (path.matches("/(handbook|causes|signs|stages).*")) {
        LINK.matcher(page.body())
            .results()
            .map(link -> link.group(1))
            // The same page in another language is the same leaf.
            .filter(link -> !link.contains("lang="))
            .filter(link -> !seen.containsKey(link) && !open.contains(link))
            .forEach(open::add);
      }
    }
    assertThat(seen).allSatisfy((path, status) -> assertThat(status).as(path).isIn(200, 302));
    assertThat(seen.keySet().stream().filter(path -> path.startsWith("/causes/")))
        .hasSize(RuleBook.bundled().catalogue().knowledge().causes().size());
  }
}
