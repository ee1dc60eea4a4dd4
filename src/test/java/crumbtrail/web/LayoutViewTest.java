package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.pantry.Pantry;
import crumbtrail.report.RecipeLayout;
import crumbtrail.rules.RuleBase;
import crumbtrail.web.LayoutView.Fact;
import crumbtrail.web.LayoutView.Row;
import org.junit.jupiter.api.Test;

/** Numbers worked out by hand; ounces by 28.35 g. */
class LayoutViewTest {
  private static final Pantry PANTRY = RuleBase.bundled().pantry();
  private static final String RECIPE = "500 g bread flour\n310 g water\n10 g fine salt";

  @Test
  void facts_and_rows_are_in_the_units_of_the_baker() {
    LayoutView metric = view(RECIPE, Units.METRIC);
    assertThat(metric.rows()).extracting(Row::weight).containsExactly("500 g", "310 g", "10 g");
    assertThat(metric.rows()).extracting(Row::fills).containsOnly("");
    assertThat(metric.rows()).extracting(Row::percent).containsExactly("100 %", "62 %", "2 %");
    assertThat(metric.facts())
        .contains(new Fact("Hydration", "62 %"), new Fact("Flour", "500 g"))
        .noneMatch(fact -> fact.name().equals("Yeast"));
    LayoutView us = view(RECIPE, Units.US);
    assertThat(us.rows()).extracting(Row::weight).containsExactly("17.6 oz", "10.9 oz", "0.35 oz");
    assertThat(us.rows().get(1).fills()).isEqualTo("1¼ cups");
    assertThat(us.facts()).contains(new Fact("Hydration", "62 %"), new Fact("Flour", "17.6 oz"));
  }

  @Test
  void a_measure_is_told_as_near_enough() {
    Row water = view("500 g bread flour\n1 cup water", Units.US).rows().get(1);
    assertThat(water.weight()).startsWith("≈ 8.3");
    assertThat(water.fills()).as("the line says it itself").isEmpty();
  }

  @Test
  void what_is_open_is_told_gently_and_counted() {
    LayoutView view = view(RECIPE + "\n20 g moondust\nyeast", Units.METRIC);
    assertThat(view.said()).isEqualTo("3 lines understood, hydration 62 %, 1 not quite clear");
    assertThat(view.doubts()).singleElement().satisfies(d -> assertThat(d.remedy()).isNotBlank());
  }

  @Test
  void an_empty_recipe_says_nothing() {
    LayoutView view = view(" ", Units.METRIC);
    assertThat(view.empty()).isTrue();
    assertThat(view.said()).isEmpty();
    assertThat(view.doubts()).isEmpty();
  }

  @Test
  void percentages_alone_claim_no_weights() {
    LayoutView view = view("100 % bread flour\n70 % water", Units.METRIC);
    assertThat(view.facts()).extracting(Fact::name).containsExactly("Hydration");
    assertThat(view.rows()).extracting(Row::weight).containsOnly("");
  }

  private static LayoutView view(String recipe, Units units) {
    return LayoutView.of(RecipeLayout.ofRecipe(recipe, PANTRY), units, Texts.english());
  }
}
