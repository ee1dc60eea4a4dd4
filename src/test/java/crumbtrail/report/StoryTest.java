package crumbtrail.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import crumbtrail.sheet.SheetReader;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StoryTest {
  static List<Path> cases() {
    return Scored.files(Path.of("cases"));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void the_first_causes_are_told_in_whole_sentences(Path file) {
    List<String> stories =
        trace(Scored.json(file)).causes().stream().limit(3).map(Report.RankedCause::story).toList();

    assertThat(stories)
        .allSatisfy(
            story ->
                assertThat(story)
                    .matches("[A-Z\"].*[.!]")
                    .doesNotContain("{", "..", " .", "null", "Against it: .")
                    .hasSizeLessThan(700));
  }

  @Test
  void the_baker_meets_the_own_numbers_and_words() {
    String story =
        trace(Scored.json(Path.of("cases", "over-proofed-tin-loaf.json"))).causes().get(0).story();

    assertThat(story)
        .contains("2.65 times ready, where 0.8–1.25 times ready is usual")
        .contains("You saw \"went into the oven proud of the rim and came out with a crater\"")
        .contains("the sheet tells of: dough forgotten");
  }

  @Test
  void what_was_told_in_favour_is_not_told_against_in_the_same_breath() {
    Report report = trace(Scored.json(Path.of("src/test/resources/contract-sheet.json")));
    String story = report.causes().get(0).story();

    assertThat(story)
        .contains("crust too pale")
        .doesNotContain("Against it: you saw crust too pale");
  }

  private static Report trace(JsonNode sheet) {
    return Scored.PIPELINE.trace(SheetReader.read(sheet).sheet().orElseThrow());
  }
}
