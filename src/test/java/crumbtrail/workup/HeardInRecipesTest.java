package crumbtrail.workup;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Sentences of days and of recipes, heard with the project's own phrases. */
class HeardInRecipesTest {
  @Test
  void half_an_hour_is_no_half_of_a_rise() {
    Workup workup =
        Bakes.work(
            "{'seen': ['dense'], 'process': {'remarks': ['it proved for an hour and a half',"
                + " 'rested half an hour']}}");
    assertThat(workup.heard().circumstances())
        .extracting(Heard.Circumstance::key)
        .doesNotContain("bulk-cut-short");
    assertThat(workup.heard().signs()).extracting(Heard.Sign::key).containsExactly("dense-crumb");
  }

  @Test
  void steps_of_a_recipe_tell_what_is_done_and_not_how_it_came_out() {
    Workup workup =
        Bakes.work(
            "{'recipe': '500 g flour\\nMethod:\\nKnead on a lightly floured surface until no longer"
                + " sticky.\\nSlide a tray of boiling water in for steam and bake until golden"
                + " brown.', 'seen': ['dense']}");
    assertThat(workup.heard().signs()).extracting(Heard.Sign::key).containsExactly("dense-crumb");
    assertThat(workup.heard().circumstances())
        .extracting(Heard.Circumstance::key)
        .contains("steam-given")
        .doesNotContain("yeast-scalded", "crust-good");
  }
}
