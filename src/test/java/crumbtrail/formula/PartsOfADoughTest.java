package crumbtrail.formula;

import static crumbtrail.formula.Doughs.part;
import static crumbtrail.formula.Doughs.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.sheet.BakeSheet.Preferment;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every gram of a part made ahead counts once, by whatever name the dough calls the part. */
class PartsOfADoughTest {
  private static final Preferment POOLISH =
      part("poolish", "100 g bread flour", "100 g water", "0.2 g instant yeast");
  private static final Preferment LEVAIN =
      part("levain", "20 g starter", "90 g flour", "90 g water");

  @ParameterizedTest
  @CsvSource({
    "200 g poolish",
    "200 g of the poolish from above",
    "all of the ripe poolish",
    "200 g sponge",
    "200 g preferment",
    "200 g poolish (made the day before)",
  })
  void a_line_points_to_the_part_that_it_names(String line) {
    Formula formula = Doughs.with(List.of(POOLISH), "400 g bread flour", "225 g water", line);

    assertThat(formula.flourGrams().value()).isCloseTo(500, within(0.2));
    assertThat(value(formula, "hydration")).isCloseTo(65, within(0.1));
    assertThat(value(formula, "prefermented flour")).isCloseTo(20, within(0.1));
    assertThat(formula.parts()).hasSize(1);
  }

  @Test
  void the_longer_name_holds_the_shorter_but_a_flour_is_no_part() {
    Preferment sour = part("sour", "50 g starter", "100 g rye flour", "100 g water");
    Formula formula =
        Doughs.with(List.of(sour), "400 g rye flour", "250 g water", "250 g rye sour");
    assertThat(formula.doughGrams().value()).isCloseTo(900, within(0.01));

    Preferment soaked = part("rye flour", "100 g rye flour", "100 g water");
    Formula plain = Doughs.with(List.of(soaked), "400 g dark rye flour", "200 g water");
    assertThat(plain.flourGrams().value()).isCloseTo(500, within(0.01));
  }

  @Test
  void of_two_sponges_a_line_that_names_neither_points_to_none() {
    Preferment biga = part("biga", "100 g bread flour", "60 g water", "0.2 g instant yeast");
    Formula formula =
        Doughs.with(List.of(POOLISH, biga), "300 g bread flour", "100 g water", "50 g preferment");

    // Both go in whole, and the line, which nobody knows, stays by its weight.
    assertThat(formula.flourGrams().value()).isCloseTo(500, within(0.01));
    assertThat(formula.doughGrams().value()).isCloseTo(810.4, within(0.01));
  }

  @Test
  void two_parts_are_each_found_by_their_name() {
    Formula formula =
        Doughs.with(
            List.of(POOLISH, LEVAIN),
            "300 g flour",
            "100 g water",
            "100 g levain",
            "200 g poolish");

    assertThat(formula.parts()).extracting(Formula.Part::name).containsExactly("levain", "poolish");
    // Half of the levain, 200 g, holds 50 g flour; 100 g come with the poolish.
    assertThat(formula.flourGrams().value()).isCloseTo(450, within(0.2));
    assertThat(value(formula, "starter")).isCloseTo(100 / 4.5, within(0.1));
    assertThat(value(formula, "starter water")).isCloseTo(100, within(0.5));
  }

  /**
   * A stiff levain: 20 g of culture at 100 %, 60 g flour, 30 g water are 40 g water in 70 flour.
   */
  @Test
  void water_of_the_starter_is_on_the_starters_flour() {
    Formula formula =
        Doughs.with(
            List.of(part("levain", "20 g starter (100 % hydration)", "60 g flour", "30 g water")),
            "430 g bread flour",
            "300 g water");
    assertThat(value(formula, "starter water")).isCloseTo(40 / 0.7, within(0.01));
    assertThat(value(formula, "starter")).isCloseTo(110 / 5.0, within(0.01));
  }

  @Test
  void more_than_the_part_makes_is_a_contradiction_and_a_rounding_is_none() {
    assertThat(poolish("300 g poolish").contradictions())
        .singleElement()
        .satisfies(
            said -> assertThat(said.what()).contains("300 g", "200 g", "the amount in the dough"));
    assertThat(poolish("200 g poolish").contradictions()).isEmpty();
    // 198 g of 200.2 g is the same weight but for rounding.
    assertThat(poolish("198 g poolish").flourGrams().value()).isCloseTo(500, within(1e-9));
    assertThat(poolish("150 g poolish").assumptions())
        .anySatisfy(said -> assertThat(said).contains("200 g", "150 g", "go into the dough"));
  }

