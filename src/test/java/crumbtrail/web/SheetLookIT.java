package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;

/** How the bake sheet looks and what it weighs: on a phone, on a desk, on paper. */
@Tag("packaged")
class SheetLookIT {
  private static final String RECIPE =
      "500 g bread flour\n310 g water\n10 g fine salt\n5 g instant yeast";

  @RegisterExtension static final Visit visit = new Visit();

  @BeforeEach
  void open_a_blank_sheet() {
    open();
    visit.browser().console();
  }

  @Test
  void pictures_are_fetched_only_where_a_moment_is_opened() {
    assertThat(fetched("/pictures/")).isZero();
    visit.awaited(By.cssSelector("#pick-dough > summary")).click();
    visit.until(
        "performance.getEntriesByType('resource').some(r => r.name.includes('/pictures/'))");
    long shown = visit.page().findElements(By.cssSelector("#pick-dough .look")).size();
    assertThat(fetched("/pictures/")).isBetween(1L, shown);
    Object largest =
        visit.script(
            "return Math.max(...performance.getEntriesByType('resource')"
                + ".filter(r => r.name.includes('/pictures/')).map(r => r.transferSize))");
    assertThat(((Number) largest).longValue()).as("compressed").isLessThan(8_000);
    visit.scripts(false);
    open();
    assertThat(fetched("/pictures/")).as("without scripts").isZero();
  }

  @Test
  void it_fits_a_phone_and_the_send_button_covers_no_field() throws IOException {
    for (String scheme : List.of("light", "dark")) {
      visit.browser().scheme(scheme);
      visit.browser().size(320, 640);
      open();
      visit.type("recipe", "");
      visit.type("recipe", RECIPE + "\n1 cup of something unheard of");
      visit.until("document.querySelectorAll('#layout tbody tr').length === 5");
      openAllStages();
      assertThat(visit.script("return document.documentElement.scrollWidth")).isEqualTo(320L);
      assertThat(
              visit.script(
                  "const box = document.getElementById('layout');"
                      + "return box.querySelector('table').getBoundingClientRect().right"
                      + " <= box.getBoundingClientRect().right - 8"))
          .isEqualTo(true);
      assertThat(tooSmall()).as("targets under 44 px").isEqualTo("");
      visit.script("document.getElementById('room').focus()");
      assertThat(
              visit.script(
                  "const f = document.activeElement.getBoundingClientRect();"
                      + "const b = document.querySelector('.send.first').getBoundingClientRect();"
                      + "return f.bottom <= b.top"))
          .isEqualTo(true);
      // Seventy pictures in one are more than a busy machine draws in time.
      visit
          .page()
          .executeScript(
              "document.querySelectorAll('[id^=pick-]').forEach(p => p.open = p.id === 'pick-crust')");
      visit.browser().keepPicture("sheet-320-" + scheme);
      visit.browser().size(768, 1024);
      visit.browser().keepPicture("sheet-768-" + scheme);
      visit.browser().size(1280, 900);
      visit.browser().keepPicture("sheet-1280-" + scheme);
      visit.script("localStorage.clear(); document.querySelector('form').reset()");
    }
  }

  @Test
  void nothing_shifts_while_the_sheet_loads_and_it_is_light() {
    visit.browser().freshCache();
    open();
    assertThat(visit.browser().shifted()).isZero();
    assertThat(visit.browser().transferred()).isBetween(10_000L, 150_000L);
  }

  @Test
  void a_draft_that_comes_back_moves_nothing() {
    visit.type("seen", "flat loaf");
    visit.type("recipe", RECIPE);
    visit.until("document.querySelectorAll('#layout tbody tr').length === 4");
    // Seen from its top, as one who comes back finds it; farther down, the recipe laid out anew
    // moves what is below it.
    visit.open("/about");
    open();
    visit.until("document.getElementById('draft-note').textContent.includes('is back')");
    visit.until("document.querySelectorAll('#layout tbody tr').length === 4");
    assertThat(visit.browser().shifted()).isZero();
  }

  @Test
  void paper_has_an_empty_sheet_to_fill_in_by_hand() throws IOException {
    assertThat(visit.browser().print("sheet-empty").length).isGreaterThan(1_000);
    assertThat(
            visit.onPaper(
                "const shown = id => document.querySelector(id).getClientRects().length > 0;"
                    + "return shown('#room') && shown('#bulk-0-time')"
                    + " && !shown('.send.first button') && !shown('.units')"))
        .isEqualTo(true);
  }

  // Everything that can be pressed, but for links within a sentence.
  private static Object tooSmall() {
    return visit.script(
        "return [...document.querySelectorAll('form :is(button, summary, select, textarea,"
            + " input:not(.away), .choice label, .afresh), .masthead a')]"
            + ".filter(e => e.getClientRects().length)"
            + ".filter(e => { const b = e.getBoundingClientRect();"
            + " return b.height < 43.5 || b.width < 43.5; })"
            + ".map(e => e.tagName + ' ' + e.id + ' ' + e.textContent.trim()).join('; ')");
  }

  private static long fetched(String part) {
    return ((Number)
            visit
                .page()
                .executeScript(
                    "return performance.getEntriesByType('resource')"
                        + ".filter(r => r.name.includes(arguments[0])).length",
                    part))
        .longValue();
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
}
