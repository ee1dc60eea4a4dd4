package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;

/** The bake sheet of the packaged program in a real visit.browser(). The bakes are invented. */
@Tag("packaged")
class BakeSheetIT {
  private static final String RECIPE =
      "500 g bread flour\n310 g water\n10 g fine salt\n5 g instant yeast";

  @RegisterExtension static final Visit visit = new Visit();

  @BeforeEach
  void open_a_blank_sheet() {
    open();
    visit.browser().console();
  }

  @Test
  void a_recipe_is_laid_out_as_it_is_typed_and_told_once_typing_pauses() throws IOException {
    visit.script(
        "window.told = []; new MutationObserver(() => told.push('x'))"
            + ".observe(document.getElementById('layout-said'), {childList: true})");
    visit.type("recipe", RECIPE + "\n50 g wimbleroot");
    visit.until("document.querySelectorAll('#layout tbody tr').length === 5");
    assertThat(visit.text("#layout")).contains("62 %", "310 g", "50 g wimbleroot", "Better");
    visit.until(
        "document.getElementById('layout-said').textContent"
            + " === '4 lines understood, hydration 62 %, 1 not quite clear'");
    // Eighty keys were pressed; a slow machine may pause among them once or twice.
    assertThat((Long) visit.script("return told.length")).isBetween(1L, 3L);
    // Typing went on undisturbed.
    assertThat(visit.focused().getDomAttribute("id")).isEqualTo("recipe");
    assertThat(visit.page().getCurrentUrl()).isEqualTo(visit.served().address().toString());
    assertThat(visit.browser().console()).isEmpty();
    visit.browser().keepPicture("sheet-laid-out-1200");
  }

  @Test
  void without_scripts_a_button_lays_the_recipe_out_and_keeps_all_that_was_typed() {
    visit.scripts(false);
    open();
    visit.type("seen", "pale crust");
    visit.type("recipe", RECIPE);
    visit.awaited(By.cssSelector("#pick-crust > summary")).click();
    pick("sign-dark-crust", "not");
    visit.follow("button.small");
    assertThat(visit.text("#layout")).contains("62 %", "310 g");
    assertThat(visit.value("seen")).isEqualTo("pale crust");
    assertThat(visit.value("recipe")).isEqualTo(RECIPE);
    assertThat(chosen("sign-dark-crust")).isEqualTo("not");
    assertThat(visit.awaited(By.id("pick-crust")).getDomAttribute("open")).isNotNull();
    visit.follow("button[type=submit]:not([formaction])");
    assertThat(visit.awaited(By.id("causes")).isDisplayed()).isTrue();
  }

  @Test
  void a_sign_is_picked_by_its_picture_and_heard() throws IOException {
    visit.awaited(By.cssSelector("#pick-crust > summary")).click();
    visit.until(
        "performance.getEntriesByType('resource').some(r => r.name.includes('/pale-crust.svg'))");
    // The picture itself is the quickest thing to press.
    visit.awaited(By.cssSelector("label.look-pale-crust")).click();
    assertThat(chosen("sign-pale-crust")).isEqualTo("saw");
    assertThat(visit.text("#pick-crust > summary")).contains("1 picked");
    pick("sign-dark-crust", "not");
    assertThat(visit.text("#pick-crust > summary")).contains("2 picked");
    visit.browser().keepPicture("sheet-picked-1200");
    visit.browser().size(1200, 900);
    visit.submit();
    assertThat(visit.text("#content")).contains("crust too pale").doesNotContain("not understood");
    assertThat(visit.browser().console()).isEmpty();
  }

  @Test
  void the_chosen_units_are_remembered_and_nothing_typed_is_lost() {
    visit.type("recipe", RECIPE);
    visit.follow(".units button:nth-of-type(2)");
    assertThat(visit.value("recipe")).isEqualTo(RECIPE);
    assertThat(visit.text("#layout")).contains("17.6 oz");
    openAllStages();
    assertThat(visit.text("#room-hint")).isEqualTo("70 F");
    visit.open("/about");
    open();
    assertThat(visit.awaited(By.cssSelector(".units [aria-pressed=true]")).getText())
        .contains("oz");
    visit.open("/?units=metric");
    openAllStages();
    assertThat(visit.text("#room-hint")).isEqualTo("21 C");
  }

  @Test
  void a_draft_outlives_a_reload_until_the_baker_starts_afresh() {
    visit.type("seen", "flat loaf");
    visit.type("recipe", RECIPE);
    openAllStages();
    visit.type("room", "19 C");
    visit.awaited(By.cssSelector("label[for='sign-pale-crust']")).click();
    visit.reload();
    assertThat(visit.value("seen")).isEqualTo("flat loaf");
    assertThat(visit.value("room")).isEqualTo("19 C");
    assertThat(chosen("sign-pale-crust")).isEqualTo("saw");
    assertThat(visit.text("#draft-note")).contains("is back");
    visit.until("document.querySelectorAll('#layout tbody tr').length === 4");
    visit.follow("#draft-note .afresh");
    assertThat(visit.value("seen")).isEmpty();
    assertThat(visit.value("recipe")).isEmpty();
    visit.reload();
    assertThat(visit.value("seen")).isEmpty();
    assertThat(visit.text("#draft-note")).isEmpty();
    assertThat(visit.browser().console()).isEmpty();
  }

