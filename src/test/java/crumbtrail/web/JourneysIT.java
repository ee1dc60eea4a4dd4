package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** What bakers come for, from the first page to the last, in a real browser. */
@Tag("packaged")
class JourneysIT {
  private static final String HOSTILE =
      "\"'></textarea><script>window.broken=1</script><img src=x onerror=\"window.broken=1\">";

  private static Browser browser;
  private static Served served;
  private static ChromeDriver page;

  @BeforeAll
  static void start() throws IOException {
    browser = Browser.start();
    page = browser.driver();
    served = Served.start();
  }

  @AfterAll
  static void stop() throws IOException {
    if (served != null) {
      served.close();
    }
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void freshPage() {
    scripts(true);
    browser.size(1200, 900);
    browser.scheme("light");
    browser.console();
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void from_a_failed_loaf_over_an_answer_to_the_next_bake(boolean scripts) throws IOException {
    visit("report");
    scripts(scripts);
    String first = awaited(By.cssSelector(".ask h3")).getText();
    click(By.cssSelector(".ask .replies button[value=yes], .ask .replies button:not([name])"));
    assertThat(awaited(By.id("moved")).getText()).startsWith("Your answer moves");
    assertThat(page.findElements(By.cssSelector(".ask h3")))
        .extracting(WebElement::getText)
        .doesNotContain(first);
    if (scripts) {
      browser.keepPicture("journey-answered");
    }
    click(By.cssSelector("details.fit > summary"));
    click(By.cssSelector("form.wish button[type=submit]"));
    assertThat(awaited(By.tagName("h1")).getText()).isNotBlank();
    assertThat(page.findElements(By.cssSelector(".short-changes li"))).isNotEmpty();
  }

  @Test
  void a_link_carries_the_report_to_somebody_else() {
    visit("report");
    List<String> causes = causes();
    click(By.linkText("A link to this report"));
    assertThat(page.getCurrentUrl()).contains("/trace?sheet=");
    assertThat(causes()).isEqualTo(causes).isNotEmpty();
  }

  @Test
  void a_cause_leads_to_its_page_and_on_to_a_sign() {
    visit("report");
    click(By.cssSelector(".cause .more a[href^='/causes/']"));
    assertThat(page.getCurrentUrl()).contains("/causes/");
    click(By.cssSelector(".leaf a[href^='/signs/']"));
    assertThat(page.getCurrentUrl()).contains("/signs/");
    assertThat(awaited(By.tagName("h1")).getText()).isNotBlank();
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void a_recipe_is_checked_before_baking(boolean scripts) {
    page.get(served.address().toString());
    browser.script("localStorage.clear()");
    scripts(scripts);
    page.get(served.address().toString());
    awaited(By.id("recipe"))
        .sendKeys("500 g bread flour\n310 g water\n2 g fine salt\n5 g instant yeast");
    click(By.cssSelector("button[formaction='/precheck']"));
    assertThat(awaited(By.id("causes")).getText()).isEqualTo("What may go wrong");
    assertThat(causes()).contains("too little salt");
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void a_knob_is_turned(boolean scripts) {
    scripts(scripts);
    page.get(served.address() + "vary?bake=healthy-tin-loaf");
    awaited(By.cssSelector("#turn option[value=salt]")).click();
    awaited(By.id("range")).sendKeys("0..4%");
    click(By.cssSelector("main form button[type=submit]"));
    assertThat(awaited(By.id("tipping")).isDisplayed()).isTrue();
    assertThat(page.findElements(By.cssSelector("svg.picture"))).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void a_mystery_loaf_is_asked_about_and_named(boolean scripts) {
    scripts(scripts);
    page.get(served.address() + "mystery?level=easy&seed=7");
    click(By.cssSelector(".clues button"));
    assertThat(awaited(By.id("answers")).isDisplayed()).isTrue();
    click(By.cssSelector("#named + *, .send button[type=submit]:not([name])"));
    assertThat(awaited(By.id("verdict")).getText()).isNotBlank();
  }

  // Where the focus is must be seen at every step, and the first step leads past the menu.
  @Test
  void the_keyboard_leads_through_the_report() {
    visit("report");
    press(Keys.TAB);
    assertThat(focused().getText()).isEqualTo("Skip to the content");
    press(Keys.ENTER);
    press(Keys.TAB);
    assertThat(browser.script("return document.activeElement.closest('main') !== null"))
        .isEqualTo(true);
    for (int step = 0; step < 30; step++) {
      assertThat(
              browser.script(
                  "const e = document.activeElement, s = getComputedStyle(e),"
                      + " b = e.getBoundingClientRect(); return s.outlineStyle !== 'none'"
                      + " && parseFloat(s.outlineWidth) >= 2 && b.bottom > 0"
                      + " && b.top < innerHeight"))
          .as("step %d: %s", step, focused().getText())
          .isEqualTo(true);
      press(Keys.TAB);
    }
  }

  @Test
  void paper_has_every_cause_and_no_menu() throws IOException {
    visit("report");
    List<String> causes =
        page.findElements(By.cssSelector(".cause h3")).stream()
            .map(cause -> cause.getDomProperty("textContent"))
            .toList();
    try (PDDocument pdf = Loader.loadPDF(browser.print("journey-report"))) {
      String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
      assertThat(causes).isNotEmpty();
      assertThat(causes).allSatisfy(cause -> assertThat(text).containsIgnoringCase(cause));
      assertThat(text)
          .contains("Tin loaf, Tuesday class at the tide mill")
          .doesNotContain("Turn a knob", "Skip to the content", "Save the bake sheet")
          .doesNotContain("I cannot tell", "Another bake");
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
      new Tour("hostile", path, sheet).visit(browser, served);
      assertHarmless();
    }
    for (String address :
        List.of("vary?bake=%s&turn=%s&range=%s", "mystery?seed=7&level=%s&asked=%s&named=%s")) {
      page.get(served.address() + address.replace("%s", encoded(HOSTILE)));
      assertHarmless();
    }
    page.get(served.address() + "trace?sheet=" + SheetLink.pack(sheet.get("sheet")).orElseThrow());
    assertThat(awaited(By.tagName("h1")).getText()).startsWith("<img");
    assertHarmless();
  }

  private static void assertHarmless() {
    assertThat(browser.script("return window.broken === undefined")).isEqualTo(true);
    assertThat(page.findElements(By.cssSelector("main img, main script"))).isEmpty();
  }

  private static List<String> causes() {
    return page.findElements(By.cssSelector(".causes > li > h3")).stream()
        .map(WebElement::getText)
        .toList();
  }

  private static void visit(String name) {
    Tour.stops().stream()
        .filter(stop -> stop.name().equals(name))
        .findFirst()
        .orElseThrow()
        .visit(browser, served);
  }

  private static void scripts(boolean run) {
    page.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", !run));
  }

  // A busy browser may still show the page before, so what is to be there is waited for.
  private static WebElement awaited(By what) {
    return new WebDriverWait(page, Duration.ofSeconds(20)).until(there -> there.findElement(what));
  }

  private static void click(By what) {
    awaited(what).click();
  }

  private static String encoded(String text) {
    return java.net.URLEncoder.encode(text, java.nio.charset.StandardCharsets.UTF_8);
  }

  private static void press(Keys key) {
    new Actions(page).sendKeys(key).perform();
  }

  private static WebElement focused() {
    return page.switchTo().activeElement();
  }
}
