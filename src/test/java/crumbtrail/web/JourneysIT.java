package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** What bakers come for, from the first page to the last, in a real visit.browser(). */
@Tag("packaged")
class JourneysIT {
  private static final String HOSTILE =
      "\"'></textarea><script>window.broken=1</script><img src=x onerror=\"window.broken=1\">";

  @RegisterExtension static final Visit visit = new Visit();

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void from_a_failed_loaf_over_an_answer_to_the_next_bake(boolean scripts) throws IOException {
    visit.stop("report");
    visit.scripts(scripts);
    String first = visit.awaited(By.cssSelector(".ask h3")).getText();
    visit.click(".ask .replies button[value=yes], .ask .replies button:not([name])");
    assertThat(visit.awaited(By.id("moved")).getText()).startsWith("Your answer moves");
    assertThat(visit.page().findElements(By.cssSelector(".ask h3")))
        .extracting(WebElement::getText)
        .doesNotContain(first);
    if (scripts) {
      visit.browser().keepPicture("journey-answered");
    }
    visit.click("details.fit > summary");
    visit.follow("form.wish button[type=submit]");
    assertThat(visit.awaited(By.tagName("h1")).getText()).isNotBlank();
    assertThat(visit.page().findElements(By.cssSelector(".short-changes li"))).isNotEmpty();
  }

  @Test
  void a_link_carries_the_report_to_somebody_else() {
    visit.stop("report");
    List<String> causes = causes();
    visit.follow(By.linkText("A link to this report"));
    assertThat(visit.page().getCurrentUrl()).contains("/trace?sheet=");
    assertThat(causes()).isEqualTo(causes).isNotEmpty();
  }

  @Test
  void findings_survive_a_reload_the_way_back_and_another_language() {
    visit.stop("report");
    List<String> causes = causes();
    visit.reload();
    assertThat(causes()).isEqualTo(causes).isNotEmpty();
    visit.click("details.fit > summary");
    visit.follow("form.wish button[type=submit]");
    visit.awaited(By.cssSelector(".short-changes li"));
    visit.page().navigate().back();
    visit.awaited(By.id("causes"));
    assertThat(causes()).isEqualTo(causes);
    visit.follow(By.linkText("Deutsch"));
    visit.awaited(By.cssSelector("html[lang=de]"));
    assertThat(causes()).hasSameSizeAs(causes);
  }

  @Test
  void a_cause_leads_to_its_page_and_on_to_a_sign() {
    visit.stop("report");
    visit.follow(".cause .more a[href^='/causes/']");
    assertThat(visit.page().getCurrentUrl()).contains("/causes/");
    visit.follow(".leaf a[href^='/signs/']");
    assertThat(visit.page().getCurrentUrl()).contains("/signs/");
    assertThat(visit.awaited(By.tagName("h1")).getText()).isNotBlank();
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void a_recipe_is_checked_before_baking(boolean scripts) {
    visit.scripts(scripts);
    visit.open("/");
    visit
        .awaited(By.id("recipe"))
        .sendKeys("500 g bread flour\n310 g water\n2 g fine salt\n5 g instant yeast");
    visit.follow("button[formaction='/precheck']");
    assertThat(visit.awaited(By.id("causes")).getText()).isEqualTo("What may go wrong");
    assertThat(causes()).contains("too little salt");
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void a_knob_is_turned(boolean scripts) {
    visit.scripts(scripts);
    visit.open("/vary?bake=healthy-tin-loaf");
    visit.awaited(By.cssSelector("#turn option[value=salt]")).click();
    visit.awaited(By.id("range")).sendKeys("0..4%");
    visit.follow("main form button[type=submit]");
    assertThat(visit.awaited(By.id("tipping")).isDisplayed()).isTrue();
    assertThat(visit.page().findElements(By.cssSelector("svg.picture"))).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void a_mystery_loaf_is_asked_about_and_named(boolean scripts) {
    visit.scripts(scripts);
    visit.open("/mystery?level=easy&seed=7");
    visit.click(".clues button");
    assertThat(visit.awaited(By.id("answers")).isDisplayed()).isTrue();
    visit.follow("#named + *, .send button[type=submit]:not([name])");
    assertThat(visit.awaited(By.id("verdict")).getText()).isNotBlank();
  }

  // Where the focus is must be seen at every step, and the first step leads past the menu.
  @Test
  void the_keyboard_leads_through_the_report() {
    visit.stop("report");
    visit.press(Keys.TAB);
    assertThat(visit.focused().getText()).isEqualTo("Skip to the content");
    visit.press(Keys.ENTER);
    visit.press(Keys.TAB);
    assertThat(visit.script("return document.activeElement.closest('main') !== null"))
        .isEqualTo(true);
    for (int step = 0; step < 30; step++) {
      assertThat(
              visit.script(
                  "const e = document.activeElement, s = getComputedStyle(e),"
                      + " b = e.getBoundingClientRect(); return s.outlineStyle !== 'none'"
                      + " && parseFloat(s.outlineWidth) >= 2 && b.bottom > 0"
                      + " && b.top < innerHeight"))
          .as("step %d: %s", step, visit.focused().getText())
          .isEqualTo(true);
      visit.press(Keys.TAB);
    }
  }

  @Test
  void hostile_words_stay_words_on_every_way_through() {
    Map<String, String> sheet =
        Map.of(
            "sheet",
            "{\"title\": \"<img src=x onerror='window.broken=1'>\","
                + " \"seen\": [\"</textarea><script>window.broken=1</script> flat loaf\"]}");
    for (String path : List.of("/answer", "/next")) {
      new Tour("hostile", path, sheet).visit(visit.browser(), visit.served());
      assertHarmless();
    }
    for (String address :
        List.of("vary?bake=%s&turn=%s&range=%s", "mystery?seed=7&level=%s&asked=%s&named=%s")) {
      visit.open("/" + address.replace("%s", encoded(HOSTILE)));
      assertHarmless();
    }
    visit.open("/trace?sheet=" + SheetLink.pack(sheet.get("sheet")).orElseThrow());
    assertThat(visit.awaited(By.tagName("h1")).getText()).startsWith("<img");
    assertHarmless();
  }

  private static void assertHarmless() {
    assertThat(visit.script("return window.broken === undefined")).isEqualTo(true);
    assertThat(visit.page().findElements(By.cssSelector("main img, main script"))).isEmpty();
  }

  private static List<String> causes() {
    return visit.page().findElements(By.cssSelector(".causes > li > h3")).stream()
        .map(WebElement::getText)
        .toList();
  }

  private static String encoded(String text) {
    return java.net.URLEncoder.encode(text, java.nio.charset.StandardCharsets.UTF_8);
  }
}