  @Test
  void a_recipe_is_laid_out_although_the_first_answer_was_lost() {
    visit.page().executeCdpCommand("Network.enable", Map.of());
    block(List.of("*/layout"));
    visit.type("recipe", RECIPE);
    visit.until(
        "performance.getEntriesByType('resource').some(one => one.name.endsWith('/layout'))");
    block(List.of());
    visit.until("document.querySelectorAll('#layout tbody tr').length === 4");
  }

  private static void block(List<String> addresses) {
    visit.page().executeCdpCommand("Network.setBlockedURLs", Map.of("urls", addresses));
  }

  @Test
  void nothing_moves_when_a_draft_comes_back() {
    visit.type("seen", "flat loaf");
    visit.type("recipe", RECIPE);
    visit.until("document.querySelectorAll('#layout tbody tr').length === 4");
    visit.script("document.getElementById('layout').scrollIntoView()");
    visit.reload();
    visit.until("document.querySelectorAll('#layout tbody tr').length === 4");
    assertThat(visit.script("return window.scrollY > 0")).isEqualTo(true);
    assertThat(visit.browser().shifted()).isZero();
  }

  @Test
  void a_form_that_the_server_sends_back_wins_over_the_draft() {
    openAllStages();
    visit.type("seen", "flat loaf");
    visit.type("room", "warmish");
    visit.submit();
    assertThat(visit.awaited(By.id("room")).getDomAttribute("aria-invalid")).isEqualTo("true");
    // An older draft lies about.
    visit.script(
        "localStorage.setItem('crumbtrail-draft', JSON.stringify({seen: 'an older bake'}))");
    visit.awaited(By.cssSelector("button.small")).click();
    visit.follow(".units button");
    assertThat(visit.value("seen")).isEqualTo("flat loaf");
    assertThat(visit.value("room")).isEqualTo("warmish");
    open();
    assertThat(visit.value("seen")).isEqualTo("flat loaf");
  }

  @Test
  void faults_have_the_focus_and_lead_to_their_fields() {
    openAllStages();
    visit.type("room", "warmish");
    visit.type("seen", "pale crust");
    visit.submit();
    assertThat(visit.focused().getDomAttribute("class")).isEqualTo("faults");
    assertThat(visit.awaited(By.id("room")).getDomAttribute("aria-describedby"))
        .contains("room-fault");
    visit.awaited(By.linkText("Kitchen")).click();
    assertThat(visit.focused().getDomAttribute("id")).isEqualTo("room");
  }

  @Test
  void one_picked_sign_is_enough() {
    openAllStages();
    visit.awaited(By.cssSelector("label[for='sign-flat-loaf']")).click();
    visit.submit();
    assertThat(visit.page().findElements(By.cssSelector("#content .causes > li"))).isNotEmpty();
  }

  @Test
  void the_keyboard_picks_lays_out_and_sends() {
    visit.awaited(By.cssSelector("#pick-crust > summary")).sendKeys(Keys.ENTER);
    visit.awaited(By.name("sign-pale-crust")).sendKeys(Keys.SPACE);
    assertThat(chosen("sign-pale-crust")).isEqualTo("saw");
    new Actions(visit.page()).sendKeys(Keys.ARROW_RIGHT).perform();
    assertThat(chosen("sign-pale-crust")).isEqualTo("not");
    visit.type("style", "white tin loaf");
    visit.type("seen", "dense crumb");
    // Enter looks for the cause, though other buttons stand before that one.
    visit.leaving(() -> visit.awaited(By.id("style")).sendKeys(Keys.ENTER));
    assertThat(visit.awaited(By.id("causes")).isDisplayed()).isTrue();
  }

  private static void open() {
    visit.open("/");
  }

  private static void openAllStages() {
    // By script, since pressing one after the other would take long, and on a phone some lie under
    // the button at the foot until they are scrolled up.
    visit
        .page()
        .executeScript("document.querySelectorAll('.stage').forEach(stage => stage.open = true)");
  }

  private static void pick(String field, String choice) {
    visit
        .page()
        .findElement(By.cssSelector("input[name='" + field + "'][value='" + choice + "']"))
        .click();
  }

  private static String chosen(String field) {
    return visit
        .page()
        .findElement(By.cssSelector("input[name='" + field + "']:checked"))
        .getDomAttribute("value");
  }
}
