package crumbtrail.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.pantry.Pantry;
import crumbtrail.report.RecipeLayout.RecipeLine;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.Problem;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

/** A recipe laid out while it is being typed. */
class RecipeLayoutTest {
  private static final Pantry PANTRY = RuleBase.bundled().pantry();

  @Test
  void every_line_has_its_grams_and_its_percent_of_the_flour() {
    RecipeLayout layout =
        RecipeLayout.ofRecipe(
            "500 g bread flour\n310 g water\n10 g salt\n5 g instant yeast", PANTRY);
    assertThat(layout.lines())
        .extracting(RecipeLine::written, RecipeLine::grams, RecipeLine::percent)
        .containsExactly(
            tuple("500 g bread flour", 500.0, 100.0),
            tuple("310 g water", 310.0, 62.0),
            tuple("10 g salt", 10.0, 2.0),
            tuple("5 g instant yeast", 5.0, 1.0));
    assertThat(layout.formula().hydration().liquid()).isEqualTo(62);
    assertThat(layout.salt()).isEqualTo(2);
    assertThat(layout.yeast()).isEqualTo(1);
    assertThat(layout.notUnderstood()).isEmpty();
    assertThat(layout.problems()).isEmpty();
  }

  @Test
  void a_line_that_cannot_be_used_does_not_hide_the_others() throws JsonProcessingException {
    RecipeLayout layout =
        RecipeLayout.of(
            new ObjectMapper()
                .readTree(
                    "{\"formula\":[\"500 g bread flour\",{\"ingredient\":\"water\",\"amount\":310},"
                        + "{\"ingredient\":\"salt\",\"amount\":\"10 g\"}],\"colour\":\"brown\","
                        + "\"process\":{\"room\":21}}"),
            PANTRY);
    assertThat(layout.lines())
        .extracting(RecipeLine::ingredient)
        .containsExactly("bread flour", "water", "table salt");
    assertThat(layout.lines().get(1).grams()).isNull();
    assertThat(layout.salt()).isEqualTo(2);
    assertThat(layout.problems())
        .extracting(Problem::where)
        .containsExactlyInAnyOrder("colour", "formula[1].amount", "process.room");
  }

  @Test
  void what_no_baker_keeps_in_the_pantry_is_told_word_for_word() {
    RecipeLayout layout = RecipeLayout.ofRecipe("500 g flour\n20 g moondust", PANTRY);
    assertThat(layout.notUnderstood())
        .singleElement()
        .satisfies(line -> assertThat(line.written()).isEqualTo("20 g moondust"));
  }

  @Test
  void lines_of_a_preferment_stand_under_its_name_on_all_the_flour() {
    RecipeLayout layout =
        RecipeLayout.ofRecipe(
            "Poolish:\n100 g bread flour\n100 g water\n0.1 g instant yeast\n\nDough:\n"
                + "400 g bread flour\n210 g water\n10 g salt",
            PANTRY);
    assertThat(layout.lines())
        .filteredOn(line -> !line.part().isEmpty())
        .hasSize(3)
        .allSatisfy(line -> assertThat(line.part()).isEqualToIgnoringCase("poolish"))
        .first()
        .satisfies(line -> assertThat(line.percent()).isEqualTo(20));
  }

  @Test
  void a_recipe_in_percent_has_no_grams() {
    RecipeLayout layout =
        RecipeLayout.ofRecipe("100% bread flour\n65% water\n2% salt\n1% yeast", PANTRY);
    assertThat(layout.lines()).hasSize(4);
    assertThat(layout.lines()).allSatisfy(line -> assertThat(line.grams()).isNull());
    assertThat(layout.lines())
        .extracting(RecipeLine::percent)
        .containsExactly(100.0, 65.0, 2.0, 1.0);
  }

  @Test
  void a_measure_is_weighed_with_its_spread_and_a_weight_has_none() {
    RecipeLayout layout =
        RecipeLayout.ofRecipe("500 g bread flour\n1 cup water\n1 tsp instant yeast", PANTRY);
    RecipeLine water = layout.lines().get(1);
    // A US cup is 236.588 ml, a teaspoon a 48th of it.
    assertThat(water.grams()).isEqualTo(236.6, within(1.0));
    assertThat(water.millilitres()).isEqualTo(236.6, within(1.0));
    assertThat(layout.lines().get(0).low()).isNull();
    RecipeLine yeast = layout.lines().get(2);
    assertThat(yeast.low()).isLessThan(yeast.grams());
    assertThat(yeast.high()).isGreaterThan(yeast.grams());
    assertThat(yeast.millilitres()).isEqualTo(4.93, within(0.1));
  }

  @Test
  void what_is_open_is_told_with_what_would_do() {
    RecipeLayout layout =
        RecipeLayout.ofRecipe("500 g flour\n20 g moondust\n1 cup moondust", PANTRY);
    assertThat(layout.notUnderstood())
        .extracting(RecipeLayout.OpenLine::remedy)
        .containsExactly(
            "write a plainer name, such as whole milk or rye flour",
            "write a weight and a plain name, such as 500 g bread flour");
  }

  @Test
  void steps_are_kept_as_notes() {
    RecipeLayout layout =
        RecipeLayout.ofRecipe("500 g bread flour\n\nMethod:\nKnead for ten minutes.", PANTRY);
    assertThat(layout.notes()).contains("Knead for ten minutes.");
    assertThat(layout.lines()).hasSize(1);
    assertThat(RecipeLayout.ofRecipe(" ", PANTRY).lines()).isEmpty();
  }

  @Property(tries = 100)
  void no_text_is_too_odd(@ForAll @StringLength(max = 120) String text) {
    RecipeLayout layout = RecipeLayout.ofRecipe(text, PANTRY);
    assertThat(layout.lines()).allSatisfy(line -> assertThat(line.written()).isNotBlank());
  }
}