  private static Formula poolish(String line) {
    return Doughs.with(List.of(POOLISH), "400 g bread flour", "225 g water", line);
  }

  @Test
  void a_part_whose_size_nothing_tells_is_left_out_and_said() {
    Formula formula =
        Doughs.with(
            List.of(part("biga", "100 % bread flour", "55 % water", "0.2 % instant yeast")),
            "500 g bread flour",
            "300 g water");

    assertThat(formula.doughGrams().value()).isEqualTo(800);
    assertThat(formula.notUnderstood())
        .singleElement()
        .satisfies(said -> assertThat(said.uncertain()).contains("left out"));
  }

  /** Percentages below 100 of flour are of the dough's own: 20 % of 500 g, water as much. */
  @Test
  void small_percentages_of_a_part_are_of_the_doughs_flour() {
    Formula formula =
        Doughs.with(
            List.of(part("poolish", "20 % bread flour", "20 % water")),
            "500 g bread flour",
            "225 g water");
    assertThat(formula.flourGrams().value()).isCloseTo(600, within(1e-9));
    assertThat(value(formula, "hydration")).isCloseTo(325 / 6.0, within(1e-9));
  }

  /** 80 g are 80 % of a part's flour where 20 % more are rye: 100 g, and 60 % water 60 g. */
  @Test
  void weights_and_percentages_of_one_part_stand_on_one_flour() {
    Formula formula =
        Doughs.with(
            List.of(part("sponge", "80 g bread flour", "20 % rye flour", "60 % water")),
            "400 g bread flour",
            "240 g water");
    assertThat(formula.flourGrams().value()).isCloseTo(500, within(1e-9));
    assertThat(value(formula, "rye")).isCloseTo(4, within(1e-9));
    assertThat(value(formula, "hydration")).isCloseTo(60, within(1e-9));
  }

  @Test
  void weights_and_percentages_of_a_dough_stand_on_one_flour() {
    Formula formula = Doughs.of("400 g bread flour", "20 % rye flour", "60 % water", "2 % salt");
    assertThat(formula.flourGrams().value()).isCloseTo(500, within(1e-9));
    assertThat(value(formula, "hydration")).isCloseTo(60, within(1e-9));
    assertThat(value(formula, "salt")).isCloseTo(2, within(1e-9));
  }

  /** All flour in the sponge: the percentages of the dough are of that. */
  @Test
  void a_dough_whose_flour_is_all_made_ahead() {
    Formula formula =
        Doughs.with(
            List.of(part("sponge", "500 g bread flour", "300 g water", "1 g instant yeast")),
            "2 % salt",
            "4 % sugar");
    assertThat(formula.flourGrams().value()).isEqualTo(500);
    assertThat(value(formula, "salt")).isCloseTo(2, within(1e-9));
    assertThat(value(formula, "sugar")).isCloseTo(4, within(0.01));
  }

  @Test
  void weights_beside_loose_percentages_say_nothing_and_that_is_said() {
    Formula formula = Doughs.of("65 % water", "2 % salt", "7 g instant yeast");

    assertThat(formula.reading("yeast")).isEmpty();
    assertThat(formula.notUnderstood())
        .singleElement()
        .satisfies(said -> assertThat(said.written()).isEqualTo("7 g instant yeast"));
    assertThat(formula.assumptions()).anyMatch(said -> said.contains("100 % flour"));
  }

  /**
   * 475 g and 25 g scalded: 125 g water on 5 % of the flour; a plain dough of the same has none.
   */
  @Test
  void a_scald_takes_more_water_than_its_flour_alone() {
    Formula scalded =
        Doughs.with(
            List.of(part("tangzhong", "25 g bread flour", "125 g water")),
            "475 g bread flour",
            "200 g water");
    Formula plain = Doughs.of("500 g bread flour", "325 g water");

    // Two points to each per cent scalded (water-roux-home): ten.
    assertThat(value(plain, "water balance") - value(scalded, "water balance"))
        .isCloseTo(10, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "first | 50 g rye flour | 100 g boiling water | scald",
        "soaker | 50 g rye flour | 100 g water | soaker",
        "first | 50 g sunflower seeds | 100 g boiling water | soaker",
        "mash | 50 g rye flour | 100 g water | scald",
        "old dough | 100 g flour | 65 g water | yeasted",
        "sour | 100 g rye flour | 100 g water | levain",
        "first | 100 g flour | 1 g instant yeast | yeasted",
        "first | 100 g flour | 20 g starter | levain",
        "first | 100 g flour | 60 g water | soaker",
      })
  void what_is_in_a_part_says_its_kind_and_else_its_name(
      String name, String one, String other, String kind) {
    Formula formula =
        Doughs.with(List.of(part(name, one, other)), "400 g bread flour", "250 g water");
    assertThat(formula.parts()).extracting(Formula.Part::kind).containsExactly(kind);
  }

