package crumbtrail.report;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.sheet.SheetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class TextReportTest {
  static List<Path> cases() {
    return Scored.files(Path.of("cases"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void a_case_fits_eighty_columns_and_shows_a_cause_with_its_evidence(Path file)
      throws IOException {
    String text = text(Files.readString(file));

    assertFits(text);
    // A sound bake may have no cause at all to show.
    if (!file.getFileName().toString().startsWith("healthy-")) {
      assertThat(text).contains("Likely causes").contains("   for      ").contains("   change   ");
    }
    assertThat(text).doesNotContain("Exception").doesNotContain("crumbtrail.").doesNotContain("@");
    assertThat(text).doesNotContain("null").endsWith("\n");
  }

  @Test
  void the_likeliest_cause_stands_first_with_its_probability() throws IOException {
    String sheet = Files.readString(Path.of("cases", "over-proofed-tin-loaf.json"));
    Report report = Scored.PIPELINE.trace(SheetReader.read(sheet).sheet().orElseThrow());
    Report.RankedCause first = report.causes().get(0);

    String line =
        TextReport.of(report)
            .lines()
            .filter(one -> one.startsWith("1. "))
            .findFirst()
            .orElseThrow();

    assertThat(line).startsWith("1. " + first.name());
    assertThat(first.probability()).isBetween(0.9, 0.99);
    assertThat(line).endsWith(" " + Math.round(first.probability() * 100) + " %");
    assertThat(line.chars().filter(letter -> letter == '#').count())
        .isEqualTo(Math.round(first.probability() * 20));
  }

  @ParameterizedTest
  @ValueSource(ints = {60, 66, 75, 76, 79, 81, 100, 120})
  void every_line_and_both_plots_follow_the_width_of_the_page(int width) throws IOException {
    String sheet = Files.readString(Path.of("cases", "over-proofed-tin-loaf.json"));
    String text = TextReport.of(traced(sheet), width);

    assertThat(text.lines()).allMatch(line -> line.length() <= width);
    // An axis of a plot reaches to the edge, but for the room of its last label.
    assertThat(text.lines().filter(line -> line.matches(" +\\+-+")))
        .hasSize(2)
        .allMatch(line -> line.length() == width - 5);
    assertThat(text.lines().filter(line -> line.startsWith("   for ")))
        .anyMatch(line -> line.length() > width - 16);
  }

  private static Report traced(String sheet) {
    return Scored.PIPELINE.trace(SheetReader.read(sheet).sheet().orElseThrow());
  }

  @Test
  void the_diagnosis_in_the_readme_is_what_the_program_prints() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    int from = readme.indexOf("```\nLikely causes") + 4;
    List<String> shown = readme.substring(from, readme.indexOf("\n```", from)).lines().toList();

    List<String> printed =
        text(Files.readString(Path.of("cases", "over-proofed-tin-loaf.json"))).lines().toList();

    assertThat(shown).hasSizeGreaterThan(30);
    // Each calibration moves the percentages a little; the rest is held word for word.
    assertThat(printed.stream().map(TextReportTest::withoutPercent))
        .containsAll(
            shown.stream()
                .filter(line -> !line.contains("…"))
                .map(TextReportTest::withoutPercent)
                .toList());
    assertThat(printed)
        .anySatisfy(line -> assertThat(line).startsWith("2. bulk too long, dough old"));
  }

  @Test
  void five_causes_are_shown_and_five_more_named() throws IOException {
    String sheet = Files.readString(Path.of("cases", "over-proofed-tin-loaf.json"));

    String text = text(sheet);

    assertThat(text).contains("\n5. ").doesNotContain("\n6. ").contains("Less likely: ");
  }

  @Test
  void a_sheet_that_points_nowhere_asks_for_more() {
    String text = text("{\"seen\": [\"it hummed a Tuesday tune\"]}");

    assertThat(text).contains("Nothing on this sheet points to a cause");
    assertThat(text).contains("Not understood").contains("- it hummed a Tuesday tune");
    assertFits(text);
  }

  @Test
  void long_words_titles_and_lines_are_folded() {
    String text =
        text(
            """
            {"title": "%s", "seen": ["%s", "%s"],
             "formula": ["500 g bread flour", "300 g water", "20 g %s"]}
            """
                .formatted(
                    "a very long title ".repeat(12),
                    "x".repeat(300),
                    "hummed a tune ".repeat(20),
                    "y".repeat(120)));

    assertFits(text);
    assertThat(text.replaceAll("[^x]", "")).hasSizeGreaterThanOrEqualTo(300);
  }

  @Test
  void what_would_steer_the_terminal_is_shown_as_a_blank() {
    String text = text("{\"title\": \"a\\u001b[2Jb\\u009b31m\\rc\", \"seen\": [\"\\u0007 ding\"]}");

    assertThat(text.chars().filter(letter -> letter != '\n').noneMatch(Character::isISOControl))
        .isTrue();
    assertThat(text).startsWith("a [2Jb");
  }

  private static String withoutPercent(String line) {
    return line.replaceAll(" +#*[ <>]*[0-9]+ %$", "");
  }

  private static void assertFits(String text) {
    assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
  }

  private static String text(String sheet) {
    return TextReport.of(Scored.PIPELINE.trace(SheetReader.read(sheet).sheet().orElseThrow()));
  }
}
