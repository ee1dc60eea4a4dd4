package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;

/** What comes out of the printer: how many leaves of A4, and what stands on them. */
@Tag("packaged")
class PaperIT {
  private static final int MOST_LEAVES = 3;

  @RegisterExtension static final Visit visit = new Visit();

  @ParameterizedTest
  @ValueSource(
      strings = {"over-proofed-tin-loaf", "half-done-rye", "forgotten-us-whole-wheat-hearth"})
  void the_findings_take_three_leaves_at_most(String name) throws IOException {
    openFindings(name);
    List<String> causes =
        visit.page().findElements(By.cssSelector(".cause h3")).stream()
            .map(cause -> cause.getDomProperty("textContent"))
            .toList();
    assertThat(causes).hasSizeGreaterThan(3);
    Printed paper = print("paper-" + name);
    assertThat(paper.leaves()).isBetween(1, MOST_LEAVES);
    assertThat(causes.subList(0, 3))
        .allSatisfy(cause -> assertThat(paper.text()).containsIgnoringCase(cause));
    assertThat(paper.text())
        .contains("Left out on paper: " + (causes.size() - 3) + " further")
        .doesNotContain(causes.size() - 3 + " further causes Too")
        .doesNotContain("The rule behind it", "Sources (", "I cannot tell", "Another bake")
        .doesNotContain("Turn a knob", "Skip to the content", "Save the bake sheet");
  }

  @Test
  void what_was_unfolded_on_the_screen_makes_the_paper_no_longer() throws IOException {
    openFindings("half-done-rye");
    visit.browser().unfold();
    assertThat(print("paper-unfolded").leaves()).isBetween(1, MOST_LEAVES);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "over-proofed-tin-loaf",
        "young-poolish-baguette",
        "floury-bench-rolls",
        "milk-scalded-the-yeast"
      })
  void the_next_bake_is_one_leaf(String name) throws IOException {
    new Tour("next", "/next", Map.of("sheet", sheet(name))).visit(visit.browser(), visit.served());
    Printed paper = print("paper-next-" + name);
    assertThat(paper.leaves()).isEqualTo(1);
    assertThat(paper.text())
        .contains("Date", "Pieces", "Oven", "Baked in or on", "What is different", " tsp")
        .contains("Risk on the next bake of", "How it came out")
        .doesNotContain("Fit it to your day", "Print the next bake", "Another bake");
  }

  @Test
  void the_findings_lead_to_the_leaf_and_its_button_prints() throws IOException {
    openFindings("over-proofed-tin-loaf");
    visit
        .page()
        .executeCdpCommand(
            "Page.addScriptToEvaluateOnNewDocument",
            Map.of("source", "window.printed = 0; window.print = () => window.printed++;"));
    visit.click("form[action='/next#print'] button");
    visit.until("window.printed === 1");
    assertThat(visit.page().getCurrentUrl()).endsWith("/next");
    visit.click("[data-print]");
    visit.until("window.printed === 2");
  }

  @Test
  void without_scripts_the_leaf_says_how_it_is_printed() throws IOException {
    openFindings("over-proofed-tin-loaf");
    visit.scripts(false);
    visit.click("form[action='/next#print'] button");
    assertThat(visit.text(".slip .send")).contains("from the menu of the browser");
    assertThat(visit.awaited(By.cssSelector("[data-print]")).isDisplayed()).isFalse();
  }

  private static void openFindings(String name) throws IOException {
    visit.open("/trace?sheet=" + SheetLink.pack(sheet(name)).orElseThrow());
  }

  private static String sheet(String name) throws IOException {
    return Files.readString(Path.of("cases", name + ".json"));
  }

  /**
   * @param text on all leaves, each run of white space one space
   */
  private record Printed(int leaves, String text) {}

  private static Printed print(String name) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(visit.browser().print(name))) {
      return new Printed(
          pdf.getNumberOfPages(), new PDFTextStripper().getText(pdf).replaceAll("\\s+", " "));
    }
  }
}
