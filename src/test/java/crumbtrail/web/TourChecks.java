package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What every page must be in every state: sound by the rules of axe, in both schemes, on a phone
 * and on a desk; light; and still while it is shown. Parts of the tour are classes of their own, so
 * that two browsers can go round at the same time.
 */
@Tag("packaged")
abstract class TourChecks {
  /** Bytes of a page with all that it fetches. */
  private static final long HEAVIEST = 150_000;

  // What the scheme and the width of a page can change.
  private static final List<String> COLOURS = List.of("color-contrast", "link-in-text-block");
  private static final List<String> ROOM =
      List.of("target-size", "scrollable-region-focusable", "label", "heading-order", "region");

  @RegisterExtension static final Visit visit = new Visit();

  /**
   * Part of the tour, or what {@code -Dcrumbtrail.tour=vary} leaves of it: names that hold that.
   */
  static Stream<Tour> stops(Predicate<Tour> part) {
    String some = System.getProperty("crumbtrail.tour", "");
    return Tour.stops().stream().filter(part).filter(stop -> stop.name().contains(some));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("stops")
  void a_page_is_sound_light_and_still(Tour stop) throws IOException {
    visit.browser().size(1280, 900);
    visit.browser().freshCache();
    stop.visit(visit.browser(), visit.served());
    assertThat(visit.browser().console())
        .noneMatch(line -> line.contains("Content Security Policy"));
    assertThat(visit.browser().transferred()).as("bytes of %s", stop).isBetween(1L, HEAVIEST);
    assertThat(visit.browser().shifted()).as("how far %s shifts", stop).isZero();
    pictures(stop);
    visit.browser().unfold();
    assertClean(Axe.faults(visit.page()), stop, "on a desk");
    visit.browser().scheme("dark");
    assertClean(Axe.faults(visit.page(), COLOURS), stop, "in the dark");
    visit.browser().scheme("light");
    visit.browser().size(320, 640);
    assertClean(Axe.faults(visit.page(), ROOM), stop, "on a phone");
    assertThat(visit.script("return document.documentElement.scrollWidth"))
        .as("%s scrolls sideways on a phone", stop)
        .isEqualTo(320L);
  }

  private static void assertClean(List<String> faults, Tour stop, String where) {
    assertThat(faults).as("%s, %s", stop, where).isEmpty();
  }

  // As they are first seen, with all that can be unfolded still folded.
  private static void pictures(Tour stop) throws IOException {
    visit.browser().keepPicture(stop.name() + "-1280");
    visit.browser().scheme("dark");
    visit.browser().size(768, 900);
    visit.browser().keepPicture(stop.name() + "-768-dark");
    visit.browser().scheme("light");
    visit.browser().size(320, 640);
    visit.browser().keepPicture(stop.name() + "-320");
    visit.browser().size(1280, 900);
  }
}
