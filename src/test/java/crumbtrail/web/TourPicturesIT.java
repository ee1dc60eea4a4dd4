package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;

/**
 * Takes the pictures of docs/tour.md. They go beside the packaged jar; with {@code
 * -Dcrumbtrail.write=true} they replace those of the documentation.
 */
@Tag("packaged")
class TourPicturesIT {
  /** Bytes of one picture. */
  private static final int HEAVIEST = 120_000;

  private static final int DESK = 800;
  private static final int PHONE = 360;

  @RegisterExtension static final Visit visit = new Visit();

  @Test
  void the_bake_sheet_with_a_recipe_laid_out() throws IOException {
    visit.browser().size(DESK, 900);
    visit.open("/");
    visit.type("recipe", Tour.tinLoaf().get("recipe"));
    visit.until("document.querySelectorAll('#layout tbody tr').length === 4");
    from("#part-bread");
    take("bake-sheet", DESK, 900);
  }

  @Test
  void the_signs_to_pick_from() throws IOException {
    visit.browser().size(DESK, 900);
    visit.open("/");
    visit.click("#pick-crust > summary");
    visit.click("label[for='sign-pale-crust']");
    visit.until("performance.getEntriesByType('resource').some(r => r.name.includes('.svg'))");
    from("#pick-crust");
    take("signs", DESK, 760);
  }

  @Test
  void the_findings() throws IOException {
    visit.stop("report");
    take("findings", DESK, 1000);
    visit.browser().scheme("dark");
    take("dark", DESK, 760);
    visit.browser().scheme("light");
    take("phone", PHONE, 760);
  }

  @Test
  void the_other_pages() throws IOException {
    shoot("next", "next-bake", 900);
    shoot("precheck", "before-you-bake", 820);
    shoot("cause", "cause-card", 820);
    shoot("mystery-asked", "mystery", 820);
    shoot("handbook", "handbook", 760);
  }

  @Test
  void a_knob_turned() throws IOException {
    visit.stop("vary-turned");
    from("#vary");
    take("knob", DESK, 620);
  }

  private static void shoot(String stop, String name, int height) throws IOException {
    visit.stop(stop);
    take(name, DESK, height);
  }

  // Not the top of the page but what is to be shown.
  private static void from(String css) {
    visit
        .page()
        .executeScript(
            "arguments[0].scrollIntoView({block: 'start'}); document.activeElement.blur();",
            visit.awaited(By.cssSelector(css)));
  }

  private static void take(String name, int width, int height) throws IOException {
    visit.browser().size(width, height);
    byte[] small = SmallPicture.of(visit.page().getScreenshotAs(OutputType.BYTES));
    assertThat(small.length).as(name).isBetween(1_000, HEAVIEST);
    Path folder =
        Boolean.getBoolean("crumbtrail.write")
            ? Path.of("docs/pictures")
            : Served.jar().resolveSibling("screenshots/tour");
    Files.write(Files.createDirectories(folder).resolve(name + ".png"), small);
  }
}
