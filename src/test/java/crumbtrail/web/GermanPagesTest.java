package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.api.Shelf;
import crumbtrail.handbook.CauseCards;
import crumbtrail.handbook.Leaves;
import crumbtrail.lessons.School;
import crumbtrail.picture.LoafPictures;
import crumbtrail.report.PostMortem;
import crumbtrail.rules.RuleBase;
import crumbtrail.rules.RuleBook;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.ResourceBundle;
import java.util.ResourceBundle.Control;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages in German, asked as a browser asks. */
class GermanPagesTest {
  private static final String SHEET =
      "recipe=0,5+kg+bread+flour,+12,5+%25+protein%0A310+g+water%0A3,5+g+salt%0A5+g+instant+yeast"
          + "&seen=pale+crust&bulk-0-time=60+min&bulk-0-temperature=24,5+C"
          + "&bake-0-time=25+min&bake-0-oven=210+C";

  private static WebFace face;
  private static Asker asker;

  @BeforeAll
  static void serve() {
    PostMortem postMortem = new PostMortem(RuleBase.bundled());
    RuleBook book = RuleBook.bundled();
    face =
        WebFace.start(
            new PostMortemTracer(postMortem),
            School.of(postMortem.rules()),
            new Shelf(book.catalogue(), new CauseCards(book), "test"),
            new Leaves(book),
            LoafPictures.of(book.catalogue()),
            "127.0.0.1",
            0);
    asker = new Asker(face.address());
  }

  @AfterAll
  static void stop() {
    face.close();
  }

  static List<HttpResponse<String>> pages() {
    return List.of(
        german("/"),
        german("/about"),
        german("/vary?turn=salt&range=0..4%25"),
        german("/vary?turn=oven&range=160..240C&second=bake-time&secondRange=10..40min"),
        german("/lessons"),
        german("/lessons/1"),
        german("/mystery?level=easy&seed=7"),
        german("/mystery?level=easy&seed=7&asked=&named=give-up"),
        german("/handbook"),
        german("/there-is-none"),
        sent("/trace", SHEET),
        sent("/precheck", SHEET),
        sent("/trace", "title=x"),
        sent("/trace", "recipe=500+furlongs+flour&bulk-0-time=nine"),
        sent("/layout", SHEET),
        sent("/next", "sheet=%7B%7D&start=never&dough=lots"));
  }

  @ParameterizedTest
  @MethodSource("pages")
  void a_german_page_speaks_german(HttpResponse<String> page) {
    assertThat(page.body()).contains("<html lang=\"de\">").contains("Zum Inhalt springen");
    assertThat(page.headers().firstValue("Content-Language")).contains("de");
    assertThat(page.headers().firstValue("Vary").orElse(""))
        .contains("Accept-Encoding", "Accept-Language", "Cookie");
    assertThat(englishWords(page.body())).isEmpty();
  }

  @Test
  void names_and_numbers_are_german_and_explanations_say_that_they_are_not() {
    String report = sent("/trace", SHEET).body();
    assertThat(report)
        .contains("zu wenig Salz")
        .contains("Kruste zu blass")
        .contains("0,7\u202f%")
        .contains("Erklärungen stehen noch auf Englisch.")
        .containsPattern("<p lang=\"en\">[A-Z]")
        .doesNotContain("too little salt</h3>");
  }

  @Test
  void a_name_that_german_lacks_is_marked_as_english() {
    assertThat(sent("/trace", SHEET + "&remarks=forgot+to+grease+the+tin").body())
        .contains("<dd><span lang=\"en\">")
        .contains("<dd><span>Kruste zu blass</span>");
  }

  @Test
  void decimal_commas_are_read() {
    assertThat(sent("/layout", SHEET).body())
        .contains("500\u202fg")
        .contains("62\u202f%")
        .doesNotContain(Texts.of(german(), java.util.Map.of(), "").of("laid.doubts"));
  }

  @Test
  void english_pages_have_no_word_about_languages_in_their_explanations() {
    HttpResponse<String> page = asker.get("/about", "Accept", "text/html");
    assertThat(page.body()).contains("<html lang=\"en-GB\">").doesNotContain("<p lang=");
    assertThat(page.headers().firstValue("Content-Language")).contains("en-GB");
  }

  @Test
  void a_language_is_chosen_by_address_and_remembered() {
    HttpResponse<String> chosen = asker.get("/about?lang=de", "Accept", "text/html");
    assertThat(chosen.body()).contains("<html lang=\"de\">");
    assertThat(chosen.headers().allValues("Set-Cookie"))
        .singleElement()
        .satisfies(one -> assertThat(one).startsWith("lang=de;").contains("HttpOnly"));
    assertThat(asker.get("/about", "Cookie", "lang=de", "Accept-Language", "en").body())
        .contains("<html lang=\"de\">");
    assertThat(asker.get("/about?lang=en", "Cookie", "lang=de").body())
        .contains("<html lang=\"en-GB\">");
    assertThat(asker.get("/about?lang=xx").headers().allValues("Set-Cookie")).isEmpty();
  }

  @Test
  void every_page_leads_to_itself_in_the_other_languages() {
    assertThat(asker.get("/vary?turn=salt&lang=de").body())
        .contains("href=\"/vary?turn=salt&amp;lang=en\" lang=\"en\" hreflang=\"en\"")
        .contains("aria-current=\"true\">Deutsch</a>");
  }

  @ParameterizedTest
  @ValueSource(strings = {"//elsewhere.example/", "/%5Celsewhere.example", "/%22%3E%3Cb%3E"})
  void no_address_leads_to_another_server(String path) {
    assertThat(asker.get("/x/.." + path, "Accept", "text/html").body())
        .doesNotContain("href=\"//")
        .doesNotContain("<b>");
  }

  private static Language german() {
    return Language.of("de").orElseThrow();
  }

  private static HttpResponse<String> german(String path) {
    return asker.get(path, "Accept", "text/html", "Accept-Language", "de");
  }

  private static HttpResponse<String> sent(String path, String form) {
    return asker.post(path, Asker.FORM, form, "Accept", "text/html", "Accept-Language", "de");
  }

  // Texts of the English bundle that stand on the page outside passages marked as English.
  private static List<String> englishWords(String page) {
    String own =
        page.replaceAll(
                "(?s)<(p|li|ul|span|dd|dt|h3|article|button|a|strong|desc)\\b[^>]* lang=\"en\".*?</\\1>",
                "")
            .replaceAll("<[^>]*>", "|");
    ResourceBundle english =
        ResourceBundle.getBundle(
            "crumbtrail.texts.pages",
            Language.ENGLISH.locale(),
            Control.getNoFallbackControl(Control.FORMAT_PROPERTIES));
    ResourceBundle german = ResourceBundle.getBundle("crumbtrail.texts.pages", german().locale());
    return english.keySet().stream()
        .filter(key -> !english.getString(key).equals(german.getString(key)))
        .map(english::getString)
        .filter(text -> text.matches("(?s)[A-Za-z].{5,}") && !text.contains("{"))
        .filter(
            text ->
                Pattern.compile("\\|\\s*" + Pattern.quote(text) + "\\s*\\|").matcher(own).find())
        .toList();
  }
}
