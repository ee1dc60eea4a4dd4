package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
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
import org.openqa.selenium.support.ui.WebDriverWait;

/** The bake sheet of the packaged program in a real browser. The bakes are invented. */
@Tag("packaged")
class BakeSheetIT {
  private static final String RECIPE =
      "500 g bread flour\n310 g water\n10 g fine salt\n5 g instant yeast";

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
  void open_a_blank_sheet() {
    scripts(true);
    browser.size(1200, 900);
    browser.scheme("light");
    // The draft and the units of the test before.
    page.get(served.address() + "about");
    browser.script("localStorage.clear()");
    page.manage().deleteAllCookies();
    open();
    browser.console();
  }

  @Test
  void a_recipe_is_laid_out_as_it_is_typed_and_told_once_typing_pauses() throws IOException {
    browser.script(
        "window.told = []; new MutationObserver(() => told.push('x'))"
            + ".observe(document.getElementById('layout-said'), {childList: true})");
    type("recipe", RECIPE + "\n50 g wimbleroot");
    until("document.querySelectorAll('#layout tbody tr').length === 5");
    assertThat(text("#layout")).contains("62 %", "310 g", "50 g wimbleroot", "Better");
    until(
        "document.getElementById('layout-said').textContent"
            + " === '4 lines understood, hydration 62 %, 1 not quite clear'");
    // Eighty keys were pressed; a slow machine may pause among them once or twice.
    assertThat((Long) browser.script("return told.length")).isBetween(1L, 3L);
    // Typing went on undisturbed.
    assertThat(focused().getDomAttribute("id")).isEqualTo("recipe");
    assertThat(page.getCurrentUrl()).isEqualTo(served.address().toString());
    assertThat(browser.console()).isEmpty();
    browser.keepPicture("sheet-laid-out-1200");
  }

  @Test
  void without_scripts_a_button_lays_the_recipe_out_and_keeps_all_that_was_typed() {
    scripts(false);
    open();
    type("seen", "pale crust");
    type("recipe", RECIPE);
    page.findElement(By.cssSelector("#pick-crust > summary")).click();
    pick("sign-dark-crust", "not");
    page.findElement(By.cssSelector("button.small")).click();
    assertThat(text("#layout")).contains("62 %", "310 g");
    assertThat(value("seen")).isEqualTo("pale crust");
    assertThat(value("recipe")).isEqualTo(RECIPE);
    assertThat(chosen("sign-dark-crust")).isEqualTo("not");
    assertThat(page.findElement(By.id("pick-crust")).getDomAttribute("open")).isNotNull();
    page.findElement(By.cssSelector("button[type=submit]:not([formaction])")).click();
    assertThat(page.findElement(By.id("causes")).isDisplayed()).isTrue();
  }

  @Test
  void a_sign_is_picked_by_its_picture_and_heard() throws IOException {
    page.findElement(By.cssSelector("#pick-crust > summary")).click();
    until("performance.getEntriesByType('resource').some(r => r.name.includes('/pale-crust.svg'))");
    // The picture itself is the quickest thing to press.
    page.findElement(By.cssSelector("label.look-pale-crust")).click();
    assertThat(chosen("sign-pale-crust")).isEqualTo("saw");
    assertThat(text("#pick-crust > summary")).contains("1 picked");
    pick("sign-dark-crust", "not");
    assertThat(text("#pick-crust > summary")).contains("2 picked");
    browser.keepPicture("sheet-picked-1200");
    browser.size(1200, 900);
    submit();
    assertThat(text("#content")).contains("crust too pale").doesNotContain("not understood");
    assertThat(browser.console()).isEmpty();
  }

  @Test
  void pictures_are_fetched_only_where_a_moment_is_opened() {
    assertThat(fetched("/pictures/")).isZero();
    page.findElement(By.cssSelector("#pick-dough > summary")).click();
    until("performance.getEntriesByType('resource').some(r => r.name.includes('/pictures/'))");
    long shown = page.findElements(By.cssSelector("#pick-dough .look")).size();
    assertThat(fetched("/pictures/")).isBetween(1L, shown);
    Object largest =
        browser.script(
            "return Math.max(...performance.getEntriesByType('resource')"
                + ".filter(r => r.name.includes('/pictures/')).map(r => r.transferSize))");
    assertThat(((Number) largest).longValue()).as("compressed").isLessThan(8_000);
    scripts(false);
    open();
    assertThat(fetched("/pictures/")).as("without scripts").isZero();
  }

