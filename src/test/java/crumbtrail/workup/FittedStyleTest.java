package crumbtrail.workup;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.knowledge.Style;
import java.util.List;
import org.junit.jupiter.api.Test;

class FittedStyleTest {
  private static final Style TOLD = Bakes.CATALOGUE.style("white-tin-loaf").orElseThrow();

  @Test
  void a_yeasted_loaf_stays_what_it_was_called() {
    Style style = style("'500 g bread flour', '5 g instant yeast'");

    assertThat(style).isEqualTo(TOLD);
  }

  @Test
  void a_loaf_raised_by_starter_alone_is_a_sourdough_and_its_clock_is_not_that_of_yeast() {
    Style style = style("'500 g bread flour', '100 g sourdough starter'");

    assertThat(style.tags()).containsAll(TOLD.tags()).contains("sourdough");
    assertThat(TOLD.ranges()).containsKeys("yeast", "bulk time", "proof time");
    assertThat(style.ranges()).doesNotContainKeys("yeast", "bulk time", "proof time");
    assertThat(style.range("salt")).isEqualTo(TOLD.range("salt"));
  }

  @Test
  void a_sourdough_style_keeps_its_own_clock() {
    Style told = Bakes.CATALOGUE.style("sourdough-loaf").orElseThrow();
    Style style =
        Bakes.work(
                """
                {'style': 'sourdough loaf',
                 'formula': ['500 g bread flour', '300 g water', '100 g sourdough starter']}
                """)
            .style();

    assertThat(style.range("bulk time")).isEqualTo(told.range("bulk time")).isPresent();
  }

  @Test
  void starter_for_flavour_beside_yeast_makes_no_sourdough() {
    Style style = style("'500 g bread flour', '100 g sourdough starter', '5 g instant yeast'");

    assertThat(style.tags()).doesNotContain("sourdough");
    assertThat(style.range("yeast")).isEqualTo(TOLD.range("yeast"));
  }

  @Test
  void whole_grain_counts_from_two_fifths_and_rye_from_one_fifth_of_the_flour() {
    String yeast = ", '5 g instant yeast'";

    assertThat(tags("'590 g bread flour', '410 g whole wheat flour'" + yeast))
        .contains("wholegrain");
    assertThat(tags("'610 g bread flour', '390 g whole wheat flour'" + yeast))
        .doesNotContain("wholegrain");
    assertThat(tags("'790 g bread flour', '210 g rye flour'" + yeast)).contains("rye");
    assertThat(tags("'810 g bread flour', '190 g rye flour'" + yeast)).doesNotContain("rye");
  }

  private static List<String> tags(String lines) {
    return style(lines).tags();
  }

  private static Style style(String lines) {
    return Bakes.work(
            "{'style': 'white tin loaf', 'formula': [" + lines + ", '300 g water', '10 g salt']}")
        .style();
  }
}
