package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;

/** The pages of the packaged program in a real browser. The bakes are invented. */
@Tag("packaged")
class PagesIT {

  private static final String HOSTILE =
      "\"'></textarea></option><script>window.broken=1</script>"
          + "<img src=x onerror=\"window.broken=1\"><svg onload=\"window.broken=1\">";

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
  void openForm() {
    browser.size(1200, 900);
    browser.scheme("light");
    openBlank();
    browser.console();
  }

  @Test
  void aFailedLoafFindsItsCauses() throws IOException {
    browser.keepPicture("form-1200");
    traceTinLoaf();
    List<WebElement> causes = page.findElements(By.cssSelector("#content .causes > li"));
    assertThat(causes).isNotEmpty();
    assertThat(causes.get(0).findElement(By.tagName("h3")).getText()).isNotBlank();
    assertThat(causes.get(0).findElement(By.className("sureness")).getText()).contains("%");
    assertThat(page.findElement(By.id("formula")).isDisplayed()).isTrue();
    assertThat(browser.console()).isEmpty();
    browser.keepPicture("report-1200");
    browser.scheme("dark");
    browser.keepPicture("report-dark");
    assertThat(browser.print("report").length).isGreaterThan(1_000);
  }

  @Test
  void everythingFitsAPhone() throws IOException {
    browser.size(320, 640);
    openBlank();
    openAllStages();
    assertNothingSticksOut();
    browser.keepPicture("form-320");
    browser.size(320, 640);
    traceTinLoaf();
    page.executeScript("document.querySelectorAll('details').forEach(one => one.open = true)");
    assertNothingSticksOut();
    browser.keepPicture("report-320");
  }

  @Test
  void thePicturesStandOnTheServedPageUnderItsPolicy() {
    for (int width : new int[] {1200, 360}) {
      browser.size(width, 800);
      openBlank();
      traceTinLoaf();
      List<WebElement> pictures =
          page.findElements(By.cssSelector("svg.picture")).stream()
              .filter(WebElement::isDisplayed)
              .toList();
      assertThat(pictures).hasSize(2);
      assertThat(pictures.get(0).getAccessibleName())
          .contains("The rise and the temperature of the dough")
          .contains("Ready to bake at");
      assertThat(pictures.get(1).getAccessibleName())
          .contains("Temperatures through the bake")
          .contains("The core was measured at 95 °C");
      // Strokes and fills come from the stylesheet, which the policy must let through.
      assertThat(
              browser.script(
                  "return getComputedStyle(document.querySelector('svg.picture path.rise')).fill"))
          .isEqualTo("none");
      page.executeScript("document.querySelectorAll('details').forEach(one => one.open = true)");
      assertThat(browser.script("return document.documentElement.scrollWidth"))
          .isEqualTo((long) width);
      assertThat(browser.console()).isEmpty();
    }
  }

  @Test
  void paperHasTheLikelyCausesWholeAndTheFurtherOnesByName() throws IOException {
    traceTinLoaf();
    browser.print("served");
    page.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
    try {
      assertThat(
              browser.script(
                  "const shown = e => e && e.getClientRects().length > 0;"
                      + "return shown(document.querySelector('.further .cause h3'))"
                      + " && !shown(document.querySelector('.further .evidence'))"
                      + " && shown(document.querySelector('.causes .evidence'))"
                      + " && shown(document.querySelector('.sources li'))"
                      + " && !shown(document.querySelector('.numbers table'))"))
          .isEqualTo(true);
    } finally {
      page.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
    }
  }

  @Test
  void theKeyboardIsEnough() {
    press(Keys.TAB, 1);
    assertThat(focused().getText()).isEqualTo("Skip to the content");
    tabTo("seen");
    new Actions(page).sendKeys("dense crumb").perform();
    tabTo("style");
    new Actions(page).sendKeys("white tin loaf" + Keys.ENTER).perform();
    assertThat(page.findElement(By.id("causes")).isDisplayed()).isTrue();
  }

