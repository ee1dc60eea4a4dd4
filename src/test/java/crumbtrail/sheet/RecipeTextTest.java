package crumbtrail.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.quantity.PlainText;
import crumbtrail.quantity.Quantity;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RecipeTextTest {

  private static final String TIDE_MILL =
      """
      Skarholm tide mill loaf

      For the poolish (12 h at 20 C):
      100 g bread flour
      100 g water
      a pinch of instant yeast

      Dough:
      - 400 g bread flour, 12.5 % protein
      - 210 g water
      - 2 tsp salt
      - caraway seeds
      - olive oil for greasing

      For the topping:
      2 tbsp sesame seeds

      Method
      1. Mix the poolish and leave it.
      2. Mix everything for 10 minutes with 210 g water.
      3. 60 minutes bulk at 24 C.
      The loaf came out dense.
      """;

  @Test
  void sortsAWholeRecipe() {
    RecipeText recipe = RecipeText.read(TIDE_MILL);
    assertThat(recipe.title()).isEqualTo("Skarholm tide mill loaf");
    assertThat(names(recipe.lines()))
        .containsExactly("bread flour", "water", "salt", "caraway seeds", "olive oil");
    assertThat(recipe.problems()).isEmpty();
    assertThat(recipe.preferments()).hasSize(1);
    BakeSheet.Preferment poolish = recipe.preferments().get(0);
    assertThat(poolish.name()).isEqualTo("poolish");
    assertThat(names(poolish.formula())).containsExactly("bread flour", "water", "instant yeast");
    assertThat(poolish.stages()).hasSize(1);
    assertThat(poolish.stages().get(0).time().map(Quantity::value)).contains(720.0);
    assertThat(poolish.stages().get(0).temperature().map(Quantity::value)).contains(20.0);
    assertThat(recipe.remarks()).contains("2 tbsp sesame seeds", "The loaf came out dense.");
    assertThat(recipe.steps())
        .containsExactly(
            "1. Mix the poolish and leave it.",
            "2. Mix everything for 10 minutes with 210 g water.",
            "3. 60 minutes bulk at 24 C.");
  }

  @Test
  void namesThePlaceOfALine() {
    RecipeText recipe = RecipeText.read("Ingredients\n500 g flour\n500 water");
    assertThat(recipe.lines().get(0).where()).isEqualTo("recipe line 2");
    assertThat(recipe.problems()).extracting(Problem::where).containsExactly("recipe line 3");
  }

  @Test
  void takesSeveralIngredientsFromOneLine() {
    RecipeText recipe =
        RecipeText.read(
            "Biga: 100 g flour, 55 g water, 0.5 g yeast\n400 g flour, 250 g water and 9 g salt");
    assertThat(names(recipe.lines())).containsExactly("flour", "water", "salt");
    assertThat(names(recipe.preferments().get(0).formula()))
        .containsExactly("flour", "water", "yeast");
    assertThat(recipe.preferments().get(0).name()).isEqualTo("biga");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "poolish",
        "Biga:",
        "For the sponge",
        "Levain",
        "Rye starter:",
        "pâte fermentée:",
        "Soaker:",
        "Tangzhong:",
        "## Preferment",
        "The scald:"
      })
  void knowsTheHeadingsOfPreferments(String heading) {
    RecipeText recipe = RecipeText.read(heading + "\n50 g flour\n50 g water\nDough\n500 g flour");
    assertThat(recipe.preferments()).hasSize(1);
    assertThat(recipe.preferments().get(0).formula()).hasSize(2);
    assertThat(recipe.lines()).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "I mixed it with 2 cups of water and it was too wet.",
        "2 cups of flour were added later",
        "Knead 10 min.",
        "10 minutes kneading",
        "350 F for 30 minutes",
        "Serves 4",
        "1 loaf",
        "Total time: 3 hours",
        "Bake at 230 C, then 20 min at 200 C",
        "The crumb was dense and gummy.",
      })
  void keepsWhatIsNoIngredientForTheDay(String line) {
    RecipeText recipe = RecipeText.read("Ingredients\n500 g flour\n" + line);
    assertThat(recipe.lines()).hasSize(1);
    assertThat(recipe.day()).containsExactly(PlainText.of(line));
    assertThat(recipe.problems()).isEmpty();
  }

  @Test
  void refusesARecipeThatIsTooLong() {
    assertThat(RecipeText.read("500 g flour\n".repeat(5000)).problems()).hasSize(1);
    assertThat(RecipeText.read("a\n".repeat(2000)).problems()).hasSize(1);
  }

  private static List<String> names(List<FormulaLine> lines) {
    return lines.stream().map(FormulaLine::ingredient).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Levain (8 h at 24 C):                         | levain         | 480 | 24
          Poolish - 12 hours at 20 C                    | poolish        | 720 | 20
          For the rye levain, 8 hours:                  | rye levain     | 480 |
          Sponge: 90 minutes at 26 C                    | sponge         |  90 | 26
          Poolish (12 hours at room temperature)        | poolish        | 720 |
          """)
  void a_heading_may_say_how_long_its_preferment_stands(
      String heading, String name, double minutes, Double celsius) {
    RecipeText recipe =
        RecipeText.read(heading + "\n50 g flour\n50 g water\nDough:\n450 g flour\n280 g water");

    assertThat(recipe.remarks()).isEmpty();
    assertThat(recipe.lines()).hasSize(2);
    assertThat(recipe.preferments())
        .singleElement()
        .satisfies(
            one -> {
              assertThat(one.name()).isEqualTo(name);
              assertThat(one.formula()).hasSize(2);
              Stage stage = one.stages().get(0);
              assertThat(stage.time().orElseThrow().value()).isEqualTo(minutes);
              if (celsius != null) {
                assertThat(stage.temperature().orElseThrow().value()).isEqualTo(celsius);
              }
            });
  }

  @Test
  void a_leaven_with_a_weight_is_an_ingredient() {
    RecipeText recipe =
        RecipeText.read("500 g flour\n310 g water\nLevain, 100 g\nripe starter - 20 g\n9 g salt");

    assertThat(recipe.lines()).hasSize(5);
    assertThat(recipe.preferments()).isEmpty();
  }
}