  @Test
  void the_chosen_units_are_remembered_and_nothing_typed_is_lost() {
    type("recipe", RECIPE);
    page.findElement(By.cssSelector(".units button:nth-of-type(2)")).click();
    assertThat(value("recipe")).isEqualTo(RECIPE);
    assertThat(text("#layout")).contains("17.6 oz");
    openAllStages();
    assertThat(text("#room-hint")).isEqualTo("70 F");
    page.get(served.address() + "about");
    open();
    assertThat(page.findElement(By.cssSelector(".units [aria-pressed=true]")).getText())
        .contains("oz");
    page.get(served.address() + "?units=metric");
    openAllStages();
    assertThat(text("#room-hint")).isEqualTo("21 C");
  }

  @Test
  void a_draft_outlives_a_reload_until_the_baker_starts_afresh() {
    type("seen", "flat loaf");
    type("recipe", RECIPE);
    openAllStages();
    type("room", "19 C");
    page.findElement(By.cssSelector("label[for='sign-pale-crust']")).click();
    page.navigate().refresh();
    assertThat(value("seen")).isEqualTo("flat loaf");
    assertThat(value("room")).isEqualTo("19 C");
    assertThat(chosen("sign-pale-crust")).isEqualTo("saw");
    assertThat(text("#draft-note")).contains("is back");
    until("document.querySelectorAll('#layout tbody tr').length === 4");
    page.findElement(By.cssSelector("#draft-note .afresh")).click();
    assertThat(value("seen")).isEmpty();
    assertThat(value("recipe")).isEmpty();
    page.navigate().refresh();
    assertThat(value("seen")).isEmpty();
    assertThat(page.findElement(By.id("draft-note")).isDisplayed()).isFalse();
    assertThat(browser.console()).isEmpty();
  }

  @Test
  void a_form_that_the_server_sends_back_wins_over_the_draft() {
    openAllStages();
    type("seen", "flat loaf");
    type("room", "warmish");
    submit();
    assertThat(page.findElement(By.id("room")).getDomAttribute("aria-invalid")).isEqualTo("true");
    // An older draft lies about.
    browser.script(
        "localStorage.setItem('crumbtrail-draft', JSON.stringify({seen: 'an older bake'}))");
    page.findElement(By.cssSelector("button.small")).click();
    page.findElement(By.cssSelector(".units button")).click();
    assertThat(value("seen")).isEqualTo("flat loaf");
    assertThat(value("room")).isEqualTo("warmish");
    open();
    assertThat(value("seen")).isEqualTo("flat loaf");
  }

  @Test
  void faults_have_the_focus_and_lead_to_their_fields() {
    openAllStages();
    type("room", "warmish");
    type("seen", "pale crust");
    submit();
    assertThat(focused().getDomAttribute("class")).isEqualTo("faults");
    assertThat(page.findElement(By.id("room")).getDomAttribute("aria-describedby"))
        .contains("room-fault");
    page.findElement(By.linkText("Kitchen")).click();
    assertThat(focused().getDomAttribute("id")).isEqualTo("room");
  }

  @Test
  void one_picked_sign_is_enough() {
    openAllStages();
    page.findElement(By.cssSelector("label[for='sign-flat-loaf']")).click();
    submit();
    assertThat(page.findElements(By.cssSelector("#content .causes > li"))).isNotEmpty();
  }

  @Test
  void it_fits_a_phone_and_the_send_button_covers_no_field() throws IOException {
    for (String scheme : List.of("light", "dark")) {
      browser.scheme(scheme);
      browser.size(320, 640);
      open();
      type("recipe", "");
      type("recipe", RECIPE + "\n1 cup of something unheard of");
      until("document.querySelectorAll('#layout tbody tr').length === 5");
      openAllStages();
      assertThat(browser.script("return document.documentElement.scrollWidth")).isEqualTo(320L);
      assertThat(
              browser.script(
                  "const box = document.getElementById('layout');"
                      + "return box.querySelector('table').getBoundingClientRect().right"
                      + " <= box.getBoundingClientRect().right - 8"))
          .isEqualTo(true);
      assertThat(tooSmall()).as("targets under 44 px").isEqualTo("");
      browser.script("document.getElementById('room').focus()");
      assertThat(
              browser.script(
                  "const f = document.activeElement.getBoundingClientRect();"
                      + "const b = document.querySelector('.send.first').getBoundingClientRect();"
                      + "return f.bottom <= b.top"))
          .isEqualTo(true);
      // Seventy pictures in one are more than a busy machine draws in time.
      page.executeScript(
          "document.querySelectorAll('[id^=pick-]').forEach(p => p.open = p.id === 'pick-crust')");
      browser.keepPicture("sheet-320-" + scheme);
      browser.size(768, 1024);
      browser.keepPicture("sheet-768-" + scheme);
      browser.size(1280, 900);
      browser.keepPicture("sheet-1280-" + scheme);
      browser.script("localStorage.clear(); document.querySelector('form').reset()");
    }
  }

