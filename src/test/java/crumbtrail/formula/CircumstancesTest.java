package crumbtrail.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a formula says besides numbers: all of it, and nothing that it does not say. */
class CircumstancesTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "500 g bread flour | 9 g fine salt | 5 g instant yeast | salt-weighed",
        "4 cups bread flour | 9 g fine salt | 5 g instant yeast"
            + " | flour-by-volume, measured-by-cup, salt-weighed",
        "500 g bread flour | 2 tsp fine salt | 5 g instant yeast | salt-by-volume",
        "500 g bread flour | 1 tbsp coarse salt | 5 g instant yeast"
            + " | coarse-salt-by-volume, salt-by-volume, salt-coarse-by-spoon",
        "500 g bread flour | 1 tbsp salt, flaky | 5 g instant yeast"
            + " | coarse-salt-by-volume, salt-by-volume, salt-coarse-by-spoon",
        "500 g bread flour | 1 tbsp salt, finely ground | 5 g instant yeast | salt-by-volume",
        "500 g bread flour | 9 g coarse salt | 5 g instant yeast | salt-weighed",
        "500 g bread flour | 9 g fine salt | 1 tsp instant yeast | salt-weighed, yeast-by-volume",
        "500 g bread flour | 9 g fine salt | 15 g fresh yeast | fresh-yeast, salt-weighed",
        "500 g bread flour | 9 g fine salt | 6 g active dry yeast | active-dry-yeast, salt-weighed",
        "500 g bread flour | 9 g fine salt | 5 g osmotolerant yeast"
            + " | osmotolerant-yeast, salt-weighed, yeast-osmotolerant",
        "500 g self-raising flour | 9 g fine salt | 5 g instant yeast"
            + " | salt-weighed, self-raising-flour",
        "500 g rice flour | 9 g fine salt | 5 g instant yeast"
            + " | gluten-free-flour, gluten-free-flour-used, salt-weighed",
        "500 g bread flour | 9 g potassium chloride | 5 g instant yeast"
            + " | salt-substitute-used, salt-weighed",
        "500 g bread flour | 9 g fine salt | 100 g sourdough starter | salt-weighed, starter-used",
        "500 g bread flour | 9 g fine salt | 10 g baking powder"
            + " | chemical-leavening, no-yeast-line, salt-weighed",
        "500 g bread flour | 5 g instant yeast | 10 g raisins | no-salt-line",
        "500 g bread flour | 9 g fine salt | 10 g raisins | no-yeast-line, salt-weighed",
      })
  void every_line_says_its_own_and_no_more(String flour, String salt, String yeast, String said) {
    Formula formula = Doughs.of(flour, "300 g water", salt, yeast);

    assertThat(new TreeSet<>(formula.circumstances())).containsExactly(said.split(", "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 eggs | eggs-by-count",
        "100 g egg | ",
        "5 g diastatic malt powder | malt-used",
        "2 g dough improver | improver-used",
        "1 g ascorbic acid | improver-used",
        "5 g lecithin | improver-used",
        "100 g old dough | old-dough-added, starter-used",
        "30 g raisins | ",
      })
  void what_is_put_in_besides(String line, String said) {
    TreeSet<String> more =
        new TreeSet<>(
            Doughs.of(
                    "500 g bread flour", "300 g water", "9 g fine salt", "5 g instant yeast", line)
                .circumstances());
    assertThat(more.remove("salt-weighed")).isTrue();
    assertThat(String.join(", ", more)).isEqualTo(said == null ? "" : said);
  }

  @Test
  void salt_and_yeast_of_a_part_made_ahead_are_not_missing() {
    Formula formula =
        Doughs.with(
            List.of(Doughs.part("sponge", "100 g flour", "60 g water", "2 g yeast", "9 g salt")),
            "400 g bread flour",
            "240 g water");

    assertThat(formula.circumstances())
        .contains("preferment-used", "salt-weighed")
        .doesNotContain("no-yeast-line", "no-salt-line", "starter-used");
  }
}
