package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** The pictures of rise and bake in a real browser, on the report page that needs no server. */
@Tag("packaged")
class PicturesIT {
  @TempDir private static Path folder;

  @RegisterExtension static final Visit visit = new Visit();

  @BeforeEach
  void open() throws IOException {
    Path file = folder.resolve("report.html");
    Files.writeString(file, HtmlReport.page(Samples.with(Samples.courses(""))));
    visit.page().get(file.toUri().toString());
  }

  @Test
  void aDeskHasTheWidePicturesAndAPhoneTheNarrowOnes() throws IOException {
    assertShown(1200, "wide");
    visit.browser().keepPicture("pictures-1200");
    assertShown(700, "wide");
    assertShown(360, "narrow");
    visit.browser().keepPicture("pictures-360");
    assertShown(320, "narrow");
    assertThat(visit.browser().print("pictures").length).isGreaterThan(1_000);
  }

  @Test
  void nothingSticksOutWithTheNumbersUnfolded() {
    for (int width : new int[] {1200, 360, 320}) {
      visit.browser().size(width, 800);
      visit
          .page()
          .findElements(By.cssSelector("details:not([open]) > summary"))
          .forEach(WebElement::click);
      assertThat(visit.script("return document.documentElement.scrollWidth"))
          .isEqualTo((long) width);
      // What the browser measures, against the view box: no word is cut off at an edge.
      assertThat(
              visit.script(
                  "return [...document.querySelectorAll('svg.picture text')].filter(t => {"
                      + " const b = t.getBBox(), v = t.ownerSVGElement.viewBox.baseVal;"
                      + " return b.width > 0 && (b.x < -1 || b.x + b.width > v.width + 1"
                      + " || b.y < -1 || b.y + b.height > v.height + 1);"
                      + "}).map(t => t.textContent).join('; ')"))
          .isEqualTo("");
    }
  }

  @Test
  void the_bar_of_a_probability_can_be_seen() throws IOException {
    Path file = folder.resolve("causes.html");
    Files.writeString(file, HtmlReport.page(Samples.failed("words")));
    visit.page().get(file.toUri().toString());
    Object heights =
        visit.script(
            "return [...document.querySelectorAll('.cause svg.bar')].map(bar => {"
                + " const style = getComputedStyle(bar);"
                + " return bar.clientHeight - parseFloat(style.paddingTop)"
                + " - parseFloat(style.paddingBottom); })");

    assertThat((List<?>) heights)
        .isNotEmpty()
        .allSatisfy(height -> assertThat(((Number) height).doubleValue()).isGreaterThan(6));
  }

  @Test
  void lettersAreLargeEnoughOnAPhone() {
    visit.browser().size(360, 740);
    Object smallest =
        visit.script(
            "return Math.min(...[...document.querySelectorAll('svg.narrow')].map(s =>"
                + " s.getBoundingClientRect().width / s.viewBox.baseVal.width"
                + " * parseFloat(getComputedStyle(s).fontSize)))");
    assertThat(((Number) smallest).doubleValue()).isGreaterThan(11);
  }

  // Of the two widths of a picture one is shown; the other is not read out either.
  private static void assertShown(int width, String css) {
    visit.browser().size(width, 800);
    List<WebElement> shown =
        visit.page().findElements(By.cssSelector("svg.picture")).stream()
            .filter(WebElement::isDisplayed)
            .toList();
    assertThat(shown).hasSize(2);
    for (WebElement picture : shown) {
      assertThat(picture.getDomAttribute("class")).contains(css);
      assertThat(picture.getAriaRole()).isIn("img", "image");
      assertThat(picture.getAccessibleName()).contains("°C");
    }
  }
}