  @Test
  void the_keyboard_picks_lays_out_and_sends() {
    page.findElement(By.cssSelector("#pick-crust > summary")).sendKeys(Keys.ENTER);
    page.findElement(By.name("sign-pale-crust")).sendKeys(Keys.SPACE);
    assertThat(chosen("sign-pale-crust")).isEqualTo("saw");
    new Actions(page).sendKeys(Keys.ARROW_RIGHT).perform();
    assertThat(chosen("sign-pale-crust")).isEqualTo("not");
    type("style", "white tin loaf");
    type("seen", "dense crumb");
    // Enter looks for the cause, though other buttons stand before that one.
    page.findElement(By.id("style")).sendKeys(Keys.ENTER);
    assertThat(page.findElement(By.id("causes")).isDisplayed()).isTrue();
  }

  @Test
  void nothing_shifts_while_the_sheet_loads_and_it_is_light() {
    page.executeCdpCommand("Network.clearBrowserCache", Map.of());
    open();
    Object shift =
        browser.script(
            "let sum = 0; for (const e of (new PerformanceObserver(() => {})).takeRecords()) {}"
                + "const o = new PerformanceObserver(() => {});"
                + "o.observe({type: 'layout-shift', buffered: true});"
                + "for (const e of o.takeRecords()) { if (!e.hadRecentInput) sum += e.value; }"
                + "return sum");
    assertThat(((Number) shift).doubleValue()).isZero();
    Object bytes =
        browser.script(
            "return [...performance.getEntriesByType('navigation'),"
                + " ...performance.getEntriesByType('resource')]"
                + ".reduce((sum, one) => sum + one.transferSize, 0)");
    assertThat(((Number) bytes).longValue()).isBetween(10_000L, 150_000L);
  }

  @Test
  void paper_has_an_empty_sheet_to_fill_in_by_hand() throws IOException {
    assertThat(browser.print("sheet-empty").length).isGreaterThan(1_000);
    page.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
    try {
      assertThat(
              browser.script(
                  "const shown = id => document.querySelector(id).getClientRects().length > 0;"
                      + "return shown('#room') && shown('#bulk-0-time')"
                      + " && !shown('.send.first button') && !shown('.units')"))
          .isEqualTo(true);
    } finally {
      page.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
    }
  }

  private static void scripts(boolean run) {
    page.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", !run));
  }

  private static void open() {
    page.get(served.address().toString());
  }

  private static void until(String condition) {
    new WebDriverWait(page, Duration.ofSeconds(10))
        .until(driver -> Boolean.TRUE.equals(browser.script("return " + condition)));
  }

  // Everything that can be pressed, but for links within a sentence.
  private static Object tooSmall() {
    return browser.script(
        "return [...document.querySelectorAll('form :is(button, summary, select, textarea,"
            + " input:not(.away), .choice label, .afresh), .masthead a')]"
            + ".filter(e => e.getClientRects().length)"
            + ".filter(e => { const b = e.getBoundingClientRect();"
            + " return b.height < 43.5 || b.width < 43.5; })"
            + ".map(e => e.tagName + ' ' + e.id + ' ' + e.textContent.trim()).join('; ')");
  }

  private static long fetched(String part) {
    return ((Number)
            page.executeScript(
                "return performance.getEntriesByType('resource')"
                    + ".filter(r => r.name.includes(arguments[0])).length",
                part))
        .longValue();
  }

  private static void openAllStages() {
    // By script, since pressing one after the other would take long, and on a phone some lie under
    // the button at the foot until they are scrolled up.
    page.executeScript("document.querySelectorAll('.stage').forEach(stage => stage.open = true)");
  }

  private static void type(String id, String text) {
    page.findElement(By.id(id)).sendKeys(text);
  }

  private static void pick(String field, String choice) {
    page.findElement(By.cssSelector("input[name='" + field + "'][value='" + choice + "']")).click();
  }

  private static String chosen(String field) {
    return page.findElement(By.cssSelector("input[name='" + field + "']:checked"))
        .getDomAttribute("value");
  }

  private static String value(String id) {
    return page.findElement(By.id(id)).getDomProperty("value");
  }

  private static String text(String css) {
    return page.findElement(By.cssSelector(css)).getText();
  }

  private static void submit() {
    page.findElement(By.cssSelector("button[type=submit]:not([formaction])")).click();
  }

  private static WebElement focused() {
    return page.switchTo().activeElement();
  }
}