  @Test
  void whatCannotBeUsedIsMarkedAndKept() throws IOException {
    openAllStages();
    type("room", "warmish");
    type("seen", "pale crust");
    submit();
    WebElement room = page.findElement(By.id("room"));
    assertThat(room.getDomProperty("value")).isEqualTo("warmish");
    assertThat(room.getDomAttribute("aria-invalid")).isEqualTo("true");
    assertThat(room.isDisplayed()).isTrue();
    assertThat(page.findElement(By.id("room-fault")).getText()).isNotBlank();
    page.findElement(By.linkText("Kitchen")).click();
    assertThat(page.getCurrentUrl()).endsWith("#room");
    assertThat(page.findElement(By.id("seen")).getDomProperty("value")).isEqualTo("pale crust");
    browser.keepPicture("refused-1200");
  }

  @Test
  void markupInEveryFieldStaysText() {
    openAllStages();
    // Typing the same into sixty fields key by key would take half a minute.
    page.executeScript(
        "document.querySelectorAll('input, textarea').forEach(f => f.value = arguments[0])",
        HOSTILE);
    submit();
    assertHarmless();
    // Without the fields that must be quantities, the same words reach the report.
    openBlank();
    for (String field : List.of("title", "style", "seen", "not-seen", "recipe", "remarks")) {
      type(field, HOSTILE);
    }
    submit();
    assertHarmless();
  }

  private static void traceTinLoaf() {
    openAllStages();
    type("title", "Tin loaf, Tuesday class at the tide mill");
    type("style", "white tin loaf");
    type("seen", "the top caved in\npale crust");
    type("recipe", "500 g bread flour\n310 g water\n1 1/2 tsp instant yeast\n6 g fine salt");
    type("bulk-0-time", "60 min");
    type("bulk-0-temperature", "24 C");
    type("proof-0-time", "150 min");
    type("proof-0-temperature", "30 C");
    type("bake-0-time", "38 min");
    type("bake-0-oven", "215 C");
    type("core", "95 C");
    submit();
  }

  private static void assertHarmless() {
    assertThat(browser.script("return window.broken === undefined")).isEqualTo(true);
    assertThat(page.findElements(By.cssSelector("img[onerror], svg[onload]"))).isEmpty();
    assertThat(page.findElements(By.cssSelector("script:not([src^='/assets/'])"))).isEmpty();
    assertThat(page.getPageSource()).contains("window.broken=1");
    assertThat(browser.console()).noneMatch(line -> line.contains("Content Security Policy"));
  }

  private static void assertNothingSticksOut() {
    assertThat(browser.script("return document.documentElement.scrollWidth")).isEqualTo(320L);
  }

  // Without the draft of a bake before.
  private static void openBlank() {
    page.get(served.address() + "about");
    browser.script("localStorage.clear()");
    page.get(served.address().toString());
  }

  private static void openAllStages() {
    // The stages of the day; moments with pictures are opened by the test of the bake sheet. By
    // script, since on a phone some lie under the button at the foot until they are scrolled up.
    page.executeScript("document.querySelectorAll('[id^=stage-]').forEach(one => one.open = true)");
  }

  private static void type(String id, String text) {
    page.findElement(By.id(id)).sendKeys(text);
  }

  private static void submit() {
    page.findElement(By.cssSelector("button[type=submit]:not([formaction])")).click();
  }

  private static void press(Keys key, int times) {
    for (int i = 0; i < times; i++) {
      new Actions(page).sendKeys(key).perform();
    }
  }

  private static void tabTo(String id) {
    for (int presses = 0; presses < 40; presses++) {
      press(Keys.TAB, 1);
      if (id.equals(focused().getDomAttribute("id"))) {
        return;
      }
    }
    throw new AssertionError("The field " + id + " is not reached by the tabulator");
  }

  private static WebElement focused() {
    return page.switchTo().activeElement();
  }
}
