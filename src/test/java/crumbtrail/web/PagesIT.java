package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** The pages of the packaged program in a real visit.browser(). The bakes are invented. */
@Tag("packaged")
class PagesIT {

  private static final String HOSTILE =
      "\"'></textarea></option><script>window.broken=1</script>"
          + "<img src=x onerror=\"window.broken=1\"><svg onload=\"window.broken=1\">";

  @RegisterExtension static final Visit visit = new Visit();

  @BeforeEach
  void openForm() {
    openBlank();
  }

  @Test
  void aFailedLoafFindsItsCauses() throws IOException {
    visit.browser().keepPicture("form-1200");
    traceTinLoaf();
    List<WebElement> causes = visit.page().findElements(By.cssSelector("#content .causes > li"));
    assertThat(causes).isNotEmpty();
    assertThat(causes.get(0).findElement(By.tagName("h3")).getText()).isNotBlank();
    assertThat(causes.get(0).findElement(By.className("sureness")).getText()).contains("%");
    assertThat(visit.awaited(By.id("formula")).isDisplayed()).isTrue();
    assertThat(visit.browser().console()).isEmpty();
    visit.browser().keepPicture("report-1200");
    visit.browser().scheme("dark");
    visit.browser().keepPicture("report-dark");
    assertThat(visit.browser().print("report").length).isGreaterThan(1_000);
  }

  @Test
  void everythingFitsAPhone() throws IOException {
    visit.browser().size(320, 640);
    openBlank();
    visit.openDay();
    assertNothingSticksOut();
    visit.browser().keepPicture("form-320");
    visit.browser().size(320, 640);
    traceTinLoaf();
    visit
        .page()
        .executeScript("document.querySelectorAll('details').forEach(one => one.open = true)");
    assertNothingSticksOut();
    visit.browser().keepPicture("report-320");
  }

  @Test
  void thePicturesStandOnTheServedPageUnderItsPolicy() {
    for (int width : new int[] {1200, 360}) {
      visit.browser().size(width, 800);
      openBlank();
      traceTinLoaf();
      List<WebElement> pictures =
          visit.page().findElements(By.cssSelector("svg.picture")).stream()
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
              visit.script(
                  "return getComputedStyle(document.querySelector('svg.picture path.rise')).fill"))
          .isEqualTo("none");
      visit
          .page()
          .executeScript("document.querySelectorAll('details').forEach(one => one.open = true)");
      assertThat(visit.script("return document.documentElement.scrollWidth"))
          .isEqualTo((long) width);
      assertThat(visit.browser().console()).isEmpty();
    }
  }

  @Test
  void theKeyboardIsEnough() {
    press(Keys.TAB, 1);
    assertThat(visit.focused().getText()).isEqualTo("Skip to the content");
    tabTo("seen");
    new Actions(visit.page()).sendKeys("dense crumb").perform();
    tabTo("style");
    new Actions(visit.page()).sendKeys("white tin loaf" + Keys.ENTER).perform();
    assertThat(visit.awaited(By.id("causes")).isDisplayed()).isTrue();
  }

  @Test
  void whatCannotBeUsedIsMarkedAndKept() throws IOException {
    visit.openDay();
    visit.type("room", "warmish");
    visit.type("seen", "pale crust");
    visit.submit();
    WebElement room = visit.awaited(By.id("room"));
    assertThat(room.getDomProperty("value")).isEqualTo("warmish");
    assertThat(room.getDomAttribute("aria-invalid")).isEqualTo("true");
    assertThat(room.isDisplayed()).isTrue();
    assertThat(visit.awaited(By.id("room-fault")).getText()).isNotBlank();
    visit.awaited(By.linkText("Kitchen")).click();
    assertThat(visit.page().getCurrentUrl()).endsWith("#room");
    assertThat(visit.awaited(By.id("seen")).getDomProperty("value")).isEqualTo("pale crust");
    visit.browser().keepPicture("refused-1200");
  }

  @Test
  void markupInEveryFieldStaysText() {
    visit.openDay();
    // Typing the same into sixty fields key by key would take half a minute.
    visit
        .page()
        .executeScript(
            "document.querySelectorAll('input, textarea').forEach(f => f.value = arguments[0])",
            HOSTILE);
    visit.submit();
    assertHarmless();
    // Without the fields that must be quantities, the same words reach the report.
    openBlank();
    for (String field : List.of("title", "style", "seen", "not-seen", "recipe", "remarks")) {
      visit.type(field, HOSTILE);
    }
    visit.submit();
    assertHarmless();
  }

  private static void traceTinLoaf() {
    visit.openDay();
    visit.type("title", "Tin loaf, Tuesday class at the tide mill");
    visit.type("style", "white tin loaf");
    visit.type("seen", "the top caved in\npale crust");
    visit.type("recipe", "500 g bread flour\n310 g water\n1 1/2 tsp instant yeast\n6 g fine salt");
    visit.type("bulk-0-time", "60 min");
    visit.type("bulk-0-temperature", "24 C");
    visit.type("proof-0-time", "150 min");
    visit.type("proof-0-temperature", "30 C");
    visit.type("bake-0-time", "38 min");
    visit.type("bake-0-oven", "215 C");
    visit.type("core", "95 C");
    visit.submit();
  }

  private static void assertHarmless() {
    assertThat(visit.script("return window.broken === undefined")).isEqualTo(true);
    assertThat(visit.page().findElements(By.cssSelector("img[onerror], svg[onload]"))).isEmpty();
    assertThat(visit.page().findElements(By.cssSelector("script:not([src^='/assets/'])")))
        .isEmpty();
    assertThat(visit.page().getPageSource()).contains("window.broken=1");
    assertThat(visit.browser().console())
        .noneMatch(line -> line.contains("Content Security Policy"));
  }

  private static void assertNothingSticksOut() {
    assertThat(visit.script("return document.documentElement.scrollWidth")).isEqualTo(320L);
  }

  // Without the draft of a bake before.
  private static void openBlank() {
    visit.open("/about");
    visit.script("localStorage.clear()");
    visit.open("/");
  }

  private static void press(Keys key, int times) {
    for (int i = 0; i < times; i++) {
      new Actions(visit.page()).sendKeys(key).perform();
    }
  }

  private static void tabTo(String id) {
    for (int presses = 0; presses < 40; presses++) {
      press(Keys.TAB, 1);
      if (id.equals(visit.focused().getDomAttribute("id"))) {
        return;
      }
    }
    throw new AssertionError("The field " + id + " is not reached by the tabulator");
  }
}
