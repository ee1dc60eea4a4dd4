package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** The tour in the documentation and its pictures. */
class TourPageTest {
  private static final Path PICTURES = Path.of("docs/pictures");
  private static final Pattern SHOWN = Pattern.compile("!\\[([^]]*)]\\(pictures/([^)]+)\\)");
  private static final int HEAVIEST = 120_000;

  @Test
  void every_picture_that_the_tour_shows_is_there_and_every_picture_is_shown() throws IOException {
    try (Stream<Path> files = Files.list(PICTURES)) {
      assertThat(shown().stream().map(one -> one.group(2)))
          .isNotEmpty()
          .doesNotHaveDuplicates()
          .containsExactlyInAnyOrderElementsOf(
              files.map(file -> file.getFileName().toString()).toList());
    }
  }

  @Test
  void every_picture_is_small_can_be_read_and_is_told_in_words() throws IOException {
    for (MatchResult one : shown()) {
      Path file = PICTURES.resolve(one.group(2));
      assertThat(one.group(1).length()).as("words for %s", file).isGreaterThan(40);
      assertThat(Files.size(file)).as("bytes of %s", file).isLessThan(HEAVIEST);
      assertThat(ImageIO.read(file.toFile()).getWidth())
          .as("width of %s", file)
          .isBetween(320, 800);
    }
  }

  @Test
  void the_front_page_leads_to_the_tour() throws IOException {
    assertThat(Files.readString(Path.of("README.md"))).contains("(docs/tour.md)");
  }

  private static List<MatchResult> shown() throws IOException {
    return SHOWN.matcher(Files.readString(Path.of("docs/tour.md"))).results().toList();
  }
}
