package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.bakelog.SomeBakes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;

/** A bake on its way into the log and out again, in a real browser. */
@Tag("packaged")
class LogIT {
  @RegisterExtension static final Visit visit = new Visit();

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void from_a_failed_loaf_into_the_log_to_what_it_was(boolean scripts) throws IOException {
    visit.stop("report");
    visit.scripts(scripts);
    visit.click("#keep ~ details > summary");
    visit.awaited(By.id("label")).clear();
    visit.type("label", "Journey " + scripts);
    visit.type("note", "the proofer was at 32");
    visit.click("#outcome option[value=failed]");
    visit.follow("form.keep button[type=submit]");
    visit.says(".done", "The bake is in the log.");
    visit.says("h1", "Journey " + scripts);
    if (scripts) {
      visit.browser().keepPicture("journey-kept");
    }

    visit.click(By.xpath("(//fieldset[@class='verdict'])[1]//label[1]"));
    visit.follow("form.judge button[type=submit]");
    visit.says(".done", "Noted what you found out.");

    visit.follow(By.linkText("Bake log"));
    visit.awaited(By.id("words")).sendKeys("proofer journey");
    visit.follow("form.search button");
    assertThat(visit.awaited(By.cssSelector(".bakes li")).getText())
        .contains("Journey " + scripts, "failed", "Confirmed: final proof too long");

    visit.follow(".bakes h2 a");
    visit.follow(By.linkText("Open the findings again"));
    visit.says("#causes", "Likely causes");
    visit.follow(By.linkText("Back to this bake in the log"));
    visit.follow(By.linkText("Delete this bake"));
    visit.follow("main form button[type=submit]");
    visit.says(".done", "The bake is deleted.");
  }

  @Test
  void a_photo_is_added_seen_and_deleted() throws IOException {
    Path file = folder.resolve("crumb.jpg");
    Files.write(file, SomeBakes.picture(60, 40, "jpeg"));
    visit.open("/log/2");
    visit.awaited(By.id("photo")).sendKeys(file.toString());
    visit.click("form.photo button");
    visit.says(".done", "The photo is added.");
    visit.until("document.querySelector('.photos img').naturalWidth === 60");
    visit.click(".photos button");
    visit.says(".done", "The photo is deleted.");
    assertThat(visit.page().findElements(By.cssSelector(".photos img"))).isEmpty();
  }

  @Test
  void a_list_on_paper_is_a_list_and_nothing_else() {
    visit.open("/log");
    assertThat(
            visit.onPaper(
                "return [...document.querySelectorAll('.search, .more-of-log, .masthead nav')]"
                    + ".every(one => getComputedStyle(one).display === 'none')"
                    + " && document.querySelectorAll('.bakes li').length > 0"))
        .isEqualTo(true);
  }
}
