package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every page in every state: by the rules of axe, in both schemes, on a phone and on a desk; how
 * much of it is transferred; and whether anything moves while it is shown.
 */
@Tag("packaged")
class TourIT {
  /** Bytes of a page with all that it fetches. */
  private static final long HEAVIEST = 150_000;

  // What the scheme and the width of a page can change.
  private static final List<String> COLOURS = List.of("color-contrast", "link-in-text-block");
  private static final List<String> ROOM =
      List.of("target-size", "scrollable-region-focusable", "label", "heading-order", "region");

  private static Browser browser;
  private static Served served;

  @BeforeAll
  static void start() throws IOException {
    browser = Browser.start();
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

  static List<Tour> stops() {
    return Tour.stops();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("stops")
  void a_page_is_sound_light_and_still(Tour stop) throws IOException {
    browser.scheme("light");
    browser.size(1280, 900);
    browser.freshCache();
    // A draft that an earlier stop left would be put back, and would move the page.
    browser.script("try { localStorage.clear() } catch (e) { /* no page yet */ }");
    stop.visit(browser, served);
    assertThat(browser.console()).noneMatch(line -> line.contains("Content Security Policy"));
    assertThat(browser.transferred()).as("bytes of %s", stop).isBetween(1L, HEAVIEST);
    assertThat(browser.shifted()).as("how far %s shifts", stop).isZero();
    pictures(stop);
    browser.unfold();
    assertClean(Axe.faults(browser.driver()), stop, "on a desk");
    browser.scheme("dark");
    assertClean(Axe.faults(browser.driver(), COLOURS), stop, "in the dark");
    browser.scheme("light");
    browser.size(320, 640);
    assertClean(Axe.faults(browser.driver(), ROOM), stop, "on a phone");
    assertThat(browser.script("return document.documentElement.scrollWidth"))
        .as("%s scrolls sideways on a phone", stop)
        .isEqualTo(320L);
  }

  private static void assertClean(List<String> faults, Tour stop, String where) {
    assertThat(faults).as("%s, %s", stop, where).isEmpty();
  }

  // As they are first seen, with all that can be unfolded still folded.
  private static void pictures(Tour stop) throws IOException {
    browser.keepPicture(stop.name() + "-1280");
    browser.scheme("dark");
    browser.size(768, 900);
    browser.keepPicture(stop.name() + "-768-dark");
    browser.scheme("light");
    browser.size(320, 640);
    browser.keepPicture(stop.name() + "-320");
    browser.size(1280, 900);
  }
}
