package crumbtrail.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.quantity.Quantity;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Ingredient lines as recipes write them. Amounts: value in base unit, and the unit written. */
class IngredientLineTest {

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "3 1/2 cups (440 g) bread flour | bread flour | 440 GRAM | 828.059 CUP | ''",
        "440 g (3 1/2 cups) bread flour | bread flour | 440 GRAM | 828.059 CUP | ''",
        "250 ml / 1 cup milk            | milk | 250 MILLILITRE | 236.588 CUP | ''",
        "1 cup (240ml) water, lukewarm  | water | 240 MILLILITRE | 236.588 CUP | lukewarm",
        "2 large eggs, beaten           | eggs | 2 PIECE | | beaten",
        "1 extra-large egg              | egg | 1 PIECE | | ''",
        "2 eggs (50 g each)             | eggs | 100 GRAM | 2 PIECE | ''",
        "2 egg yolks                    | egg yolks | 2 PIECE | | ''",
        "1 packet active dry yeast      | active dry yeast | 1 PACKET | | ''",
        "1 (7 g) packet instant yeast   | instant yeast | 7 GRAM | 1 PACKET | ''",
        "2 (7g) packets instant yeast   | instant yeast | 14 GRAM | 2 PACKET | ''",
        "2 x 7 g sachets quick yeast    | quick yeast | 14 GRAM | 2 PACKET | ''",
        "1 1/4-oz packet dry yeast      | dry yeast | 7.08738 OUNCE | 1 PACKET | ''",
        "2 1/4 tsp (1 packet/7 g) active dry yeast | active dry yeast | 7 GRAM | 11.0901 TEASPOON |''",
        "salt to taste                  | salt | | | to taste",
        "some flour                     | flour | | | some",
        "a handful of raisins           | raisins | | | a handful of",
        "250 ml lukewarm milk           | milk | 250 MILLILITRE | | lukewarm",
        "1 cup of milk, scalded and cooled | milk | 236.588 CUP | | scalded and cooled",
        "2 cups warm water (110 F)      | water | 473.176 CUP | | warm; 110 F",
        "310 g water at 38 C            | water | 310 GRAM | | at 38 C",
        "15 g fresh yeast               | fresh yeast | 15 GRAM | | ''",
        "1 cake fresh yeast             | fresh yeast | 1 CAKE | | ''",
        "1 tbsp coarse salt             | coarse salt | 14.7868 TABLESPOON | | ''",
        "4 T butter                     | butter | 59.1471 TABLESPOON | | ''",
        "2 t salt                       | salt | 9.85784 TEASPOON | | ''",
        "1 stick butter                 | butter | 1 STICK | | ''",
        "120 g butter (1 stick), cold   | butter | 120 GRAM | 1 STICK | cold",
        "50 g unsalted butter, softened | unsalted butter | 50 GRAM | | softened",
        "butter, 50 g, softened         | butter | 50 GRAM | | softened",
        "100g water                     | water | 100 GRAM | | ''",
        "flour 500g                     | flour | 500 GRAM | | ''",
        "Bread flour ..... 500 g        | Bread flour | 500 GRAM | | ''",
        "eggs: 2                        | eggs | 2 PIECE | | ''",
        "1 lb 2 oz flour                | flour | 510.291 POUND | | ''",
        "2 cups plus 2 tbsp bread flour | bread flour | 502.750 CUP | | ''",
        "- 500 g flour                  | flour | 500 GRAM | | ''",
        "• 500 g flour                  | flour | 500 GRAM | | ''",
        "1. 500 g flour                 | flour | 500 GRAM | | ''",
        "500 g flour, plus more for dusting | flour | 500 GRAM | | plus more for dusting",
        "400 g flour, all-purpose       | all-purpose flour | 400 GRAM | | ''",
        "00 flour 500 g                 | 00 flour | 500 GRAM | | ''",
        "500 g 00 flour                 | 00 flour | 500 GRAM | | ''",
        "500 g T65 flour                | T65 flour | 500 GRAM | | ''",
        "7-grain cereal, 50 g           | 7-grain cereal | 50 GRAM | | ''",
        "2% salt                        | salt | 2 PERCENT | | ''",
        "water, 65 %                    | water | 65 PERCENT | | ''",
        "2 % milk, 250 ml               | 2 % milk | 250 MILLILITRE | | ''",
        "240 g 2% milk                  | 2% milk | 240 GRAM | | ''",
        "pinch of salt                  | salt | 1 PINCH | | ''",
        "salt, a pinch                  | salt | 1 PINCH | | ''",
        "1 cup half and half            | half and half | 236.588 CUP | | ''",
        "100 g active starter           | starter | 100 GRAM | | active",
        "Juice of 1 lemon               | lemon Juice | 1 PIECE | | ''",
        "1/3 cup packed brown sugar     | brown sugar | 78.8627 CUP | | packed",
        "3 medium potatoes, boiled and mashed | potatoes | 3 PIECE | | boiled and mashed",
        "250 g strong white bread flour | strong white bread flour | 250 GRAM | | ''",
        "60 g sugar / 5 tbsp            | sugar | 60 GRAM | 73.9338 TABLESPOON | ''",
        "300ml hand-hot water           | water | 300 MILLILITRE | | hand-hot",
        "0.1 g instant yeast            | instant yeast | 0.1 GRAM | | ''",
      })
  void takesLinesApart(String text, String name, String amount, String also, String notes) {
    FormulaLine line = IngredientLine.read("formula[0]", text).orElseThrow();
    assertThat(line.ingredient()).isEqualTo(name);
    checkAmount(line.amount(), amount);
    checkAmount(line.alsoGiven(), also);
    assertThat(String.join("; ", line.notes())).isEqualTo(notes);
    assertThat(line.written()).isEqualTo(text);
    assertThat(line.where()).isEqualTo("formula[0]");
  }

  private static void checkAmount(Optional<Quantity> found, String expected) {
    if (expected == null) {
      assertThat(found).isEmpty();
      return;
    }
    int space = expected.indexOf(' ');
    double value = Double.parseDouble(expected.substring(0, space));
    assertThat(found.orElseThrow().value()).isCloseTo(value, within(1e-5 * value));
    assertThat(found.orElseThrow().unit()).hasToString(expected.substring(space + 1));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "½ cup sourdough starter (100 % hydration) | sourdough starter | 100",
        "100 g stiff levain at 50% hydration       | stiff levain | 50",
        "stiff levain (50% hydration) 100 g        | stiff levain | 50",
        "100 g starter, hydration 80 %             | starter | 80",
      })
  void takesStatedHydration(String text, String name, double hydration) {
    FormulaLine line = IngredientLine.read("x", text).orElseThrow();
    assertThat(line.ingredient()).isEqualTo(name);
    assertThat(line.hydration()).hasValue(hydration);
    assertThat(line.amount()).isPresent();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "500 g bread flour, 12.5 % protein | bread flour | 12.5",
        "500 g bread flour (12-13% protein) | bread flour | 12.5",
        "5 kg flour 13% protein            | flour | 13",
        "500 g flour, 11 g protein per 100 g | flour | 11",
        "500 g flour (protein 11,5 %)      | flour | 11.5",
      })
  void takesStatedProtein(String text, String name, double protein) {
    FormulaLine line = IngredientLine.read("x", text).orElseThrow();
    assertThat(line.ingredient()).isEqualTo(name);
    assertThat(line.protein()).hasValue(protein);
    assertThat(line.notes()).isEmpty();
  }

  @Test
  void takesTheSizeOfEggs() {
    assertThat(IngredientLine.read("x", "2 large eggs").orElseThrow().size()).isEqualTo("large");
    assertThat(IngredientLine.read("x", "1 extra-large egg").orElseThrow().size())
        .isEqualTo("extra large");
    assertThat(IngredientLine.read("x", "egg, 1 small").orElseThrow().amount()).isPresent();
  }

  @ParameterizedTest
  @ValueSource(strings = {"500 flour", "2 salt", "310 water", "200 raisins"})
  void refusesABareNumberOfWhatIsWeighed(String text) {
    Problem problem = IngredientLine.parse("formula[3]", text).problem().orElseThrow();
    assertThat(problem.where()).isEqualTo("formula[3]");
    assertThat(problem.what()).contains("number without a unit");
    assertThat(problem.remedy()).contains(" g ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   ", "12", "-", "@@@", "1 kg", "500 g", "½", "-500 g flour"})
  void refusesLinesThatNameNothingOrCannotBe(String text) {
    LineReading reading = IngredientLine.parse("x", text);
    assertThat(reading.line()).isEmpty();
    assertThat(reading.problem()).isPresent();
  }

  @Test
  void joinsPartsThatWereTypedApart() {
    FormulaLine line = IngredientLine.ofParts("x", "fine salt", "6 g", "sea").line().orElseThrow();
    assertThat(line.ingredient()).isEqualTo("sea fine salt");
    assertThat(line.amount().orElseThrow().value()).isEqualTo(6);
  }
}