  /** A first build of rye, half of which goes into the levain: 20 g of rye in 500 g of flour. */
  @Test
  void what_a_part_takes_of_another_part_comes_along_in_proportion() {
    Formula formula =
        Doughs.with(
            List.of(
                part(
                    "first build",
                    "20 g starter (100 % hydration)",
                    "40 g rye flour",
                    "40 g water"),
                part("levain", "50 g first build", "75 g bread flour", "75 g water")),
            "400 g bread flour",
            "250 g water",
            "200 g levain");
    assertThat(formula.flourGrams().value()).isCloseTo(500, within(0.01));
    assertThat(value(formula, "rye")).isCloseTo(4, within(0.01));
    assertThat(value(formula, "prefermented flour")).isCloseTo(20, within(0.01));
  }

  /** By hand: 100 g at 60 % is 62.5 g flour; salt of old dough is 1.2 % of its weight. */
  @Test
  void a_starter_is_taken_apart_by_what_is_said_of_it() {
    Formula stiff = Doughs.of("500 g bread flour", "100 g whole wheat starter (60 % hydration)");
    assertThat(stiff.flourGrams()).isEqualTo(Level.exact(562.5));
    assertThat(value(stiff, "whole grain")).isCloseTo(62.5 / 5.625, within(1e-6));
    assertThat(stiff.assumptions()).noneMatch(said -> said.contains("water to its flour"));

    Formula open = Doughs.of("500 g bread flour", "100 g sourdough starter");
    assertThat(open.assumptions()).anyMatch(said -> said.contains("taken at 100 % water"));
    // A starter that nobody measured may be fed 15 % drier or a fifth wetter.
    assertThat(open.flourGrams().low()).isCloseTo(500 + 100 / 2.2, within(1e-6));
    assertThat(open.flourGrams().high()).isCloseTo(500 + 100 / 1.85, within(1e-6));
    assertThat(value(open, "whole grain")).isZero();
    assertThat(value(open, "rye")).isZero();

    Formula old = Doughs.of("500 g bread flour", "310 g water", "100 g old dough");
    assertThat(value(old, "salt") * old.flourGrams().value() / 100).isCloseTo(1.2, within(1e-6));
    assertThat(value(old, "starter")).as("yeasted, so no culture").isZero();
    assertThat(value(old, "prefermented flour")).isPositive();
  }

  /** The weight in brackets settles what a tin or a cup of it weighs. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 can (400 g) pumpkin puree | 400",
        "2 cups (280 g) rye flour | 280",
        "500 g bread flour | 500"
      })
  void the_weight_of_a_line_is_the_one_that_is_told(String line, double grams) {
    assertThat(Doughs.of("500 g bread flour", line).doughGrams().value() - 500)
        .isCloseTo(grams, within(1e-9));
  }

  @Test
  void starter_in_words_stands_for_a_line_only_where_there_is_none() {
    Formula told =
        FormulaWorker.work(
            Doughs.sheet(
                List.of(),
                List.of("20 % levain"),
                "500 g bread flour",
                "50 g starter",
                "300 g water"),
            Doughs.PANTRY);
    assertThat(told.doughGrams().value()).isEqualTo(850);

    Formula none =
        FormulaWorker.work(
            Doughs.sheet(List.of(), List.of("20 % levain"), "500 g bread flour", "300 g water"),
            Doughs.PANTRY);
    assertThat(none.doughGrams().value()).isCloseTo(900, within(1e-9));
    assertThat(none.assumptions()).anyMatch(said -> said.contains("equal weights"));
  }

  @Test
  void water_in_words_is_what_is_missing_and_is_said() {
    Formula formula =
        FormulaWorker.work(
            Doughs.sheet(List.of(), List.of("hydration 70 %"), "500 g bread flour", "10 g salt"),
            Doughs.PANTRY);
    assertThat(formula.doughGrams().value()).isCloseTo(860, within(1e-9));
    assertThat(formula.assumptions()).contains("water taken from the stated hydration");
  }

  @Test
  void a_point_before_three_figures_is_said_to_be_a_decimal_one() {
    assertThat(Doughs.of("500 g bread flour", "1.250 g salt").assumptions())
        .anySatisfy(said -> assertThat(said).contains("1250 g", "decimal point"));
    assertThat(Doughs.of("500 g bread flour", "300 g water").assumptions()).isEmpty();
  }
}
