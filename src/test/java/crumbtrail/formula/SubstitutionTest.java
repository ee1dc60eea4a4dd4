package crumbtrail.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.formula.Substitution.Totals;
import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Kind;
import crumbtrail.sheet.BakeSheet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SubstitutionTest {
  private static final BakeSheet RICH =
      Doughs.sheet(
          List.of(),
          List.of(),
          "500 g bread flour, 12.5 % protein",
          "100 g water",
          "120 g whole milk",
          "2 large eggs",
          "60 g sugar",
          "60 g unsalted butter",
          "9 g fine salt",
          "5 g instant yeast");

  @ParameterizedTest
  @CsvSource({
    "whole milk, water",
    "whole milk, nonfat dry milk",
    "whole milk, buttermilk",
    "egg, water",
    "egg, whole milk",
    "sugar, honey",
    "unsalted butter, salted butter",
    "unsalted butter, olive oil",
    "instant yeast, fresh yeast",
    "fine salt, coarse salt"
  })
  void what_a_dough_is_made_of_stays_as_it_was(String gone, String taken) {
    Substitution made = made(RICH, gone, taken);
    Totals was = totals(RICH);
    Totals is = totals(made.sheet());

    assertThat(made.sheet()).isNotEqualTo(RICH);
    assertThat(is.water()).as("water").isCloseTo(was.water(), within(2.5));
    assertThat(is.fat()).as("fat").isCloseTo(was.fat(), within(2.0));
    assertThat(is.sugar()).as("sugar").isCloseTo(was.sugar(), within(2.0));
    assertThat(is.salt()).as("salt").isCloseTo(was.salt(), within(0.25));
  }

  /** A weak flour is brought back by gluten; makers add 1 to 4 % (bakers' dictionary). */
  @Test
  void a_weaker_flour_gets_gluten_for_the_protein_that_it_lacks() {
    Substitution made = made(RICH, "bread flour", "all-purpose flour");
    double gluten =
        FormulaEdit.of(made.sheet(), Doughs.PANTRY).grams(one -> one.kind() == Kind.GLUTEN);

    assertThat(gluten / 500 * 100).isBetween(1.0, 4.0);
    assertThat(reading(made.sheet(), "flour protein"))
        .isCloseTo(reading(RICH, "flour protein"), within(0.1));
  }

  @Test
  void a_stronger_flour_gets_none() {
    BakeSheet weak = Doughs.sheet(List.of(), List.of(), "500 g all-purpose flour", "320 g water");
    assertThat(made(weak, "all-purpose flour", "bread flour").balanced()).isEmpty();
  }

  @Test
  void what_is_on_the_sheet_already_is_made_more_and_not_written_twice() {
    assertThat(made(RICH, "whole milk", "water").sheet().formula())
        .filteredOn(line -> line.ingredient().equals("water"))
        .hasSize(1);
  }

  @Test
  void more_than_there_is_cannot_be_taken_out_and_that_is_said() {
    BakeSheet dry = Doughs.sheet(List.of(), List.of(), "500 g flour", "150 g sugar", "20 g water");
    assertThat(made(dry, "sugar", "honey").lost())
        .anySatisfy(said -> assertThat(said).contains("More water comes in"));
  }

  @Test
  void protein_of_eggs_is_not_made_good_and_that_is_said() {
    assertThat(made(RICH, "egg", "water").lost())
        .anySatisfy(said -> assertThat(said).contains("protein"));
  }

  @Test
  void percentages_stay_percentages() {
    BakeSheet percents =
        Doughs.sheet(List.of(), List.of(), "100 % flour", "50 % water", "10 % milk", "2 % salt");
    assertThat(made(percents, "milk", "water").sheet().formula())
        .anySatisfy(line -> assertThat(line.written()).startsWith("58.8").contains("% water"));
  }

  @Test
  void half_of_it_can_stay() {
    BakeSheet brown = Doughs.sheet(List.of(), List.of(), "400 g whole wheat flour", "300 g water");
    Ingredient whole = Doughs.PANTRY.lookup("whole wheat flour").orElseThrow();
    Ingredient white = Doughs.PANTRY.lookup("bread flour").orElseThrow();
    Substitution half =
        Substitution.of(brown, Doughs.PANTRY, whole::equals, white, 0.5).orElseThrow();
    FormulaEdit edit = FormulaEdit.of(half.sheet(), Doughs.PANTRY);

    assertThat(edit.grams(whole::equals)).isCloseTo(200, within(0.5));
    assertThat(edit.grams(white::equals)).isCloseTo(200, within(0.5));
    assertThat(half.balanced()).isEmpty();
  }

  /** What does the work of a gram: yeast by strength, salt by salt, fat by fat (by hand). */
  @ParameterizedTest
  @CsvSource({
    "instant yeast, fresh yeast, 3.0303",
    "fresh yeast, instant yeast, 0.33",
    "sugar, honey, 1.2150",
    "fine salt, coarse salt, 1",
    "fine salt, potassium chloride, 1",
    "whole milk, water, 0.8813",
    "bread flour, rye flour, 1"
  })
  void so_much_does_the_work_of_a_gram(String gone, String taken, double grams) {
    assertThat(
            Substitution.perGram(
                Doughs.PANTRY.lookup(gone).orElseThrow(),
                Doughs.PANTRY.lookup(taken).orElseThrow()))
        .isCloseTo(grams, within(0.005));
  }

  @Test
  void what_goes_and_what_comes_is_told_as_a_scale_shows_it() {
    Substitution made = made(RICH, "instant yeast", "fresh yeast");
    assertThat(made.from()).isEqualTo("5 g instant yeast");
    assertThat(made.to()).isEqualTo("15.2 g fresh yeast");
    assertThat(made(RICH, "whole milk", "water").from()).isEqualTo("120 g whole milk");
    assertThat(made(RICH, "whole milk", "water").balanced())
        .anySatisfy(said -> assertThat(said).contains("more", "butter", "keeps the fat"));
  }

  @Test
  void what_was_put_in_already_of_the_new_one_is_kept_beside_it() {
    BakeSheet both =
        Doughs.sheet(List.of(), List.of(), "500 g flour", "3 g instant yeast", "3 g fresh yeast");
    FormulaEdit edit =
        FormulaEdit.of(made(both, "instant yeast", "fresh yeast").sheet(), Doughs.PANTRY);
    assertThat(edit.grams(one -> one.kind() == Kind.YEAST)).isCloseTo(3 + 9.09, within(0.1));
  }

  @Test
  void nothing_is_made_of_what_is_not_there() {
    Ingredient water = Doughs.PANTRY.lookup("water").orElseThrow();
    assertThat(Substitution.of(RICH, Doughs.PANTRY, one -> one.has("rye"), water, 1)).isEmpty();
  }

  private static Substitution made(BakeSheet sheet, String gone, String taken) {
    Ingredient old = Doughs.PANTRY.lookup(gone).orElseThrow();
    return Substitution.of(
            sheet, Doughs.PANTRY, old::equals, Doughs.PANTRY.lookup(taken).orElseThrow(), 1)
        .orElseThrow();
  }

  private static double reading(BakeSheet sheet, String name) {
    return FormulaWorker.work(sheet, Doughs.PANTRY).reading(name).orElseThrow().value();
  }

  private static Totals totals(BakeSheet sheet) {
    FormulaEdit edit = FormulaEdit.of(sheet, Doughs.PANTRY);
    Totals totals = Totals.NONE;
    for (Ingredient one : edit.ingredients(any -> true)) {
      totals = totals.plus(one.per100(), edit.grams(one::equals));
    }
    return totals;
  }
}
